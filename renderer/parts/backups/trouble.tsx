/** Something of the book's safety went wrong: what, and what to do. */
import type { ReactNode } from 'react'
import styles from './trouble.module.css'

export const Trouble = ({ children }: { children: ReactNode }) => (
  <div className={styles.note} role="alert">
    <p>{children}</p>
  </div>
)
