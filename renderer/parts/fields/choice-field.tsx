/** A choice of one from a list, as the platform's own select. */
import { Field } from './field.tsx'
import { focusOnMount } from './focus-on-mount.ts'
import styles from './field.module.css'

export interface Choice<Value extends string> {
  value: Value
  label: string
  isDisabled?: boolean
}

export interface ChoiceFieldProps<Value extends string> {
  label: string
  /** Empty while nothing is chosen. */
  value: Value | ''
  onChange: (value: Value) => void
  choices: readonly Choice<Value>[]
  /** Shown while nothing is chosen. */
  placeholder?: string | undefined
  isRequired?: boolean
  problem?: string | undefined
  description?: string | undefined
  autoFocus?: boolean
}

export function ChoiceField<Value extends string>({
  label,
  value,
  onChange,
  choices,
  placeholder,
  isRequired = true,
  problem,
  description,
  autoFocus = false,
}: ChoiceFieldProps<Value>) {
  return (
    <Field label={label} isRequired={isRequired} problem={problem} description={description}>
      {(control) => (
        <select
          {...control}
          className={styles.input}
          value={value}
          ref={autoFocus ? focusOnMount : undefined}
          onChange={(event) => {
            const chosen = choices.find((choice) => choice.value === event.target.value)
            if (chosen) onChange(chosen.value)
          }}
        >
          {value === '' && <option value="">{placeholder ?? ''}</option>}
          {choices.map((choice) => (
            <option key={choice.value} value={choice.value} disabled={choice.isDisabled}>
              {choice.label}
            </option>
          ))}
        </select>
      )}
    </Field>
  )
}
