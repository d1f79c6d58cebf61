/** An amount to turn: written, or moved by a slider; and held, where others may follow it. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { Dimension } from '../../parts/quantity/units.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { SteadyQuantityField } from '../../parts/quantity/steady-quantity-field.tsx'
import styles from './amount-field.module.css'

export interface AmountFieldProps {
  label: string
  dimension: Dimension
  value: number
  onChange: (value: number) => void
  min?: number
  /** The slider goes at least so far; further once a greater value is written. */
  max: number
  unit?: string
  description?: string | undefined
  /** Left out where nothing else follows. */
  pin?: { isHeld: boolean; onHold: (isHeld: boolean) => void }
}

export function AmountField(props: AmountFieldProps) {
  const { label, dimension, value, onChange, min = 0, max, unit, description, pin } = props
  const t = useWords()
  const quantities = useQuantities()
  const [reach, setReach] = useState(max)
  const furthest = Math.max(max, reach)
  if (value > furthest) setReach(niceCeiling(1.25 * value))
  return (
    <div className={styles.amount}>
      <div className={styles.written}>
        <SteadyQuantityField
          label={label}
          dimension={dimension}
          unit={unit}
          value={value}
          range={{ min, max: mostOf(dimension) }}
          onChange={onChange}
          description={description}
        />
        {pin && (
          <button
            type="button"
            className={styles.pin}
            aria-pressed={pin.isHeld}
            aria-label={t(pin.isHeld ? 'draft.pin.heldOne' : 'draft.pin.holdOne', { name: label })}
            onClick={() => pin.onHold(!pin.isHeld)}
          >
            {pin.isHeld ? t('draft.pin.held') : t('draft.pin.hold')}
          </button>
        )}
      </div>
      <input
        type="range"
        className={styles.slider}
        aria-label={label}
        aria-valuetext={quantities.text(value, dimension, unit)}
        min={min}
        max={furthest}
        step={stepFor(furthest)}
        value={Math.min(furthest, Math.max(min, value))}
        onChange={(event) => onChange(Number(event.target.value))}
      />
    </div>
  )
}

const mostOf = (dimension: Dimension): number => {
  switch (dimension) {
    case 'strength':
      return 97.2
    case 'sugar':
      return 1200
    case 'count':
      return 10_000
    default:
      return 10_000_000
  }
}

const stepFor = (max: number): number => {
  const step = 10 ** Math.floor(Math.log10(max / 100))
  return step >= 1 ? step : Math.max(0.1, step)
}

/** 1, 2 or 5 times a power of ten. */
export function niceCeiling(value: number): number {
  if (value <= 0) return 1
  const power = 10 ** Math.floor(Math.log10(value))
  const factor = [1, 2, 5, 10].find((one) => value <= one * power) ?? 10
  return factor * power
}
