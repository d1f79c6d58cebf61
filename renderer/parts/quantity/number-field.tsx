/** A plain number in one fixed unit: proof, how fine an instrument reads, a fact about a fruit. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useSettings } from '../../app/settings.tsx'
import { Field } from '../fields/field.tsx'
import { numbersIn } from './parse-number.ts'
import field from './quantity-field.module.css'
import { numberFormat } from '../formatters/formatters.ts'

export interface NumberFieldProps {
  label: string
  unit: string
  value: number | undefined
  /** Stands in the field, and counts, while there is no value of the maker's own. */
  fallback?: number | undefined
  onChange: (value: number | undefined) => void
  /** What is wrong with a number that can be read; undefined when nothing is. */
  problemOf?: (value: number) => string | undefined
  isRequired?: boolean
  /** How many digits of a given number the field shows; 3 for what is measured by eye. */
  digits?: number
  /** Says at once that a number is missing, as after trying to send the form. */
  showsProblem?: boolean
}

export function NumberField(props: NumberFieldProps) {
  const { label, unit, value, fallback, onChange, problemOf, isRequired = true } = props
  const { digits = 3, showsProblem = false } = props
  const t = useWords()
  const { locale } = useSettings()
  const editable = (given: number | undefined) =>
    given === undefined
      ? ''
      : numberFormat(locale, {
          useGrouping: false,
          maximumSignificantDigits: digits,
        }).format(given)
  const given = value ?? fallback
  const [text, setText] = useState(() => editable(given))
  const [seen, setSeen] = useState(given)
  const [isEditing, setEditing] = useState(false)
  const [isLeft, setIsLeft] = useState(false)
  // What changes elsewhere is written into the field, but never under the maker's hands.
  if (given !== seen) {
    setSeen(given)
    if (!isEditing) setText(editable(given))
  }

  const read = (written: string) => {
    const [only, ...others] = numbersIn(written, locale)
    return others.length === 0 ? only : undefined
  }
  const found = read(text)
  const isEmpty = text.trim() === ''
  const unreadable =
    found === undefined && !isEmpty
      ? t('parts.quantity.problem.notANumber', { example: editable(1.5) })
      : undefined
  const missing =
    isEmpty && isRequired && showsProblem ? t('parts.quantity.problem.empty') : undefined
  const problem = missing ?? unreadable ?? (found === undefined ? undefined : problemOf?.(found))

  function change(next: string) {
    setText(next)
    const number = read(next)
    const usable = number !== undefined && !problemOf?.(number) ? number : undefined
    if (usable !== value) onChange(usable)
  }

  function leave() {
    setEditing(false)
    setIsLeft(true)
    if (isEmpty) setText(editable(fallback))
  }

  return (
    <Field
      label={label}
      isRequired={isRequired}
      problem={isLeft || showsProblem ? problem : undefined}
    >
      {(control) => (
        <span className={field['box']}>
          <input
            {...control}
            className={field['input']}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            spellCheck={false}
            value={text}
            onChange={(event) => change(event.target.value)}
            onFocus={() => setEditing(true)}
            onBlur={leave}
          />
          <span className={field['unit']}>{unit}</span>
        </span>
      )}
    </Field>
  )
}
