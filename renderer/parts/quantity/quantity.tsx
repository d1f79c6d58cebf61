/** A number with its unit in a quieter voice. */
import type { Dimension } from './units.ts'
import { useQuantities } from './use-quantities.ts'
import styles from './quantity.module.css'

export interface QuantityProps {
  /** In the base unit: ml, g, % vol, g/L, °C, kg/m³, °Bx, minor units of money. */
  value: number
  dimension: Dimension
  unit?: string
  /** Standard uncertainty in the same unit; shown after the number, quieter. */
  uncertainty?: number | undefined
  /** True for sizes as they are sold: 3 L, not 3.00 L. */
  isSize?: boolean
}

export function Quantity({ value, dimension, unit, uncertainty, isSize = false }: QuantityProps) {
  const quantities = useQuantities()
  const shown = isSize ? quantities.size(value, dimension) : quantities.of(value, dimension, unit)
  return (
    <span className={styles.quantity}>
      {shown.isUnitFirst && <span className={styles.unit}>{shown.unit}</span>}
      {shown.number}
      {uncertainty !== undefined && (
        <span className={styles.unit}>
          {'\u00a0±\u00a0'}
          {quantities.difference(uncertainty, dimension, unit).number}
        </span>
      )}
      {shown.unit && !shown.isUnitFirst && (
        <span className={styles.unit}>
          {'\u00a0'}
          {shown.unit}
        </span>
      )}
    </span>
  )
}
