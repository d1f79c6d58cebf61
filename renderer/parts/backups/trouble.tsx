/** Something of the book's safety went wrong: what, and what to do. */
import type { ReactNode } from 'react'
import styles from './trouble.module.css'

export interface TroubleProps {
  children: ReactNode
  action?: ReactNode
}

export const Trouble = ({ children, action }: TroubleProps) => (
  <div className={styles.note} role="alert">
    <p>{children}</p>
    {action}
  </div>
)
