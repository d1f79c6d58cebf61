/** What the edible part is made of: four parts, and the rest that makes a hundred. */
import { useWords } from '../../app/words/use-words.ts'
import { Section } from '../../parts/page/page.tsx'
import { NumberField } from '../../parts/quantity/number-field.tsx'
import { restPct, type FruitDraft } from './fruit-draft.ts'
import styles from './fruit-form.module.css'
import { useFigureWords } from './use-figure-words.ts'

export interface DraftFieldsProps {
  draft: FruitDraft
  onChange: (changed: Partial<FruitDraft>) => void
  showsProblem: boolean
}

const parts = [
  { field: 'waterPct', name: 'water' },
  { field: 'sugarPct', name: 'sugar' },
  { field: 'acidPct', name: 'acid' },
  { field: 'pulpPct', name: 'pulp' },
] as const

export function CompositionFields({ draft, onChange, showsProblem }: DraftFieldsProps) {
  const t = useWords()
  const { number } = useFigureWords()
  const rest = restPct(draft)
  const outside = (min: number) => (value: number) =>
    value < min || value > 100 ? t('fruits.form.outside', { min, max: 100 }) : undefined
  return (
    <Section title={t('fruits.form.composition')}>
      <p className={styles.hint}>{t('fruits.form.compositionHint')}</p>
      <div className={styles.row}>
        <NumberField
          label={t('fruits.form.edible')}
          unit={t('fruits.unit.pct')}
          digits={6}
          value={draft.ediblePct}
          onChange={(ediblePct) => onChange({ ediblePct })}
          problemOf={outside(1)}
          showsProblem={showsProblem}
        />
        {parts.map(({ field, name }) => (
          <NumberField
            key={field}
            label={t(`fruits.fact.${name}`)}
            unit={t('fruits.unit.pct')}
            digits={6}
            value={draft[field]}
            onChange={(value) => onChange({ [field]: value })}
            problemOf={outside(0)}
            showsProblem={showsProblem}
          />
        ))}
      </div>
      <p
        aria-live="polite"
        className={rest !== undefined && rest < 0 ? styles.problem : styles.hint}
      >
        {rest !== undefined &&
          (rest < 0
            ? t('fruits.form.over', { sum: number(100 - rest, 'pct') })
            : t('fruits.form.rest', { rest: number(rest, 'pct') }))}
      </p>
    </Section>
  )
}
