/** A choice of one from a few, all in sight. */
import { Label, Radio, RadioGroup } from 'react-aria-components'
import type { Choice } from './choice-field.tsx'
import { classes } from '../classes.ts'
import field from './field.module.css'
import styles from './segments.module.css'

export interface SegmentsProps<Value extends string> {
  label: string
  /** True keeps the label for screen readers only. */
  isLabelHidden?: boolean
  value: Value
  onChange: (value: Value) => void
  choices: readonly Choice<Value>[]
}

export function Segments<Value extends string>(props: SegmentsProps<Value>) {
  const { label, isLabelHidden = false, value, onChange, choices } = props
  return (
    <RadioGroup
      className={classes(styles.group)}
      orientation="horizontal"
      value={value}
      onChange={(chosen) => {
        const choice = choices.find((one) => one.value === chosen)
        if (choice) onChange(choice.value)
      }}
    >
      <Label className={isLabelHidden ? 'visually-hidden' : classes(field['label'])}>{label}</Label>
      <div className={styles.row}>
        {choices.map((choice) => (
          <Radio key={choice.value} value={choice.value} className={classes(styles.segment)}>
            {choice.label}
          </Radio>
        ))}
      </div>
    </RadioGroup>
  )
}
