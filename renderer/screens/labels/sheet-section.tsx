/** Which sheet, where on it to begin, and sheets of the maker's own. */
import { useState } from 'react'
import type { Answer } from '../../../shared/channels.ts'
import type { LabelSheet } from '../../../shared/schemas/labels.ts'
import { useWrite } from '../../app/queries.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { Section } from '../../parts/page/page.tsx'
import { NumberField } from '../../parts/quantity/number-field.tsx'
import type { LabelChoices } from './label-job.ts'
import { OwnSheetDialog } from './own-sheet-dialog.tsx'
import { TestPaperButton } from './test-paper-button.tsx'
import { paperOf, useSheetWords } from './use-sheet-words.ts'
import styles from './labels.module.css'

export interface SheetSectionProps {
  sheet: LabelSheet
  sheets: Answer<'labels.sheets'>
  choices: LabelChoices
  onChange: (choices: LabelChoices) => void
}

export function SheetSection({ sheet, sheets, choices, onChange }: SheetSectionProps) {
  const t = useWords()
  const sheetWords = useSheetWords()
  const { units } = useSettings()
  const [editing, setEditing] = useState<'new' | 'this'>()
  const forget = useWrite('labels.removeSheet')
  const places = sheet.columns * sheet.rows
  const isOwn = sheets.own.some(({ id }) => id === sheet.id)
  const usualPaper = units === 'us' ? 'letter' : 'a4'
  const ordered = [
    ...sheets.own,
    ...sheets.usual.filter((one) => paperOf(one) === usualPaper),
    ...sheets.usual.filter((one) => paperOf(one) !== usualPaper),
  ]
  const choose = (sheetId: string) =>
    onChange({ ...choices, style: { ...choices.style, sheetId }, firstPosition: 1 })
  return (
    <Section title={t('labels.sheet.title')}>
      <ChoiceField
        label={t('labels.sheet.choose')}
        value={sheet.id}
        onChange={choose}
        choices={ordered.map((one) => ({ value: one.id, label: sheetWords(one) }))}
      />
      <NumberField
        key={sheet.id}
        label={t('labels.sheet.first')}
        unit={t('labels.sheet.ofMany', { count: places })}
        value={Math.min(choices.firstPosition, places)}
        digits={4}
        onChange={(position) => onChange({ ...choices, firstPosition: position ?? 1 })}
        problemOf={(position) =>
          Number.isInteger(position) && position >= 1 && position <= places
            ? undefined
            : t('labels.sheet.notThere', { count: places })
        }
      />
      <div className={styles.row}>
        <TestPaperButton sheet={sheet} />
        <Button kind="quiet" onPress={() => setEditing('new')}>
          {t('labels.sheet.newSheet')}
        </Button>
        {isOwn && (
          <>
            <Button kind="quiet" onPress={() => setEditing('this')}>
              {t('labels.sheet.editSheet')}
            </Button>
            <Button
              kind="quiet"
              isBusy={forget.isPending}
              onPress={() => forget.mutate({ sheetId: sheet.id })}
            >
              {t('labels.sheet.removeSheet')}
            </Button>
          </>
        )}
      </div>
      <FailureNote error={forget.error} />
      <p className={styles.quiet}>{t('labels.sheet.testHint')}</p>
      <OwnSheetDialog
        start={sheet}
        editing={editing}
        onKept={choose}
        onClose={() => setEditing(undefined)}
      />
    </Section>
  )
}
