/** Several batches on one axis of days: one row a day that any was looked at, a value for each. */
import type { Batch } from '../../shared/schemas/cellar.ts'
import type { ComparedBatch, CurveValues } from '../../shared/schemas/steeping.ts'
import { curveInk, type CurveQuantity } from './curve-quantities.ts'
import { amountTicks, spanTicks } from './time-axis.ts'

export interface ComparedLine {
  readonly batch: Batch
  readonly compared: ComparedBatch
}

export interface CompareRow {
  readonly day: number
  /** In the order of the batches; null before a batch held liquid and after it had none left. */
  readonly values: readonly (number | null)[]
}

type Point = ComparedBatch['points'][number]

export function compareRows(
  batches: readonly ComparedBatch[],
  quantity: CurveQuantity,
  lastDay: number,
): CompareRow[] {
  const days = new Set(batches.flatMap(({ points }) => points.map(({ day }) => day)))
  const inSight = [...days].filter((day) => day <= lastDay).sort((a, b) => a - b)
  const columns = batches.map(({ points }) => onDays(points, inSight, quantity))
  return inSight.map((day, row) => ({
    day,
    values: columns.map((column) => column[row] ?? null),
  }))
}

/** A batch's line read off at rising days, in one walk along it. */
function onDays(
  points: readonly Point[],
  days: readonly number[],
  quantity: keyof CurveValues,
): (number | null)[] {
  let next = 0
  return days.map((day) => {
    while (next < points.length && (points[next] as Point).day < day) next += 1
    const b = points[next]
    if (b?.day === day) return b[quantity]
    const a = points[next - 1]
    if (!a || !b) return null
    return a[quantity] + ((b[quantity] - a[quantity]) * (day - a.day)) / (b.day - a.day)
  })
}

/** The last day on which any of them had liquid. */
export const lastDayOf = (batches: readonly ComparedBatch[]): number =>
  Math.max(1, ...batches.map(({ points }) => points.at(-1)?.day ?? 0))

/** Round marks for what stands in sight; a syrup before the spirit does not set the scale. */
export function compareTicks(
  batches: readonly ComparedBatch[],
  quantity: CurveQuantity,
  lastDay: number,
): number[] {
  const inSight = batches.flatMap(({ points }) => points.filter(({ day }) => day <= lastDay))
  const withSpirit = inSight.filter(({ strengthPctVol }) => strengthPctVol > 0)
  const values = (withSpirit.length > 0 ? withSpirit : inSight).map((point) => point[quantity])
  const greatest = values.reduce((most, value) => Math.max(most, value), 0)
  if (curveInk[quantity].isFromZero) return amountTicks(Math.max(1, 1.04 * greatest), 4)
  const least = values.reduce((fewest, value) => Math.min(fewest, value), greatest)
  return spanTicks(least, Math.max(greatest, least + 1), 5)
}

/** Every batch's value on a day between two rows; null where a batch has none on either side. */
export function valuesOnDay(rows: readonly CompareRow[], day: number): (number | null)[] {
  const after = rows.findIndex((row) => row.day >= day)
  const b = rows[after]
  if (!b) return []
  const a = b.day === day ? b : rows[after - 1]
  return b.values.map((to, index) => {
    const from = a?.values[index]
    if (to === null || from == null || !a) return null
    return b.day === a.day ? to : from + ((to - from) * (day - a.day)) / (b.day - a.day)
  })
}
