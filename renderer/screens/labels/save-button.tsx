/** Makes the PDF of the sheets, and keeps what was chosen for the next time. */
import type { LabelJob, LabelStyle } from '../../../shared/schemas/labels.ts'
import { useWrite } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { usePaper } from './use-paper.ts'
import styles from './labels.module.css'

export function SaveButton({ job, style }: { job: LabelJob; style: LabelStyle }) {
  const t = useWords()
  const paper = usePaper('labels.paper')
  const keep = useWrite('labels.keepStyle')
  return (
    <div className={styles.save}>
      <Button
        kind="primary"
        isBusy={paper.isBusy}
        onPress={() => {
          void paper.make(job)
          keep.mutate(style)
        }}
      >
        {t('labels.save')}
      </Button>
      <output className={styles.quiet}>{paper.isDone ? t('labels.saved') : ''}</output>
      <FailureNote error={paper.error} />
    </div>
  )
}
