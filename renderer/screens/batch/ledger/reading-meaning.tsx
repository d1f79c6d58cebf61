/** What a reading tells, and why it is doubted; a doubted one can be confirmed here. */
import { useWords } from '../../../app/words/use-words.ts'
import type { LedgerStep } from '../../../../shared/schemas/cellar.ts'
import { newId } from '../../../app/new-id.ts'
import { useWrite } from '../../../app/queries.ts'
import { Button } from '../../../parts/button/button.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { Meaning } from '../../../parts/moves/composition/meaning.tsx'
import { isUnconfirmed } from './ledger-rows.ts'
import styles from './ledger.module.css'

export function ReadingMeaning({ step }: { step: LedgerStep }) {
  const t = useWords()
  const amend = useWrite('moves.amend')
  const { interpretation, recorded } = step
  const { move } = recorded
  if (!interpretation || move.kind !== 'read') return null
  // A jug says what it means.
  if (move.reading.instrument === 'measuringJug' && interpretation.doubts.length === 0) return null
  const { doubts } = interpretation
  const confirm = () =>
    amend.mutate({
      key: newId(),
      moveId: recorded.id,
      fromVersion: recorded.version,
      move: { ...move, isConfirmed: true },
    })
  return (
    <div className={styles.meaning}>
      <Meaning interpretation={interpretation} />
      {isUnconfirmed(step) && (
        <span className={styles.confirm}>
          <strong>{t('batch.ledger.doubted')}</strong>
          <Button onPress={confirm} isBusy={amend.isPending}>
            {t('batch.ledger.confirm')}
          </Button>
        </span>
      )}
      {move.isConfirmed && doubts.length > 0 && (
        <span className={styles.quiet}>{t('batch.ledger.confirmed')}</span>
      )}
      <FailureNote error={amend.error} />
    </div>
  )
}
