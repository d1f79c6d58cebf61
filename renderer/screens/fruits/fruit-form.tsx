/** Edits a fruit's facts; what is saved is the maker's copy, and counts for charges from then on. */
import { useState } from 'react'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import { useWrite } from '../../app/queries.ts'
import { useLibraryWords, useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { Form } from '../../parts/dialog/form.tsx'
import { DialogActions } from '../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { TextInput } from '../../parts/fields/text-input.tsx'
import { Section } from '../../parts/page/page.tsx'
import { CompositionFields } from './composition-fields.tsx'
import { nameOfRanged, rangedFields, type RangedField } from './facts.ts'
import { useFruitName } from '../../parts/names/use-names.ts'
import { draftOf, fruitOfDraft, type FruitDraft } from './fruit-draft.ts'
import styles from './fruit-form.module.css'
import { knownKinds } from './kinds.ts'
import { LiquidFields } from './liquid-fields.tsx'
import { RangeField, type RangeUnit } from './range-field.tsx'
import { SeasonFields } from './season-fields.tsx'
import { useKindWords } from './use-kind-words.ts'

const unitOfRanged: Readonly<Record<RangedField, RangeUnit>> = {
  fruitKgPerLSpirit: { dimension: 'packing' },
  steepingStrengthPctVol: { dimension: 'strength' },
  steepingWeeks: { unit: 'weeks', max: 520 },
  finishedStrengthPctVol: { dimension: 'strength' },
  finishedSugarGPerL: { dimension: 'sugar' },
  restMonths: { unit: 'months', max: 600 },
  drinkByYears: { unit: 'years', max: 100 },
}

export function FruitForm({ fruit, onClose }: { fruit: Fruit; onClose: () => void }) {
  const t = useWords()
  const say = useLibraryWords()
  const fruitName = useFruitName()
  const keep = useWrite('fruits.keep')
  const [draft, setDraft] = useState(() =>
    draftOf({
      ...fruit,
      preparation: say(fruit.preparation),
      hazards: fruit.hazards.map(say),
    }),
  )
  const [wasTried, setTried] = useState(false)
  const change = (changed: Partial<FruitDraft>) => setDraft({ ...draft, ...changed })
  const kept = fruitOfDraft(draft, fruit)
  const fields = { draft, onChange: change, showsProblem: wasTried }

  function submit() {
    setTried(true)
    if (kept && !keep.isPending) keep.mutate(kept, { onSuccess: onClose })
  }

  return (
    <Form onSubmit={submit} aria-label={t('fruits.form.title', { name: fruitName(fruit) })}>
      <div className={styles.sections}>
        <NameFields {...fields} />
        <LiquidFields {...fields} />
        <Section title={t('fruits.factGroup.steeping')}>
          <div className={styles.ranges}>
            {rangedFields.map((field) => (
              <RangeField
                key={field}
                label={t(`fruits.fact.${nameOfRanged(field)}`)}
                of={unitOfRanged[field]}
                value={draft.ranges[field]}
                onChange={(range) => change({ ranges: { ...draft.ranges, [field]: range } })}
                showsProblem={wasTried}
              />
            ))}
          </div>
        </Section>
        <CompositionFields {...fields} />
        <SeasonFields {...fields} />
        <Section title={t('fruits.form.handling')}>
          <TextInput
            label={t('fruits.form.preparation')}
            value={draft.preparation}
            onChange={(preparation) => change({ preparation })}
            rows={3}
            maxLength={2000}
          />
          <TextInput
            label={t('fruits.form.hazards')}
            value={draft.hazards}
            onChange={(hazards) => change({ hazards })}
            rows={4}
            maxLength={8000}
          />
        </Section>
      </div>
      <p role="alert" className={styles.problem}>
        {wasTried && !kept && t('fruits.form.incomplete')}
      </p>
      <FailureNote error={keep.error} />
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={keep.isPending}>
          {t('fruits.form.save')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}

interface NameFieldsProps {
  draft: FruitDraft
  onChange: (changed: Partial<FruitDraft>) => void
  showsProblem: boolean
}

function NameFields({ draft, onChange, showsProblem }: NameFieldsProps) {
  const t = useWords()
  const kindWords = useKindWords()
  const isNameMissing = draft.nameEn.trim() === ''
  const kinds = [...new Set<string>([...knownKinds, draft.kind])]
  return (
    <Section title={t('fruits.form.names')}>
      <div className={styles.row}>
        <TextInput
          label={t('fruits.form.nameEn')}
          value={draft.nameEn}
          onChange={(nameEn) => onChange({ nameEn })}
          isRequired
          autoFocus
          problem={showsProblem && isNameMissing ? t('fruits.form.nameMissing') : undefined}
        />
        <TextInput
          label={t('fruits.form.namePl')}
          value={draft.namePl}
          onChange={(namePl) => onChange({ namePl })}
        />
        <TextInput
          label={t('fruits.form.latin')}
          value={draft.latin}
          onChange={(latin) => onChange({ latin })}
        />
        <ChoiceField
          label={t('fruits.form.kind')}
          value={draft.kind}
          onChange={(kind) => onChange({ kind })}
          description={t('fruits.form.kindHint')}
          choices={kinds.map((value) => ({ value, label: kindWords(value) }))}
        />
      </div>
    </Section>
  )
}
