/** How the fruit treats liquid: its class, the piece, what it holds, how it fills a jar. */
import { KineticClass, Piece } from '../../../shared/schemas/fruits.ts'
import { useWords } from '../../app/words/use-words.ts'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { Section } from '../../parts/page/page.tsx'
import { QuantityField } from '../../parts/quantity/quantity-field.tsx'
import type { DraftFieldsProps } from './composition-fields.tsx'
import styles from './fruit-form.module.css'
import { RangeField } from './range-field.tsx'

const held = { dimension: 'holding' } as const
const hazes = ['low', 'medium', 'high'] as const

export function LiquidFields({ draft, onChange, showsProblem }: DraftFieldsProps) {
  const t = useWords()
  return (
    <Section title={t('fruits.factGroup.liquid')}>
      <div className={styles.row}>
        <ChoiceField
          label={t('fruits.form.kineticClass')}
          value={draft.kineticClass}
          onChange={(kineticClass) => onChange({ kineticClass })}
          choices={KineticClass.options.map((value) => ({
            value,
            label: t(`fruits.kineticClass.${value}`),
          }))}
        />
        <ChoiceField
          label={t('fruits.form.piece')}
          value={draft.pieceShape}
          onChange={(pieceShape) => onChange({ pieceShape })}
          choices={[
            ...Piece.shape.shape.options.map((value) => ({
              value,
              label: t(`fruits.shape.${value}`),
            })),
            { value: 'none' as const, label: t('fruits.form.pieceNone') },
          ]}
        />
        {draft.pieceShape !== 'none' && (
          <QuantityField
            label={t('fruits.form.pieceSize')}
            dimension="length"
            range={{ min: 0.1, max: 50 }}
            value={draft.halfSizeMm}
            onChange={(halfSizeMm) => onChange({ halfSizeMm })}
            isRequired
            showsProblem={showsProblem}
          />
        )}
        <QuantityField
          label={t('fruits.fact.bulkDensity')}
          dimension="packing"
          range={{ min: 0.01, max: 3 }}
          value={draft.bulkDensityKgPerL}
          onChange={(bulkDensityKgPerL) => onChange({ bulkDensityKgPerL })}
          isRequired
          showsProblem={showsProblem}
        />
        <ChoiceField
          label={t('fruits.form.pectinHaze')}
          value={draft.pectinHaze}
          onChange={(pectinHaze) => onChange({ pectinHaze })}
          choices={[
            ...hazes.map((value) => ({ value, label: t(`fruits.haze.${value}`) })),
            { value: 'unknown' as const, label: t('fruits.form.pectinHazeUnknown') },
          ]}
        />
      </div>
      <div className={styles.ranges}>
        <RangeField
          label={t('fruits.fact.drained')}
          of={held}
          value={draft.drained}
          onChange={(drained) => onChange({ drained })}
          isNeeded
          showsProblem={showsProblem}
        />
        <RangeField
          label={t('fruits.fact.pressed')}
          of={held}
          value={draft.pressed}
          onChange={(pressed) => onChange({ pressed })}
          isNeeded
          showsProblem={showsProblem}
        />
      </div>
    </Section>
  )
}
