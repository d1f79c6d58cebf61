/** Makes the one-page plan and hands it to the maker as a file. */
import { useState, type RefObject } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { Draft } from '../../../shared/schemas/drafts.ts'
import { useBridge } from '../../app/bridge-context.tsx'
import { call } from '../../app/calls.ts'
import { useSettings } from '../../app/settings.tsx'
import { Button } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { handPaper } from '../../parts/paper/hand-paper.ts'

/** `draft` is read when the button is pressed. */
export function PaperButton({ draft }: { draft: RefObject<Draft> }) {
  const t = useWords()
  const bridge = useBridge()
  const { units } = useSettings()
  const [isBusy, setBusy] = useState(false)
  const [error, setError] = useState<Error | null>(null)

  async function print() {
    setBusy(true)
    setError(null)
    try {
      const { name, note, spec } = draft.current
      const size = units === 'us' ? 'Letter' : 'A4'
      handPaper(
        await call(bridge, 'drafts.paper', { name: name || t('draft.title'), note, spec, size }),
      )
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
