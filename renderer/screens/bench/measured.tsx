/** A measured number: the number plain, its uncertainty and unit quieter. */
import type { BenchDimension } from '../../../shared/schemas/bench.ts'
import { useMeasuredText } from './use-measured-text.ts'
import styles from './measured.module.css'

export interface MeasuredProps {
  value: number
  uncertainty?: number | undefined
  dimension: BenchDimension
}

export function Measured({ value, uncertainty, dimension }: MeasuredProps) {
  const shown = useMeasuredText().of(value, uncertainty, dimension)
  return (
    <span className={styles.measured}>
      {shown.number}
      {shown.uncertainty && (
        <span className={styles.quiet}>
          {'\u00a0±\u00a0'}
          {shown.uncertainty}
        </span>
      )}
      {shown.unit && (
        <span className={styles.quiet}>
          {'\u00a0'}
          {shown.unit}
        </span>
      )}
    </span>
  )
}
