/** The numbers of one jar, on a line: strength, sugar, volume. */
import { useWords } from '../../../app/words/use-words.ts'
import type { Liquid } from '../../../../shared/schemas/cellar.ts'
import { Strength, Sugar } from '../../quantity/composition.tsx'
import { Quantity } from '../../quantity/quantity.tsx'
import styles from './liquid-line.module.css'

export function LiquidLine({ liquid }: { liquid: Liquid | undefined }) {
  const t = useWords()
  if (!liquid) return <span className={styles.none}>{t('batch.timeline.noLiquid')}</span>
  return (
    <span className={styles.line}>
      <Strength pctVol={liquid.strengthPctVol} />
      <Sugar gPerL={liquid.sugarGPerL} />
      <Quantity value={liquid.volumeMl} dimension="volume" />
    </span>
  )
}
