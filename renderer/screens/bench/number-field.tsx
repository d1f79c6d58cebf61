/** A plain number in one fixed unit: proof, and how fine an instrument reads. */
import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { useSettings } from '../../app/settings.tsx'
import { Field } from '../../parts/fields/field.tsx'
import { numbersIn } from '../../parts/quantity/parse-number.ts'
import field from '../../parts/quantity/quantity-field.module.css'

export interface NumberFieldProps {
  label: string
  unit: string
  /** A value from outside is written into the field. */
  value: number | undefined
  onChange: (value: number | undefined) => void
  /** What is wrong with a number that can be read; undefined when nothing is. */
  problemOf?: (value: number) => string | undefined
  isRequired?: boolean
}

export function NumberField(props: NumberFieldProps) {
  const { label, unit, value, onChange, problemOf, isRequired = true } = props
  const { t } = useTranslation()
  const { locale } = useSettings()
  const editable = (given: number | undefined) =>
    given === undefined
      ? ''
      : new Intl.NumberFormat(locale, { useGrouping: false, maximumSignificantDigits: 3 }).format(
          given,
        )
  const [text, setText] = useState(() => editable(value))
  const [lastGiven, setLastGiven] = useState(value)
  const [isLeft, setIsLeft] = useState(false)
  if (value !== lastGiven) {
    setLastGiven(value)
    setText(editable(value))
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
  const problem = unreadable ?? (found === undefined ? undefined : problemOf?.(found))

  function change(next: string) {
    setText(next)
    const number = read(next)
    const usable = number !== undefined && !problemOf?.(number) ? number : undefined
    setLastGiven(usable)
    if (usable !== value) onChange(usable)
  }

  return (
    <Field label={label} isRequired={isRequired} problem={isLeft ? problem : undefined}>
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
            onBlur={() => setIsLeft(true)}
          />
          <span className={field['unit']}>{unit}</span>
        </span>
      )}
    </Field>
  )
}
