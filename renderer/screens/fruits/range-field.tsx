/** Low, typical and high of one fact, with what is wrong between them. */
import { useId } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { NumberField } from '../../parts/quantity/number-field.tsx'
import { QuantityField } from '../../parts/quantity/quantity-field.tsx'
import type { FactQuantity, FactUnit } from './facts.ts'
import { problemOfRange, type RangeDraft } from './fruit-draft.ts'
import styles from './fruit-form.module.css'

/** What a range's numbers are: a quantity in the cellar's units, or a number in one unit. */
export type RangeUnit =
  { readonly dimension: FactQuantity } | { readonly unit: FactUnit; readonly max: number }

export interface RangeFieldProps {
  label: string
  of: RangeUnit
  value: RangeDraft
  onChange: (value: RangeDraft) => void
  isNeeded?: boolean
  /** Tells what is missing, as after trying to send the form. */
  showsProblem: boolean
}

const ends = ['low', 'typical', 'high'] as const

export function RangeField(props: RangeFieldProps) {
  const { label, of, value, onChange, isNeeded = false, showsProblem } = props
  const t = useWords()
  const problemId = useId()
  const problem = problemOfRange(value, isNeeded)
  // A range out of order is wrong at once; a missing number may still be on its way.
  const isTold = problem === 'order' || (showsProblem && problem !== undefined)
  return (
    <fieldset className={styles.range} aria-describedby={isTold ? problemId : undefined}>
      <legend className={styles.legend}>{label}</legend>
      <div className={styles.ends}>
        {ends.map((end) => (
          <EndField
            key={end}
            label={t(`fruits.form.${end}`)}
            of={of}
            value={value[end]}
            onChange={(number) => onChange({ ...value, [end]: number })}
          />
        ))}
      </div>
      <p className={styles.problem} id={problemId} aria-live="polite">
        {isTold && problem && t(`fruits.form.${problem}`)}
      </p>
    </fieldset>
  )
}

interface EndFieldProps {
  label: string
  of: RangeUnit
  value: number | undefined
  onChange: (value: number | undefined) => void
}

function EndField({ label, of, value, onChange }: EndFieldProps) {
  const t = useWords()
  // Whether all three are needed is told of the range, not of each of its ends.
  const shared = { label, value, onChange, isRequired: true }
  if ('dimension' in of) return <QuantityField {...shared} dimension={of.dimension} />
  const { unit, max } = of
  return (
    <NumberField
      {...shared}
      unit={t(`fruits.unit.${unit}`)}
      digits={6}
      problemOf={(number) =>
        number < 0 || number > max ? t('fruits.form.outside', { min: 0, max }) : undefined
      }
    />
  )
}
