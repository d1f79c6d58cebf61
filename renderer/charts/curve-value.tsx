/** One quantity of the curve at an instant, with its mark or name, and the band that holds it. */
import { useWords } from '../app/words/use-words.ts'
import type { CurveValues } from '../../shared/schemas/steeping.ts'
import { Strength, Sugar } from '../parts/quantity/composition.tsx'
import { Quantity } from '../parts/quantity/quantity.tsx'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import { curveInk, type CurveQuantity } from './curve-quantities.ts'
import styles from './batch-curve.module.css'

export interface CurveValueProps {
  quantity: CurveQuantity
  row: { values: CurveValues | null; low?: CurveValues | undefined; high?: CurveValues | undefined }
  /** False where a heading names the quantity. */
  isNamed?: boolean
}

export function CurveValue({ quantity, row, isNamed = false }: CurveValueProps) {
  const t = useWords()
  const { of } = useQuantities()
  const { values, low, high } = row
  if (!values) return null
  const { dimension, mark } = curveInk[quantity]
  const value = values[quantity]
  const isWide =
    low && high && of(low[quantity], dimension).text !== of(high[quantity], dimension).text
  return (
    <span className={styles.value}>
      {mark === 'strength' && <Strength pctVol={value} />}
      {mark === 'sugar' && <Sugar gPerL={value} />}
      {!mark && (
        <>
          {isNamed && `${t(`batch.curve.quantity.${quantity}`)} `}
          <Quantity value={value} dimension={dimension} />
        </>
      )}
      {isWide && (
        <span className={styles.quiet}>
          {' '}
          {t('batch.curve.band', {
            low: of(low[quantity], dimension).number,
            high: of(high[quantity], dimension).number,
          })}
        </span>
      )}
    </span>
  )
}
