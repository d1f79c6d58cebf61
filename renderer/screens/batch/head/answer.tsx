/** The answer to the page's question: how strong, how sweet, how much, now; and in which vessels. */
import { useWords } from '../../../app/words/use-words.ts'
import type { BatchSummary } from '../../../../shared/schemas/cellar.ts'
import { QuantityMark } from '../../../parts/quantity/quantity-mark.tsx'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { Term } from '../../../parts/term/term.tsx'
import { Vessels } from './vessels.tsx'
import styles from './answer.module.css'

export function Answer({ summary }: { summary: BatchSummary }) {
  const t = useWords()
  const { liquid, jars, bottleLots } = summary
  const inJars = jars.some((jar) => jar.liquid !== undefined)
  const inBottles = bottleLots.some(({ count }) => count > 0)
  const where = inJars && inBottles ? 'together' : inBottles ? 'inBottles' : 'free'
  return (
    <div className={styles.answer}>
      <section className={styles.figures} aria-label={t('batch.answer.label')}>
        {liquid ? (
          <>
            <p className={styles.strength}>
              <QuantityMark kind="strength" />
              <Quantity value={liquid.strengthPctVol} dimension="strength" />
              <Term id="strength" />
            </p>
            <p className={styles.sugar}>
              <QuantityMark kind="sugar" />
              <Quantity value={liquid.sugarGPerL} dimension="sugar" />
              <Term id="sugar" />
            </p>
            <p className={styles.volume}>
              <Quantity value={liquid.volumeMl} dimension="volume" />{' '}
              <span className={styles.where}>{t(`batch.answer.${where}`)}</span>
            </p>
          </>
        ) : (
          <p className={styles.volume}>{t('batch.answer.none')}</p>
        )}
      </section>
      <Vessels summary={summary} />
    </div>
  )
}
