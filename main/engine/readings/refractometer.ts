/**
 * What would a refractometer without temperature compensation show at 20 °C?
 *
 * The international correction for sugar in water: at 10 and 30 °C as tabulated (10 °C: GOST table
 * for laboratory refractometers; 30 °C: the ICUMSA table, from memory), per degree in a straight
 * line between, which meets the tabulated rows at 15 and 25 °C within 0.02 °Bx.
 * In: 0 to 85 °Bx shown (held from 70), 10 to 30 °C. Out: °Bx at 20 °C. RangeError outside.
 * Leaves out: spirit, which changes more with temperature: measure it at 20 °C, or as
 * strengthByTwoInstruments does with its own temperature.
 * @example brixAt20({ brixReading: 20, temperatureC: 25 }) // 20.38
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { requireRange } from '../range.ts'
import { highestBrix } from '../solution/refraction.ts'

/** °Bx per °C away from 20 °C, at every ten degrees Brix from 0 to 70. */
const perDegreeAt10C = [0.05, 0.058, 0.064, 0.068, 0.072, 0.074, 0.076, 0.079] as const
const perDegreeAt30C = [0.072, 0.077, 0.079, 0.08, 0.081, 0.081, 0.081, 0.081] as const

export function brixAt20(shown: { brixReading: number; temperatureC: number }): number {
  const { brixReading, temperatureC } = shown
  requireRange('refractometer reading', brixReading, 0, highestBrix, '°Bx')
  requireRange('temperature of the prism', temperatureC, 10, 30, '°C')
  const cold = atBrix(perDegreeAt10C, brixReading)
  const warm = atBrix(perDegreeAt30C, brixReading)
  const perDegree = cold + ((warm - cold) * (temperatureC - 10)) / 20
  return brixReading + perDegree * (temperatureC - 20)
}

function atBrix(row: readonly number[], brix: number): number {
  const place = Math.min(brix / 10, row.length - 1)
  const below = Math.min(Math.floor(place), row.length - 2)
  return row[below]! + (row[below + 1]! - row[below]!) * (place - below)
}

export const brixAt20Explained: Explanation = {
  id: 'brixAt20',
  method:
    'A table of corrections for sugar in water, between its rows in straight lines. One that corrects by itself is taken at its word.',
  source:
    'International temperature correction for refractometers (ICUMSA; the row at 10 °C after the GOST table)',
  limits:
    '0 to 85 °Bx, 10 to 30 °C, sugar in water. Spirit also refracts: use it together with a hydrometer there.',
  uncertainty: 'From the instrument’s and the thermometer’s, and 0.02 °Bx of the table’s own.',
}
