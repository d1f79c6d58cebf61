/** One narrow select of a filter, its name before it; `any` is no filter. */
import { useId } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import styles from './filter-choice.module.css'

export interface FilterChoiceProps<Value> {
  label: string
  /** Undefined shows any. */
  value: Value | undefined
  onChange: (value: Value | undefined) => void
  choices: readonly { readonly value: Value; readonly label: string }[]
}

/** Choices go by their number in the list: a value may be a number, a name, or null. */
export function FilterChoice<Value>({ label, value, onChange, choices }: FilterChoiceProps<Value>) {
  const t = useWords()
  const id = useId()
  const at = value === undefined ? -1 : choices.findIndex((choice) => choice.value === value)
  return (
    <span className={styles.choice}>
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        className={styles.select}
        value={at}
        data-chosen={at >= 0 || undefined}
        onChange={(event) => onChange(choices[Number(event.target.value)]?.value)}
      >
        <option value={-1}>{t('parts.any')}</option>
        {choices.map((choice, index) => (
          <option key={String(choice.value)} value={index}>
            {choice.label}
          </option>
        ))}
      </select>
    </span>
  )
}
