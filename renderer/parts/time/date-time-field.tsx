/** A field for when something was done: local time on screen, an instant in UTC for the book. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../button/button.tsx'
import { Field } from '../fields/field.tsx'
import field from '../fields/field.module.css'
import { instantOf, localInputOf } from './local-time.ts'
import { useNow } from './use-now.ts'
import styles from './date-time-field.module.css'

export interface DateTimeFieldProps {
  label: string
  /** An instant; `undefined` while what is written is no date. Begin with `new Date().toISOString()`. */
  value: string | undefined
  onChange: (value: string | undefined) => void
  /** True refuses times to come, as the book does. */
  isPastOnly?: boolean
  problem?: string | undefined
}

export function DateTimeField({
  label,
  value,
  onChange,
  isPastOnly = true,
  problem,
}: DateTimeFieldProps) {
  const t = useWords()
  const now = useNow()
  const [text, setText] = useState(() => (value ? localInputOf(value) : ''))
  const [lastGiven, setLastGiven] = useState(value)
  if (value !== lastGiven) {
    setLastGiven(value)
    if (value !== instantOf(text)) setText(value ? localInputOf(value) : '')
  }

  function change(next: string) {
    setText(next)
    const instant = instantOf(next)
    setLastGiven(instant)
    onChange(instant)
  }

  // Inputs count in minutes: the present one has come.
  const latest = new Date(now.getTime() + 60_000)
  const isFuture = isPastOnly && value !== undefined && new Date(value) > latest
  const own =
    value === undefined
      ? t('parts.time.problem.notATime')
      : isFuture
        ? t('parts.time.problem.inTheFuture')
        : undefined
  return (
    <Field label={label} isRequired problem={own ?? problem}>
      {(control) => (
        <span className={styles.row}>
          <input
            {...control}
            className={field.input}
            type="datetime-local"
            value={text}
            onChange={(event) => change(event.target.value)}
          />
          <Button kind="quiet" onPress={() => change(localInputOf(new Date().toISOString()))}>
            {t('parts.time.useNow')}
          </Button>
        </span>
      )}
    </Field>
  )
}
