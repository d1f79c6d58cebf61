/** What each column is, with three of its cells to tell it by; what can be read two ways is asked here. */
import { useMemo } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { TextInput } from '../../parts/fields/text-input.tsx'
import { symbolOf, unitsOf } from '../../parts/quantity/units.ts'
import {
  cellsOf,
  guessedColumn,
  questionOf,
  type ColumnPlan,
  type Measures,
  type SheetPlan,
} from './columns.ts'
import { fieldsOf, isAmount, type FieldId, type SheetField, type SheetKind } from './fields.ts'
import type { SheetTable } from './sheet-file.ts'
import type { ColumnState } from './use-bring-in.ts'
import styles from './bring-in.module.css'

export interface ColumnsStepProps {
  kind: SheetKind
  state: ColumnState
  onBack: () => void
  onNext: () => void
}

export function ColumnsStep({ kind, state, onBack, onNext }: ColumnsStepProps) {
  const t = useWords()
  const { table, plan, setPlan, measures } = state
  if (!table || !plan) return null
  const fields = fieldsOf[kind]
  const untold = fields.filter(
    ({ id, isRequired }) => isRequired && !plan.columns.some(({ field }) => field === id),
  )
  const missing = untold.filter(({ id }) => !plan.same[id]?.trim())
  const isAsked = plan.columns.some((column, at) => isOpen(column, at, fields, table, measures))

  function change(at: number, column: ColumnPlan) {
    if (!plan) return
    const others = plan.columns.map((one) => (one.field === column.field ? {} : one))
    setPlan({ ...plan, columns: others.with(at, column) })
  }

  return (
    <div className={styles.step}>
      <div className={styles.frame}>
        <table className={styles.columns}>
          <caption className="visually-hidden">{t('sheets.step.columns')}</caption>
          <thead>
            <tr>
              <th scope="col">{t('sheets.columns.inFile')}</th>
              <th scope="col">{t('sheets.columns.examples')}</th>
              <th scope="col">{t('sheets.columns.is')}</th>
              <th scope="col">{t('sheets.columns.how')}</th>
            </tr>
          </thead>
          <tbody>
            {plan.columns.map((column, at) => (
              <ColumnRow
                key={at}
                at={at}
                column={column}
                table={table}
                fields={fields}
                measures={measures}
                onChange={(next) => change(at, next)}
              />
            ))}
          </tbody>
        </table>
      </div>
      {untold.length > 0 && <Same plan={plan} fields={untold} onChange={setPlan} />}
      <p className={styles.quiet} aria-live="polite">
        {missing.length > 0
          ? t('sheets.columns.missing', {
              fields: missing.map(({ id }) => t(`sheets.field.${id}`)).join(', '),
            })
          : isAsked && t('sheets.columns.asked')}
      </p>
      <div className={styles.buttons}>
        <Button kind="primary" isDisabled={missing.length > 0 || isAsked} onPress={onNext}>
          {t('sheets.toRows')}
        </Button>
        <Button onPress={onBack}>{t('sheets.back')}</Button>
      </div>
    </div>
  )
}

function isOpen(
  column: ColumnPlan,
  at: number,
  fields: readonly SheetField[],
  table: SheetTable,
  measures: Measures,
): boolean {
  const field = fields.find(({ id }) => id === column.field)
  return field ? (questionOf(field, column, cellsOf(table, at), measures)?.isOpen ?? false) : false
}

interface ColumnRowProps {
  at: number
  column: ColumnPlan
  table: SheetTable
  fields: readonly SheetField[]
  measures: Measures
  onChange: (column: ColumnPlan) => void
}

function ColumnRow({ at, column, table, fields, measures, onChange }: ColumnRowProps) {
  const t = useWords()
  const head = table.heads[at] || t('sheets.column', { number: at + 1 })
  const cells = useMemo(() => cellsOf(table, at), [table, at])
  const field = fields.find(({ id }) => id === column.field)
  const choose = (chosen: FieldId | 'none') => {
    const next = fields.find(({ id }) => id === chosen)
    onChange(next ? guessedColumn(next, table.heads[at] ?? '', cells, measures) : {})
  }
  return (
    <tr>
      <th scope="row">{head}</th>
      <td className={styles.examples}>
        {cells.slice(0, 3).map((cell, index) => (
          <span key={index}>{cell.slice(0, 60)}</span>
        ))}
      </td>
      <td>
        <ChoiceField
          label={t('sheets.columns.isOf', { head })}
          value={column.field ?? 'none'}
          onChange={choose}
          choices={[
            { value: 'none', label: t('sheets.columns.leaveOut') },
            ...fields.map(({ id }) => ({ value: id, label: t(`sheets.field.${id}`) })),
          ]}
        />
      </td>
      <td>
        {field && (
          <HowColumn
            field={field}
            column={column}
            cells={cells}
            measures={measures}
            onChange={onChange}
          />
        )}
      </td>
    </tr>
  )
}

interface HowColumnProps {
  field: SheetField
  column: ColumnPlan
  cells: readonly string[]
  measures: Measures
  onChange: (column: ColumnPlan) => void
}

function HowColumn({ field, column, cells, measures, onChange }: HowColumnProps) {
  const t = useWords()
  const question = useMemo(
    () => questionOf(field, column, cells, measures),
    [field, column, cells, measures],
  )
  const units = isAmount(field.reads) ? unitsOf[field.reads] : []
  const problem = question?.isOpen ? t(`sheets.columns.ask.${question.asks}`) : undefined
  return (
    <div className={styles.how}>
      {units.length > 1 && (
        <ChoiceField
          label={t('sheets.columns.unit')}
          value={column.unit ?? ''}
          onChange={(unit) => onChange({ ...column, unit })}
          choices={units.map((unit) => ({
            value: unit.id,
            label: symbolOf(unit, measures.language),
          }))}
        />
      )}
      {question?.asks === 'decimalMark' && (
        <ChoiceField
          label={t('sheets.columns.decimalMark')}
          value={column.decimalMark ?? ''}
          placeholder={t('sheets.columns.choose')}
          problem={problem}
          onChange={(decimalMark) => onChange({ ...column, decimalMark })}
          choices={(['comma', 'point'] as const).map((value) => ({
            value,
            label: t(`sheets.columns.marks.${value}`),
          }))}
        />
      )}
      {question?.asks === 'dateOrder' && (
        <ChoiceField
          label={t('sheets.columns.dateOrder')}
          value={column.dateOrder ?? ''}
          placeholder={t('sheets.columns.choose')}
          problem={problem}
          onChange={(dateOrder) => onChange({ ...column, dateOrder })}
          choices={(['dmy', 'mdy'] as const).map((value) => ({
            value,
            label: t(`sheets.columns.orders.${value}`),
          }))}
        />
      )}
    </div>
  )
}

interface SameProps {
  plan: SheetPlan
  fields: readonly SheetField[]
  onChange: (plan: SheetPlan) => void
}

/** What no column tells and every row needs. */
function Same({ plan, fields, onChange }: SameProps) {
  const t = useWords()
  return (
    <section className={styles.same} aria-label={t('sheets.columns.same')}>
      <h2>{t('sheets.columns.same')}</h2>
      <p className={styles.quiet}>{t('sheets.columns.sameHint')}</p>
      <div className={styles.fields}>
        {fields.map(({ id }) => (
          <TextInput
            key={id}
            label={t(`sheets.field.${id}`)}
            isRequired
            value={plan.same[id] ?? ''}
            onChange={(text) => onChange({ ...plan, same: { ...plan.same, [id]: text } })}
          />
        ))}
      </div>
    </section>
  )
}
