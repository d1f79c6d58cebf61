/** Work that takes its time: what it is at, how far it is, and a way to stop it. */
import type { ReactNode } from 'react'
import { Button } from '../button/button.tsx'
import { classes } from '../classes.ts'
import styles from './work-progress.module.css'

export interface WorkProgressProps {
  /** What the work is, for the bar. */
  label: string
  /** What it is at just now; said aloud when it changes. */
  step: string
  /** From 0 to 1. */
  share: number
  stopWord: string
  onStop: () => void
  /** With more room, its step in bold: the one thing its screen is about. */
  isProminent?: boolean
  /** More words below the bar. */
  children?: ReactNode
}

export function WorkProgress(props: WorkProgressProps) {
  const { label, step, share, stopWord, onStop, isProminent, children } = props
  return (
    <div className={classes(styles.work, isProminent && styles.prominent)}>
      <div className={styles.words}>
        <p className={styles.step} aria-live="polite">
          {step}
        </p>
        <progress className={styles.bar} max={1} value={share} aria-label={label} />
        {children}
      </div>
      <Button onPress={onStop}>{stopWord}</Button>
    </div>
  )
}
