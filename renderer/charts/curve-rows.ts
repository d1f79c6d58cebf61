/** A batch's curve as rows that a chart can draw: broken where a jar stood empty, and not too many. */
import type { BatchCurve } from '../../shared/schemas/steeping.ts'

/** One instant of the curve; the numbers are null where the line breaks. */
export interface CurveRow {
  readonly atMs: number
  readonly strengthPctVol: number | null
  readonly sugarGPerL: number | null
  readonly volumeMl: number | null
}

/** The rows of the whole batch (`whole`) or of one jar; empty where there was never any liquid. */
export function curveRows(curve: BatchCurve, key: string, most = 500): CurveRow[] {
  const points = curve.series.find((series) => series.key === key)?.points ?? []
  const rowByMs = new Map(
    points.map(({ at, strengthPctVol, sugarGPerL, volumeMl }) => {
      const atMs = Date.parse(at)
      return [atMs, { atMs, strengthPctVol, sugarGPerL, volumeMl }]
    }),
  )
  const stretches: CurveRow[][] = []
  let isBroken = true
  for (const atMs of sampleTimes(curve)) {
    const row = rowByMs.get(atMs)
    if (row && isBroken) stretches.push([row])
    else if (row) stretches.at(-1)?.push(row)
    isBroken = row === undefined
  }
  return joined(stretches, most)
}

/** Every instant at which any of the batch's liquids was looked at. */
const sampleTimes = (curve: BatchCurve): number[] =>
  [...new Set(curve.series.flatMap(({ points }) => points.map(({ at }) => Date.parse(at))))].sort(
    (a, b) => a - b,
  )

/** The stretches one after the other with a gap between, thinned until they are few enough. */
function joined(stretches: readonly CurveRow[][], most: number): CurveRow[] {
  const height = {
    strength: greatest(stretches, (row) => row.strengthPctVol),
    sugar: greatest(stretches, (row) => row.sugarGPerL),
  }
  for (let tolerance = 0.0005; ; tolerance *= 2) {
    const thin = stretches.map((rows) => thinned(rows, height, tolerance))
    const count = thin.reduce((sum, rows) => sum + rows.length + 1, 0)
    if (count <= most || tolerance > 1)
      return thin.flatMap((rows, i) => (i === 0 ? rows : [gapBefore(rows), ...rows]))
  }
}

const gapBefore = (rows: readonly CurveRow[]): CurveRow => ({
  atMs: (rows[0]?.atMs ?? 0) - 1,
  strengthPctVol: null,
  sugarGPerL: null,
  volumeMl: null,
})

const greatest = (stretches: readonly CurveRow[][], of: (row: CurveRow) => number | null) =>
  Math.max(1e-9, ...stretches.flat().map((row) => of(row) ?? 0))

/** Leaves out rows that a straight line between their neighbours shows as well. */
function thinned(
  rows: readonly CurveRow[],
  height: { strength: number; sugar: number },
  tolerance: number,
): CurveRow[] {
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
  rows: readonly CurveRow[],
  from: number,
  to: number,
  height: { strength: number; sugar: number },
): { index: number; off: number } | undefined {
  const a = rows[from]
  const b = rows[to]
  if (!a || !b) return undefined
  let furthest: { index: number; off: number } | undefined
  for (let index = from + 1; index < to; index += 1) {
    const row = rows[index] as CurveRow
    const share = b.atMs === a.atMs ? 0 : (row.atMs - a.atMs) / (b.atMs - a.atMs)
    const off = Math.max(
      offLine(a.strengthPctVol, b.strengthPctVol, row.strengthPctVol, share) / height.strength,
      offLine(a.sugarGPerL, b.sugarGPerL, row.sugarGPerL, share) / height.sugar,
    )
    if (!furthest || off > furthest.off) furthest = { index, off }
  }
  return furthest
}

const offLine = (a: number | null, b: number | null, value: number | null, share: number) =>
  Math.abs((value ?? 0) - ((a ?? 0) + ((b ?? 0) - (a ?? 0)) * share))

/** The row in force at an instant: the last one at or before it that has numbers. */
export function rowAt(rows: readonly CurveRow[], atMs: number): CurveRow | undefined {
  let found: CurveRow | undefined
  for (const row of rows) {
    if (row.atMs > atMs) break
    found = row.strengthPctVol === null ? undefined : row
  }
  return found
}
