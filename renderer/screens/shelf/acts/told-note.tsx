/** What was done last, read out, with the way to take it back. */
import { useWords } from '../../../app/words/use-words.ts'
import { Button } from '../../../parts/button/button.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import type { Acts } from './use-acts.ts'
import styles from './acts.module.css'

export function ToldNote({ acts: { told, undo, undoError } }: { acts: Acts }) {
  const t = useWords()
  return (
    <>
      <div className={styles.told}>
        <output aria-label={t('shelf.told.label')}>{told}</output>
        {told !== undefined && undo && <Button onPress={undo}>{t('shelf.told.undo')}</Button>}
      </div>
      <FailureNote error={undoError} />
    </>
  )
}
