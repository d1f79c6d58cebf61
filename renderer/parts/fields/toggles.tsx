/** Things to show or leave out, all in sight. */
import { Checkbox, CheckboxGroup, Label } from 'react-aria-components'
import type { Choice } from './choice-field.tsx'
import { classes } from '../classes.ts'
import styles from './toggles.module.css'

export interface TogglesProps<Value extends string> {
  label: string
  value: readonly Value[]
  onChange: (value: Value[]) => void
  choices: readonly Choice<Value>[]
}

export function Toggles<Value extends string>(props: TogglesProps<Value>) {
  const { label, value, onChange, choices } = props
  return (
    <CheckboxGroup
      className={classes(styles.group)}
      value={[...value]}
      onChange={(chosen) =>
        onChange(choices.flatMap((one) => (chosen.includes(one.value) ? [one.value] : [])))
      }
    >
      <Label className="visually-hidden">{label}</Label>
      {choices.map((choice) => (
        <Checkbox
          key={choice.value}
          value={choice.value}
          isDisabled={choice.isDisabled ?? false}
          className={classes(styles.toggle)}
        >
          <span className={styles.box} aria-hidden />
          {choice.label}
        </Checkbox>
      ))}
    </CheckboxGroup>
  )
}
