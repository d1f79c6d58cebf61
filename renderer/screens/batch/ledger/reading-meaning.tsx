/** What a reading tells, and why it is doubted; a doubted one can be confirmed here. */
import { useTranslation } from 'react-i18next'
import type { LedgerStep } from '../../../../shared/schemas/cellar.ts'
import { newId } from '../../../app/new-id.ts'
import { useWrite } from '../../../app/queries.ts'
import { Button } from '../../../parts/button/button.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { Strength, Sugar } from '../../../parts/quantity/composition.tsx'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { isUnconfirmed } from './ledger-rows.ts'
import styles from './ledger.module.css'

export function ReadingMeaning({ step }: { step: LedgerStep }) {
  const { t } = useTranslation()
  const amend = useWrite('moves.amend')
  const { interpretation, recorded } = step
  const { move } = recorded
  if (!interpretation || move.kind !== 'read') return null
  const { strengthPctVol, sugarGPerL, volumeMl, doubts } = interpretation
  const tellsNothing = [strengthPctVol, sugarGPerL, volumeMl].every((value) => value === undefined)
  const confirm = () =>
    amend.mutate({
      key: newId(),
      moveId: recorded.id,
      fromVersion: recorded.version,
      move: { ...move, isConfirmed: true },
    })
  return (
    <div className={styles.meaning}>
      {tellsNothing ? (
        <span className={styles.quiet}>{t('batch.ledger.meansNothing')}</span>
      ) : (
        <span className={styles.meant}>
          {strengthPctVol !== undefined && (
            <Strength
              pctVol={strengthPctVol}
              uncertaintyPctVol={interpretation.strengthUncertaintyPctVol}
            />
          )}
          {sugarGPerL !== undefined && (
            <Sugar gPerL={sugarGPerL} uncertaintyGPerL={interpretation.sugarUncertaintyGPerL} />
          )}
          {volumeMl !== undefined && <Quantity value={volumeMl} dimension="volume" />}
        </span>
      )}
      {doubts.map((doubt) => (
        <span key={doubt} className={styles.doubt}>
          {t(`codes.doubt.${doubt}`)}
        </span>
      ))}
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
