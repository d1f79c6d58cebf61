/** The end of every form: when it was done, and folded away what is seldom said. */
import { useState, type ReactNode } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { TextInput } from '../../fields/text-input.tsx'
import { DateTimeField } from '../../time/date-time-field.tsx'
import type { DraftHead, Problem } from '../drafts/draft-basics.ts'
import { useProblemWords } from './form-basics.ts'
import styles from './when-and-note.module.css'

interface WhenAndNoteProps<Draft extends DraftHead> {
  draft: Draft
  onChange: (draft: Draft) => void
  problems: readonly Problem[]
  hasNote?: boolean
  /** Fields that are seldom filled in. */
  children?: ReactNode
  /** One of those fields holds something. */
  isMoreFilled?: boolean
}

export function WhenAndNote<Draft extends DraftHead>(props: WhenAndNoteProps<Draft>) {
  const { draft, onChange, problems, hasNote = true, children, isMoreFilled = false } = props
  const t = useWords()
  const problemWords = useProblemWords(problems)
  const [isOpen, setIsOpen] = useState(isMoreFilled || draft.note !== '')
  return (
    <>
      <DateTimeField
        label={t('batch.form.when')}
        value={draft.at}
        onChange={(at) => onChange({ ...draft, at })}
        problem={problemWords('at')}
      />
      {hasNote && (
        <details
          className={styles.more}
          open={isOpen}
          onToggle={(event) => setIsOpen(event.currentTarget.open)}
        >
          <summary>{t('batch.form.more')}</summary>
          <div className={styles.fields}>
            {children}
            <TextInput
              label={t('batch.form.note')}
              value={draft.note}
              onChange={(note) => onChange({ ...draft, note })}
              maxLength={4000}
            />
          </div>
        </details>
      )}
    </>
  )
}
