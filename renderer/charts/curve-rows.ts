/** A batch's curve as rows that a chart can draw: broken where a jar stood empty, and not too many. */
import type { CurvePoint, CurveSeries, CurveValues } from '../../shared/schemas/steeping.ts'
import { curveQuantities } from './curve-quantities.ts'

/** One instant of the curve; `values` is null where the line breaks. */
export interface CurveRow {
  readonly atMs: number
  readonly values: CurveValues | null
  readonly low?: CurveValues | undefined
  readonly high?: CurveValues | undefined
}

type FullRow = CurveRow & { readonly values: CurveValues }

/** The rows of the whole batch (`whole`) or of one jar; empty where there was never any liquid. */
export function curveRows(series: readonly CurveSeries[], key: string, most = 500): CurveRow[] {
  const points = series.find((one) => one.key === key)?.points ?? []
  const rowByMs = new Map(points.map((point) => [Date.parse(point.at), rowOf(point)]))
  const stretches: FullRow[][] = []
  let isBroken = true
  for (const atMs of sampleTimes(series)) {
    const row = rowByMs.get(atMs)
    if (row && isBroken) stretches.push([row])
    else if (row) stretches.at(-1)?.push(row)
    isBroken = row === undefined
  }
  return joined(stretches, most)
}

const rowOf = ({ at, low, high, ...values }: CurvePoint): FullRow => ({
  atMs: Date.parse(at),
  values,
  low,
  high,
})

/** Every instant at which any of the batch's liquids was looked at. */
const sampleTimes = (series: readonly CurveSeries[]): number[] =>
  [...new Set(series.flatMap(({ points }) => points.map(({ at }) => Date.parse(at))))].sort(
    (a, b) => a - b,
  )

/** The stretches one after the other with a gap between, thinned until they are few enough. */
function joined(stretches: readonly FullRow[][], most: number): CurveRow[] {
  const height = heightsOf(stretches.flat())
  for (let tolerance = 0.0005; ; tolerance *= 2) {
    const thin = stretches.map((rows) => thinned(rows, height, tolerance))
    const count = thin.reduce((sum, rows) => sum + rows.length + 1, 0)
    if (count <= most || tolerance > 1)
      return thin.flatMap((rows, i) => (i === 0 ? rows : [gapBefore(rows), ...rows]))
  }
}

const gapBefore = (rows: readonly CurveRow[]): CurveRow => ({
  atMs: (rows[0]?.atMs ?? 0) - 1,
  values: null,
})

/** The greatest of each quantity: what a difference in it is measured against. */
const heightsOf = (rows: readonly FullRow[]): CurveValues =>
  Object.fromEntries(
    curveQuantities.map((quantity) => [
      quantity,
      rows.reduce((most, { values }) => Math.max(most, values[quantity]), 1e-9),
    ]),
  ) as CurveValues

/** Leaves out rows that a straight line between their neighbours shows as well. */
function thinned(rows: readonly FullRow[], height: CurveValues, tolerance: number): FullRow[] {
  const kept = new Set<number>([0, rows.length - 1])
  const spans: [number, number][] = [[0, rows.length - 1]]
  for (let span = spans.pop(); span; span = spans.pop()) {
    const [from, to] = span
    const furthest = furthestFromLine(rows, from, to, height)
    if (!furthest || furthest.off <= tolerance) continue
    kept.add(furthest.index)
    spans.push([from, furthest.index], [furthest.index, to])
  }
  return rows.filter((_, index) => kept.has(index))
}

function furthestFromLine(
  rows: readonly FullRow[],
  from: number,
  to: number,
  height: CurveValues,
): { index: number; off: number } | undefined {
  const a = rows[from]
  const b = rows[to]
  if (!a || !b) return undefined
  let furthest: { index: number; off: number } | undefined
  for (let index = from + 1; index < to; index += 1) {
    const row = rows[index] as FullRow
    const off = offLine(a, b, row, height)
    if (!furthest || off > furthest.off) furthest = { index, off }
  }
  return furthest
}

/** How far a row lies from the line between two others, by the quantity that is off the most. */
function offLine(a: FullRow, b: FullRow, row: FullRow, height: CurveValues): number {
  const share = shareBetween(a.atMs, b.atMs, row.atMs)
  let most = 0
  for (const quantity of curveQuantities) {
    const onLine = a.values[quantity] + (b.values[quantity] - a.values[quantity]) * share
    most = Math.max(most, Math.abs(row.values[quantity] - onLine) / height[quantity])
  }
  return most
}

const shareBetween = (fromMs: number, toMs: number, atMs: number) =>
  toMs === fromMs ? 1 : (atMs - fromMs) / (toMs - fromMs)

const between = (a: CurveValues, b: CurveValues, share: number): CurveValues =>
  Object.fromEntries(
    curveQuantities.map((quantity) => [
      quantity,
      a[quantity] + (b[quantity] - a[quantity]) * share,
    ]),
  ) as CurveValues

/** The curve at an instant, on the line between the rows around it; undefined off its ends. */
export function rowAt(rows: readonly CurveRow[], atMs: number): FullRow | undefined {
  const after = rows.findIndex((row) => row.atMs >= atMs)
  const b = rows[after]
  const a = b?.atMs === atMs ? b : rows[after - 1]
  if (!a?.values || !b?.values) return undefined
  const share = shareBetween(a.atMs, b.atMs, atMs)
  return {
    atMs,
    values: between(a.values, b.values, share),
    ...(a.low && b.low && { low: between(a.low, b.low, share) }),
    ...(a.high && b.high && { high: between(a.high, b.high, share) }),
  }
}

/** The same rows with one at an instant between them, where a drawing changes its hand. */
export function withRowAt(rows: readonly CurveRow[], atMs: number): CurveRow[] {
  const row = rowAt(rows, atMs)
  if (!row || rows.some((one) => one.atMs === atMs)) return [...rows]
  const after = rows.findIndex((one) => one.atMs > atMs)
  return rows.toSpliced(after, 0, row)
}
