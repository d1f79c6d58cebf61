/** One thing that is so or not, with its words beside the box. */
import { Checkbox, type CheckboxProps } from 'react-aria-components'
import type { ReactNode } from 'react'
import { classes } from '../classes.ts'
import styles from './check.module.css'

export interface CheckProps extends Pick<
  CheckboxProps,
  'isSelected' | 'onChange' | 'isInvalid' | 'value'
> {
  children: ReactNode
}

/** With a `value` it is one of a group's, which then knows what is chosen. */
export const Check = ({ children, ...props }: CheckProps) => (
  <Checkbox {...props} className={classes(styles.check)}>
    <span className={styles.box} aria-hidden />
    {children}
  </Checkbox>
)
