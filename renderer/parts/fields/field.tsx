/** Label, control, and beside them what is wrong: the frame of every field. */
import { useId, type ReactNode } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import styles from './field.module.css'

/** Spread onto the control, so that label, hint and problem are tied to it. */
export interface ControlProps {
  id: string
  'aria-describedby'?: string
  'aria-invalid'?: true
  'aria-required'?: true
}

export interface FieldProps {
  label: string
  isRequired?: boolean
  problem?: string | undefined
  description?: string | undefined
  children: (control: ControlProps) => ReactNode
}

export function Field({ label, isRequired = false, problem, description, children }: FieldProps) {
  const t = useWords()
  const id = useId()
  const problemId = `${id}-problem`
  const descriptionId = `${id}-description`
  const describedBy = [problem && problemId, description && descriptionId].filter(Boolean)
  const control: ControlProps = {
    id,
    ...(describedBy.length > 0 && { 'aria-describedby': describedBy.join(' ') }),
    ...(problem && { 'aria-invalid': true }),
    ...(isRequired && { 'aria-required': true }),
  }
  return (
    <div className={styles.field}>
      <label className={styles.label} htmlFor={id}>
        {label}
        {!isRequired && <span className={styles.optional}> {t('parts.optional')}</span>}
      </label>
      {children(control)}
      {description && (
        <p className={styles.description} id={descriptionId}>
          {description}
        </p>
      )}
      <p className={styles.problem} id={problemId} aria-live="polite">
        {problem}
      </p>
    </div>
  )
}
