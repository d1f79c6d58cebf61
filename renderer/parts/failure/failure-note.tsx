/** What failed and what to do about it, where the act was. */
import type { ReactNode } from 'react'
import { useFailureWords } from './failure-words.ts'
import styles from './failure-note.module.css'

export interface FailureNoteProps {
  /** Null shows nothing. */
  error: Error | null
  action?: ReactNode
}

export function FailureNote({ error, action }: FailureNoteProps) {
  const words = useFailureWords()
  if (!error) return null
  return (
    <div className={styles.note} role="alert">
      <p>{words(error)}</p>
      {action}
    </div>
  )
}
