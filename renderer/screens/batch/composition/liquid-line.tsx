/** The numbers of one jar, on a line: strength, sugar, volume. */
import { useTranslation } from 'react-i18next'
import type { Liquid } from '../../../../shared/schemas/cellar.ts'
import { Strength, Sugar } from '../../../parts/quantity/composition.tsx'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import styles from './liquid-line.module.css'

export function LiquidLine({ liquid }: { liquid: Liquid | undefined }) {
  const { t } = useTranslation()
  if (!liquid) return <span className={styles.none}>{t('batch.timeline.noLiquid')}</span>
  return (
    <span className={styles.line}>
      <Strength pctVol={liquid.strengthPctVol} />
      <Sugar gPerL={liquid.sugarGPerL} />
      <Quantity value={liquid.volumeMl} dimension="volume" />
    </span>
  )
}
