/** The fields of an act: how many and from where, or how much; for a tasting, what it was like. */
import { useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { TextInput } from '../../../parts/fields/text-input.tsx'
import { TasteFields } from '../../../parts/tasting/taste-fields.tsx'
import { DateTimeField } from '../../../parts/time/date-time-field.tsx'
import type { ActFieldsProps } from './act-fields-props.ts'
import { BottlesFields } from './bottles-fields.tsx'
import { OpenedFields } from './opened-fields.tsx'
import field from '../../../parts/fields/field.module.css'
import styles from './acts.module.css'

export function ActFields({ act, ...rest }: ActFieldsProps) {
  const t = useWords()
  const { draft, onChange, problems } = rest
  const isTasting = act.kind === 'taste'
  const note = (
    <TextInput
      label={t(isTasting ? 'shelf.taste.words' : 'shelf.form.note')}
      value={draft.note}
      onChange={(changed) => onChange({ ...draft, note: changed })}
      rows={isTasting ? 3 : 2}
      maxLength={4000}
    />
  )
  return (
    <>
      {isTasting ? (
        <>
          <TasteFields
            tasting={draft.tasting}
            onChange={(tasting) => onChange({ ...draft, tasting })}
          />
          {note}
          <p className={field['problem']} aria-live="polite">
            {problems.taste}
          </p>
        </>
      ) : 'lot' in act ? (
        <BottlesFields act={act} {...rest} />
      ) : (
        <OpenedFields act={act} {...rest} />
      )}
      <DateTimeField
        label={t('shelf.form.at')}
        value={draft.at}
        onChange={(at) => onChange({ ...draft, at })}
        problem={problems.at}
      />
      {!isTasting && <More isFilled={draft.note !== ''}>{note}</More>}
    </>
  )
}

/** What is seldom said, folded away. */
function More({ isFilled, children }: { isFilled: boolean; children: React.ReactNode }) {
  const t = useWords()
  const [isOpen, setOpen] = useState(isFilled)
  return (
    <details
      className={styles.more}
      open={isOpen}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>{t('shelf.form.more')}</summary>
      <div>{children}</div>
    </details>
  )
}
