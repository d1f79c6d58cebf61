/**
 * A field for a quantity: takes what people write, shows how it was read, and says beside the
 * field what it could not read. Hands out base units; `undefined` while there is nothing to hand.
 */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useSettings } from '../../app/settings.tsx'
import { classes } from '../classes.ts'
import { Field } from '../fields/field.tsx'
import { focusOnMount } from '../fields/focus-on-mount.ts'
import { editableQuantity, fieldUnitSymbol } from './format-quantity.ts'
import { parseQuantity, type QuantityContext } from './parse-quantity.ts'
import { problemWords } from './problem-words.ts'
import type { Dimension, Range } from './units.ts'
import { useQuantities } from './use-quantities.ts'
import styles from './quantity-field.module.css'

export interface QuantityFieldProps {
  label: string
  dimension: Dimension
  /** In the base unit; a value from outside is written into the field. */
  value: number | undefined
  onChange: (value: number | undefined) => void
  /** What a bare number is in; left out, the usual unit of the cellar's system. */
  unit?: string | undefined
  /** In base units; left out, what the contract takes. */
  range?: Range | undefined
  isRequired?: boolean
  /** Shows what is wrong at once, as after trying to send the form. */
  showsProblem?: boolean
  /** What is wrong by another's judgement, such as the ledger's refusal. */
  problem?: string | undefined
  description?: string | undefined
  autoFocus?: boolean
}

export function QuantityField(props: QuantityFieldProps) {
  const { label, dimension, value, onChange, unit, range, isRequired = false } = props
  const settings = useSettings()
  const quantities = useQuantities()
  const t = useWords()
  const context = { ...settings, dimension, unit, range }
  const editable = (given: number | undefined) =>
    given === undefined ? '' : editableQuantity(given, dimension, context)
  const [text, setText] = useState(() => editable(value))
  const [lastGiven, setLastGiven] = useState(value)
  const [isLeft, setIsLeft] = useState(false)

  const reading = parseQuantity(text, context)
  const ownValue = reading.ok ? reading.value : undefined
  // A value that did not come from this field replaces what is written in it.
  if (value !== lastGiven) {
    setLastGiven(value)
    if (value !== ownValue) setText(editable(value))
  }

  function change(next: string) {
    setText(next)
    const read = parseQuantity(next, context)
    const found = read.ok ? read.value : undefined
    setLastGiven(found)
    if (found !== value) onChange(found)
  }

  const isMissing = !reading.ok && reading.problem.code === 'empty'
  const ownProblem =
    !reading.ok && (isLeft || props.showsProblem) && (isRequired || !isMissing)
      ? problemWords(reading.problem, dimension, quantities, t)
      : undefined
  const problem = ownProblem ?? props.problem
  const echo =
    reading.ok && dimension !== 'count' ? quantities.text(reading.value, dimension) : undefined
  const ownUnit = fieldUnitSymbol(dimension, context)
  // "500" beside "ml" cannot be read otherwise; commas, points and other units can.
  const isPlain = /^\d+$/.test(text.trim()) && echo?.endsWith(ownUnit)
  const readingText =
    echo !== undefined && !isPlain && isFaithful(echo, ownValue, context) ? echo : undefined
  return (
    <Field label={label} isRequired={isRequired} problem={problem} description={props.description}>
      {(control) => (
        <span className={styles.row}>
          <span className={styles.box}>
            <input
              {...control}
              className={styles.input}
              type="text"
              inputMode="decimal"
              autoComplete="off"
              spellCheck={false}
              ref={props.autoFocus ? focusOnMount : undefined}
              value={text}
              onChange={(event) => change(event.target.value)}
              onBlur={() => setIsLeft(text.trim() !== '' || isLeft)}
            />
            <span className={classes(styles.unit, namesUnit.test(text) && styles.named)}>
              {ownUnit}
            </span>
          </span>
          {readingText && (
            <output className={styles.reading}>
              {t('parts.quantity.reading', { reading: readingText })}
            </output>
          )}
        </span>
      )}
    </Field>
  )
}

/** "1.2 kg": the unit of a bare number beside it would be read as part of it. */
const namesUnit = /[\p{L}°%]/u

/** An echo that rounds away what was written says less than the field itself: 98.5 g is not 99 g. */
function isFaithful(echo: string, value: number | undefined, context: QuantityContext): boolean {
  const back = parseQuantity(echo, context)
  if (!back.ok || value === undefined) return false
  return Math.abs(back.value - value) <= 0.002 * Math.abs(value)
}
