/** Two sight lines as the rows and ticks of one chart. */
import type { SightLine } from '../../shared/schemas/bench.ts'

export interface CrossingRow {
  readonly strengthPctVol: number
  readonly density?: number
  readonly densityBand?: readonly [number, number]
  readonly refraction?: number
  readonly refractionBand?: readonly [number, number]
}

type Point = SightLine[number]

/** One row a strength at which either instrument could be right, in rising order. */
export function crossingRows(density: SightLine, refraction: SightLine): CrossingRow[] {
  const strengths = [...density, ...refraction].map(({ strengthPctVol }) => strengthPctVol)
  return [...new Set(strengths)]
    .sort((a, b) => a - b)
    .map((strengthPctVol) => {
      const at = (point: Point) => point.strengthPctVol === strengthPctVol
      const [byDensity, byRefraction] = [density.find(at), refraction.find(at)]
      return {
        strengthPctVol,
        ...(byDensity && { density: byDensity.sugarGPerL, densityBand: bandOf(byDensity) }),
        ...(byRefraction && {
          refraction: byRefraction.sugarGPerL,
          refractionBand: bandOf(byRefraction),
        }),
      }
    })
}

const bandOf = ({ lowGPerL, highGPerL }: Point): readonly [number, number] => [lowGPerL, highGPerL]

/** Whole steps that hold every row: of 5 % vol, and of sugar as wide as they need to be. */
export function crossingTicks(rows: readonly CrossingRow[]): {
  strength: readonly number[]
  sugar: readonly number[]
} {
  const sugars = rows.flatMap((row) => [...(row.densityBand ?? []), ...(row.refractionBand ?? [])])
  return {
    strength: steps(
      rows.map((row) => row.strengthPctVol),
      5,
    ),
    sugar: steps(sugars, niceStep(Math.max(...sugars) - Math.min(...sugars))),
  }
}

const niceStep = (span: number): number =>
  [5, 10, 20, 25, 50, 100, 200].find((step) => span / step <= 6) ?? 400

function steps(values: readonly number[], step: number): number[] {
  if (values.length === 0) return [0, step]
  const from = Math.floor(Math.min(...values) / step)
  const to = Math.max(Math.ceil(Math.max(...values) / step), from + 1)
  return Array.from({ length: to - from + 1 }, (_, i) => (from + i) * step)
}
