/** Strength or sugar with its mark: the pair that is read on every line of the cellar. */
import { Quantity } from './quantity.tsx'
import { QuantityMark } from './quantity-mark.tsx'
import styles from './composition.module.css'

export interface StrengthProps {
  pctVol: number
  uncertaintyPctVol?: number | undefined
}
export function Strength({ pctVol, uncertaintyPctVol }: StrengthProps) {
  return (
    <span className={styles.strength}>
      <QuantityMark kind="strength" />
      <Quantity value={pctVol} dimension="strength" uncertainty={uncertaintyPctVol} />
    </span>
  )
}

export interface SugarProps {
  gPerL: number
  uncertaintyGPerL?: number | undefined
}
export function Sugar({ gPerL, uncertaintyGPerL }: SugarProps) {
  return (
    <span className={styles.sugar}>
      <QuantityMark kind="sugar" />
      <Quantity value={gPerL} dimension="sugar" uncertainty={uncertaintyGPerL} />
    </span>
  )
}
