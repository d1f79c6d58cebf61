/** Makes the one-page plan and hands it to the maker as a file. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { DraftSpec } from '../../../shared/schemas/drafts.ts'
import { useBridge } from '../../app/bridge-context.tsx'
import { call } from '../../app/calls.ts'
import { useSettings } from '../../app/settings.tsx'
import { Button } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { handPaper } from '../../parts/paper/hand-paper.ts'

export interface PaperButtonProps {
  name: string
  note: string
  spec: DraftSpec
}

export function PaperButton({ name, note, spec }: PaperButtonProps) {
  const t = useWords()
  const bridge = useBridge()
  const { units } = useSettings()
  const [isBusy, setBusy] = useState(false)
  const [error, setError] = useState<Error | null>(null)

  async function print() {
    setBusy(true)
    setError(null)
    try {
      const size = units === 'us' ? 'Letter' : 'A4'
      handPaper(await call(bridge, 'drafts.paper', { name, note, spec, size }))
    } catch (failure) {
      setError(failure instanceof Error ? failure : new Error(String(failure)))
    } finally {
      setBusy(false)
    }
  }

  return (
    <>
      <Button isBusy={isBusy} onPress={() => void print()}>
        {t('draft.editor.paper')}
      </Button>
      <FailureNote error={error} />
    </>
  )
}
