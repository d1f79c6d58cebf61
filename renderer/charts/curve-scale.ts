/** The scale of each panel: round marks that hold the line, its band and its readings. */
import { curveInk, curveQuantities, type CurveQuantity } from './curve-quantities.ts'
import type { CurveRow } from './curve-rows.ts'
import { amountTicks, spanTicks } from './time-axis.ts'

export type Scales = Readonly<Record<CurveQuantity, readonly number[]>>

export interface ScaledReading {
  readonly atMs: number
  readonly strengthPctVol: number | undefined
  readonly sugarGPerL: number | undefined
}

/** The least height of a scale: a line that hardly moves must look as if it did. */
const leastSpan: Readonly<Record<CurveQuantity, number>> = {
  strengthPctVol: 8,
  sugarGPerL: 40,
  acidGPerL: 4,
  volumeMl: 100,
  ethanolInFruitMl: 50,
}

export function scalesOf(rows: readonly CurveRow[], readings: readonly ScaledReading[]): Scales {
  return Object.fromEntries(
    curveQuantities.map((quantity) => [quantity, scaleOf(quantity, rows, readings)]),
  ) as Record<CurveQuantity, number[]>
}

function scaleOf(
  quantity: CurveQuantity,
  rows: readonly CurveRow[],
  readings: readonly ScaledReading[],
): number[] {
  const values = [
    ...rows.flatMap(({ values: best, low, high }) =>
      [best, low, high].flatMap((one) => (one ? [one[quantity]] : [])),
    ),
    ...readings.flatMap((reading) =>
      quantity === 'strengthPctVol' || quantity === 'sugarGPerL' ? (reading[quantity] ?? []) : [],
    ),
  ]
  const greatest = values.reduce((most, value) => Math.max(most, value), 0)
  const least = values.reduce((fewest, value) => Math.min(fewest, value), greatest)
  const span = leastSpan[quantity]
  if (curveInk[quantity].isFromZero) return amountTicks(Math.max(span, 1.04 * greatest), 2)
  const missing = Math.max(0, span - (greatest - least)) / 2
  return spanTicks(Math.max(0, least - missing), greatest + missing, 4)
}

/** Values off the scale are drawn on its edge: they must not run into the next panel. */
export const onScale = (ticks: readonly number[], value: number): number =>
  Math.min(ticks.at(-1) ?? value, Math.max(ticks[0] ?? value, value))
