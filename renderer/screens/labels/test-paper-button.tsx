/** The sheet's outlines on paper, to hold against the labels. */
import type { LabelSheet } from '../../../shared/schemas/labels.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { usePaper } from './use-paper.ts'

export function TestPaperButton({ sheet }: { sheet: LabelSheet }) {
  const t = useWords()
  const { make, isBusy, error } = usePaper('labels.testPaper')
  return (
    <>
      <Button isBusy={isBusy} onPress={() => void make({ sheet })}>
        {t('labels.sheet.test')}
      </Button>
      <FailureNote error={error} />
    </>
  )
}
