/**
 * A score from 0 to 10 as a row of steps: a press, the arrows, or the digit itself sets it (a 1
 * followed at once by a 0 is a ten); Delete takes it back.
 */
import { useId, useRef, type KeyboardEvent } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useSettings } from '../../app/settings.tsx'
import { Button } from '../button/button.tsx'
import { focusOnMount } from '../fields/focus-on-mount.ts'
import styles from './taste-fields.module.css'
import { numberFormat } from '../formatters/formatters.ts'

export interface ScoreFieldProps {
  label: string
  /** What none and as much as can be mean. */
  ends: string
  value: number | undefined
  onChange: (value: number | undefined) => void
  autoFocus?: boolean
}

const most = 10
const steps = Array.from({ length: most + 1 }, (_, step) => step)
/** A second digit within this belongs to the first. */
const tenWithinMs = 900

export function ScoreField({ label, ends, value, onChange, autoFocus = false }: ScoreFieldProps) {
  const t = useWords()
  const { locale } = useSettings()
  const labelId = useId()
  const oneAt = useRef(0)
  const plain = numberFormat(locale, { maximumFractionDigits: 1 })

  function onKeyDown(event: KeyboardEvent) {
    if (event.ctrlKey || event.metaKey || event.altKey) return
    const next = valueOfKey(event.key, value, event.timeStamp - oneAt.current < tenWithinMs)
    if (next === 'other') return
    event.preventDefault()
    oneAt.current = event.key === '1' ? event.timeStamp : 0
    onChange(next)
  }

  return (
    <div className={styles.score}>
      <span id={labelId} className={styles.label}>
        {label}
      </span>
      <div className={styles.steps}>
        {steps.map((step) => (
          <span
            key={step}
            className={styles.step}
            data-filled={value !== undefined && step > 0 && step <= value ? true : undefined}
            data-at={value !== undefined && step === Math.round(value) ? true : undefined}
            aria-hidden
          >
            {step}
          </span>
        ))}
        <input
          className={styles.range}
          type="range"
          min={0}
          max={most}
          step={1}
          ref={autoFocus ? focusOnMount : undefined}
          aria-labelledby={labelId}
          aria-valuetext={value === undefined ? t('shelf.taste.notScored') : plain.format(value)}
          value={value ?? 0}
          onChange={(event) => onChange(Number(event.target.value))}
          // A press on the nought of what has no score changes nothing, and yet it scores.
          onClick={(event) => onChange(Number(event.currentTarget.value))}
          onKeyDown={onKeyDown}
        />
      </div>
      <span className={styles.ends}>{ends}</span>
      {value !== undefined && (
        <Button
          kind="quiet"
          aria-label={t('shelf.taste.clearOf', { axis: label })}
          onPress={() => onChange(undefined)}
          // Delete does the same from the field: the Tab key goes on to the next axis.
          excludeFromTabOrder
        >
          {t('shelf.taste.clear')}
        </Button>
      )}
    </div>
  )
}

/** What a key makes of a score; `other` where the key is not for this field. */
export function valueOfKey(
  key: string,
  value: number | undefined,
  isAfterOne: boolean,
): number | undefined | 'other' {
  if (/^\d$/.test(key)) return key === '0' && isAfterOne ? most : Number(key)
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return Math.min(most, (value ?? -1) + 1)
    case 'ArrowLeft':
    case 'ArrowDown':
      return Math.max(0, (value ?? 1) - 1)
    case 'Home':
      return 0
    case 'End':
      return most
    case 'Delete':
    case 'Backspace':
      return undefined
    default:
      return 'other'
  }
}
