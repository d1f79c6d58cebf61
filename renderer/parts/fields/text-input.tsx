/** A field for a name or a note. */
import { Field } from './field.tsx'
import { focusOnMount } from './focus-on-mount.ts'
import styles from './field.module.css'

export interface TextInputProps {
  label: string
  value: string
  onChange: (value: string) => void
  isRequired?: boolean
  problem?: string | undefined
  description?: string | undefined
  maxLength?: number
  /** Above 1 the text may run over several lines. */
  rows?: number
  autoFocus?: boolean
}

export function TextInput({
  label,
  value,
  onChange,
  isRequired = false,
  problem,
  description,
  maxLength = 120,
  rows = 1,
  autoFocus = false,
}: TextInputProps) {
  return (
    <Field label={label} isRequired={isRequired} problem={problem} description={description}>
      {(control) => {
        const shared = {
          ...control,
          className: styles.input,
          value,
          maxLength,
          ref: autoFocus ? focusOnMount : undefined,
          autoComplete: 'off',
        }
        return rows > 1 ? (
          <textarea {...shared} rows={rows} onChange={(event) => onChange(event.target.value)} />
        ) : (
          <input {...shared} type="text" onChange={(event) => onChange(event.target.value)} />
        )
      }}
    </Field>
  )
}
