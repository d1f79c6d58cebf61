/** The words of one lot's label: as the book has them, until the maker writes others. */
import {
  labelFields,
  longestLabelText,
  type LabelField,
  type UsualLabel,
} from '../../../shared/schemas/labels.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { TextInput } from '../../parts/fields/text-input.tsx'
import { Section } from '../../parts/page/page.tsx'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { neckFields, textOf, type LabelChoices } from './label-job.ts'
import styles from './labels.module.css'

export interface WordsSectionProps {
  /** Whose words are written. */
  label: UsualLabel | undefined
  usual: readonly UsualLabel[]
  choices: LabelChoices
  onChange: (choices: LabelChoices) => void
  onChoose: (bottleLotId: string) => void
}

/** Texts that may run over several lines. */
const longFields: readonly LabelField[] = ['ingredients', 'cautions', 'note']

export function WordsSection(props: WordsSectionProps) {
  const { label, usual, choices, onChange, onChoose } = props
  const t = useWords()
  const quantities = useQuantities()
  if (!label) return null
  const { bottleLotId, strengthPctVol, tolerancePctVol } = label
  const text = textOf(choices, label)
  const edits = choices.edits[bottleLotId]
  const { shown, part } = choices.style
  const fields = labelFields.filter(
    (field) => shown.includes(field) && (part === 'front' || neckFields.includes(field)),
  )
  const edit = (field: LabelField, written: string) =>
    onChange({
      ...choices,
      edits: { ...choices.edits, [bottleLotId]: { ...edits, [field]: written } },
    })
  const bookSays =
    strengthPctVol === undefined
      ? undefined
      : t('labels.words.book', {
          strength: quantities.text(strengthPctVol, 'strength'),
          tolerance: quantities.text(tolerancePctVol, 'strength'),
        })
  return (
    <Section
      title={t('labels.words.title')}
      actions={
        edits && (
          <Button
            kind="quiet"
            onPress={() => {
              const { [bottleLotId]: _dropped, ...others } = choices.edits
              onChange({ ...choices, edits: others })
            }}
          >
            {t('labels.words.reset')}
          </Button>
        )
      }
    >
      {usual.length > 1 && (
        <ChoiceField
          label={t('labels.words.of')}
          value={bottleLotId}
          onChange={onChoose}
          choices={usual.map((one) => ({
            value: one.bottleLotId,
            label: textOf(choices, one).name,
          }))}
        />
      )}
      {fields.length === 0 && <p className={styles.quiet}>{t('labels.words.nothingShown')}</p>}
      <div className={styles.fields}>
        {fields.map((field) => (
          <TextInput
            key={`${bottleLotId} ${field}`}
            label={t(`labels.field.${field}`)}
            value={text[field]}
            onChange={(written) => edit(field, written)}
            maxLength={longestLabelText}
            isRequired={field === 'name'}
            rows={longFields.includes(field) ? 2 : 1}
            description={field === 'strength' ? bookSays : undefined}
          />
        ))}
      </div>
    </Section>
  )
}
