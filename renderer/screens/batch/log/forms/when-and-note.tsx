/** The end of every form: when it was done, and a note. */
import { useTranslation } from 'react-i18next'
import { TextInput } from '../../../../parts/fields/text-input.tsx'
import { DateTimeField } from '../../../../parts/time/date-time-field.tsx'
import type { DraftHead, Problem } from '../drafts/draft-basics.ts'
import { useProblemWords } from './form-basics.ts'

interface WhenAndNoteProps<Draft extends DraftHead> {
  draft: Draft
  onChange: (draft: Draft) => void
  problems: readonly Problem[]
  hasNote?: boolean
}

export function WhenAndNote<Draft extends DraftHead>(props: WhenAndNoteProps<Draft>) {
  const { draft, onChange, problems, hasNote = true } = props
  const { t } = useTranslation()
  const problemWords = useProblemWords(problems)
  return (
    <>
      <DateTimeField
        label={t('batch.form.when')}
        value={draft.at}
        onChange={(at) => onChange({ ...draft, at })}
        problem={problemWords('at')}
      />
      {hasNote && (
        <TextInput
          label={t('batch.form.note')}
          value={draft.note}
          onChange={(note) => onChange({ ...draft, note })}
          maxLength={4000}
        />
      )}
    </>
  )
}
