/** One tool's numbers, and how fine each is read. Every change is a new question at once. */
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import {
  benchInputs,
  type BenchInputName,
  type BenchLiquid,
} from '../../../shared/schemas/bench.ts'
import { Segments } from '../../parts/fields/segments.tsx'
import { NumberField } from '../../parts/quantity/number-field.tsx'
import { QuantityField } from '../../parts/quantity/quantity-field.tsx'
import { symbolOf, usualUnit } from '../../parts/quantity/units.ts'
import { usualFinenessOf, type Entries } from './entries.ts'
import { Fold } from './fold.tsx'
import { isPartDimension } from './format-measured.ts'
import { useStandard } from './use-standard.ts'
import type { FineSpec, Mode, NumberSpec } from './tools.ts'
import styles from './tool-form.module.css'

export interface ToolFormProps {
  mode: Mode
  entries: Entries
  onChange: (changed: Partial<Entries>) => void
}

const liquids: readonly BenchLiquid[] = ['spirit', 'syrup', 'other']

export function ToolForm({ mode, entries, onChange }: ToolFormProps) {
  const t = useWords()
  const setNumber = (name: BenchInputName, value: number | undefined) =>
    onChange({ numbers: { ...entries.numbers, [name]: value } })
  const setFineness = (name: BenchInputName, value: number | undefined) =>
    onChange({ fineness: { ...entries.fineness, [name]: value } })
  return (
    <form className={styles.form} onSubmit={(event) => event.preventDefault()} noValidate>
      {mode.asksLiquid && (
        <Segments
          label={t('bench.liquids')}
          value={entries.liquid}
          onChange={(liquid) => onChange({ liquid })}
          choices={liquids.map((value) => ({ value, label: t(`bench.liquid.${value}`) }))}
        />
      )}
      {mode.asksCompensation && (
        <Segments
          label={t('bench.compensated')}
          value={entries.isCompensated ? 'yes' : 'no'}
          onChange={(chosen) => onChange({ isCompensated: chosen === 'yes' })}
          choices={(['yes', 'no'] as const).map((value) => ({
            value,
            label: t(`bench.compensation.${value}`),
          }))}
        />
      )}
      {mode.numbers.map((spec) => (
        <Asked
          key={spec.name}
          spec={spec}
          value={entries.numbers[spec.name]}
          onChange={(value) => setNumber(spec.name, value)}
        />
      ))}
      <Fold title={t('bench.fineness.title')}>
        <p className={styles.hint}>{t('bench.fineness.text')}</p>
        <div className={styles.fine}>
          {mode.fine.map((spec) => (
            <Fine
              key={spec.name}
              spec={spec}
              value={entries.fineness[spec.name]}
              fallback={usualFinenessOf(spec, entries.numbers)}
              onChange={(value) => setFineness(spec.name, value)}
            />
          ))}
        </div>
      </Fold>
    </form>
  )
}

interface AskedProps {
  spec: NumberSpec
  value: number | undefined
  onChange: (value: number | undefined) => void
}

function Asked({ spec: { name, label, isOptional = false }, value, onChange }: AskedProps) {
  const t = useWords()
  const dimension = benchInputs[name]
  const standard = useStandard()
  const shared = {
    label: t(`bench.input.${label}`, { standard }),
    value,
    onChange,
    isRequired: !isOptional,
  }
  if (!isPartDimension(dimension)) return <NumberField {...shared} unit={dimension} />
  return <QuantityField {...shared} dimension={dimension} />
}

interface FineProps {
  spec: FineSpec
  value: number | undefined
  fallback: number | undefined
  onChange: (value: number | undefined) => void
}

/** In the unit that the number itself is asked for in; as a difference, so that no zero counts. */
function Fine({ spec: { name, label }, value, fallback, onChange }: FineProps) {
  const t = useWords()
  const dimension = benchInputs[name]
  const settings = useSettings()
  const unit = isPartDimension(dimension) ? usualUnit(dimension, settings) : undefined
  const factor = unit?.factor ?? 1
  const shown = (given: number | undefined) => (given === undefined ? given : given / factor)
  return (
    <NumberField
      label={t('bench.fineness.plusMinus', { what: t(`bench.fine.${label}`) })}
      unit={unit ? symbolOf(unit, settings.language) : dimension}
      value={shown(value)}
      fallback={shown(fallback)}
      onChange={(number) => onChange(number === undefined ? number : number * factor)}
      problemOf={(number) => (number > 0 ? undefined : t('bench.fineness.tooSmall'))}
    />
  )
}
