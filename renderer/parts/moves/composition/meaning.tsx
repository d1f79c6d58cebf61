/** What a reading tells, each quantity with its uncertainty, and why it is doubted. */
import { useWords } from '../../../app/words/use-words.ts'
import type { Interpretation } from '../../../../shared/schemas/readings.ts'
import { Strength, Sugar } from '../../quantity/composition.tsx'
import { Quantity } from '../../quantity/quantity.tsx'
import styles from './liquid-line.module.css'

export function Meaning({ interpretation }: { interpretation: Interpretation }) {
  const t = useWords()
  const { strengthPctVol, sugarGPerL, volumeMl, doubts } = interpretation
  const tellsNothing = [strengthPctVol, sugarGPerL, volumeMl].every((value) => value === undefined)
  return (
    <>
      {tellsNothing ? (
        <span className={styles.none}>{t('batch.ledger.meansNothing')}</span>
      ) : (
        <span className={styles.line}>
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
    </>
  )
}
