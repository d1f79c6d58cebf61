/** Every batch's value on one day, beside the pointer or the keyboard's cursor. */
import { useWords } from '../app/words/use-words.ts'
import { Quantity } from '../parts/quantity/quantity.tsx'
import type { ComparedLine, CompareRow } from './compare-rows.ts'
import { CompareSign } from './compare-sign.tsx'
import { curveInk, type CurveQuantity } from './curve-quantities.ts'
import styles from './compare-lines.module.css'

interface CompareReadoutProps {
  lines: readonly ComparedLine[]
  rows: readonly CompareRow[]
  quantity: CurveQuantity
  day: number
}

export function CompareReadout({ lines, rows, quantity, day }: CompareReadoutProps) {
  const t = useWords()
  const row = rows.find((one) => one.day === day)
  return (
    <div className={styles.readout}>
      <strong>{t('batch.curve.day', { day: Math.floor(day) })}</strong>
      {lines.map(({ batch }, index) => {
        const value = row?.values[index]
        return (
          value != null && (
            <span key={batch.id} className={styles.line}>
              <CompareSign index={index} colour={batch.colour} />
              {batch.name}
              <Quantity value={value} dimension={curveInk[quantity].dimension} />
            </span>
          )
        )
      })}
    </div>
  )
}
