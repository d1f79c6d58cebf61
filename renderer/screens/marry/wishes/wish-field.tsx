/** One quantity wished for: how strictly, and how much, by a field or a slider. */
import { useWords } from '../../../app/words/use-words.ts'
import { ChoiceField } from '../../../parts/fields/choice-field.tsx'
import { Slider } from '../../../parts/fields/slider.tsx'
import { QuantityField } from '../../../parts/quantity/quantity-field.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { Sense, WishedFor, WishEntry } from '../entries.ts'
import styles from './wishes.module.css'

/** How far a slider reaches; a field takes what lies beyond. */
const reach = {
  strengthPctVol: { dimension: 'strength', max: 70, step: 0.5 },
  sugarGPerL: { dimension: 'sugar', max: 500, step: 5 },
  acidGPerL: { dimension: 'acid', max: 25, step: 0.5 },
} as const

const senses: readonly Sense[] = ['any', 'exactly', 'atLeast', 'atMost']

export interface WishFieldProps {
  name: WishedFor
  wish: WishEntry
  onChange: (wish: WishEntry) => void
  /** Only the value, where it is said elsewhere how strictly. */
  isExact?: boolean
  description?: string | undefined
}

export function WishField({ name, wish, onChange, isExact = false, description }: WishFieldProps) {
  const t = useWords()
  const { text } = useQuantities()
  const { dimension, max, step } = reach[name]
  const { sense, value } = wish
  const label = t(`marry.wish.${name}`)
  const isAsked = isExact || sense !== 'any'
  const shown = Math.min(value ?? 0, max)
  return (
    <div className={styles.wish}>
      {isAsked && (
        <div className={styles.wide}>
          <Slider
            label={label}
            value={shown}
            onChange={(next) => onChange({ ...wish, value: next })}
            min={0}
            max={max}
            step={step}
            words={text(value ?? 0, dimension)}
          />
        </div>
      )}
      {!isExact && (
        <ChoiceField
          label={t('marry.wishes.sense', { wish: label })}
          value={sense}
          onChange={(chosen) => onChange({ ...wish, sense: chosen })}
          choices={senses.map((one) => ({ value: one, label: t(`marry.sense.${one}`) }))}
        />
      )}
      {isAsked && (
        <QuantityField
          label={t(isExact ? 'marry.mend.target' : 'marry.wishes.value', { wish: label })}
          dimension={dimension}
          value={value}
          onChange={(next) => onChange({ ...wish, value: next })}
          isRequired
          description={description}
        />
      )}
    </div>
  )
}
