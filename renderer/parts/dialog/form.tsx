/** A form that sends itself by Enter and never reloads the page. */
import type { ReactNode } from 'react'
import styles from './form.module.css'

export interface FormProps {
  onSubmit: () => void
  children: ReactNode
  'aria-label'?: string
}

export const Form = ({ onSubmit, children, ...rest }: FormProps) => (
  <form
    {...rest}
    className={styles.form}
    noValidate
    onSubmit={(event) => {
      event.preventDefault()
      onSubmit()
    }}
  >
    {children}
  </form>
)
