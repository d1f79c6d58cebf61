/** The comparison as a table: a row a day of the axis, a column a batch. */
import { useWords } from '../app/words/use-words.ts'
import { Quantity } from '../parts/quantity/quantity.tsx'
import { Table } from '../parts/table/table.tsx'
import { msPerDay } from '../../shared/spans-of-time.ts'
import { compareRows, valuesOnDay, type ComparedLine } from './compare-rows.ts'
import { curveInk, type CurveQuantity } from './curve-quantities.ts'
import { dayTicks } from './time-axis.ts'

interface CompareTableProps {
  lines: readonly ComparedLine[]
  quantity: CurveQuantity
  lastDay: number
}

interface DayRow {
  readonly day: number
  readonly values: readonly (number | null)[]
}

export function CompareTable({ lines, quantity, lastDay }: CompareTableProps) {
  const t = useWords()
  const rows = compareRows(
    lines.map(({ compared }) => compared),
    quantity,
    lastDay,
  )
  const days = dayTicks({ fromMs: 0, toMs: lastDay * msPerDay }, 16).map((ms) => ms / msPerDay)
  const { dimension } = curveInk[quantity]
  return (
    <Table<DayRow>
      caption={t('compare.caption', { quantity: t(`batch.curve.quantity.${quantity}`) })}
      rows={days.map((day) => ({ day, values: valuesOnDay(rows, day) }))}
      rowKey={({ day }) => String(day)}
      columns={[
        {
          key: 'day',
          header: t('compare.day'),
          isRowHeader: true,
          cell: ({ day }) => t('batch.curve.day', { day: Math.round(day) }),
        },
        ...lines.map(({ batch }, index) => ({
          key: batch.id,
          header: batch.name,
          align: 'end' as const,
          cell: ({ values }: DayRow) => {
            const value = values[index]
            return value != null && <Quantity value={value} dimension={dimension} />
          },
        })),
      ]}
    />
  )
}
