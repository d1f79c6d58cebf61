/**
 * How dense is the liquid in which a glass hydrometer shows a reading at a temperature?
 *
 * The glass has grown by 25e-6 per °C (OIML R 22) from where the hydrometer was graduated, so the
 * liquid is that much less dense than shown. What it would be at 20 °C depends on what is in it.
 * In: kg/m³ shown, −20 to 40 °C; graduated at 20 °C if left out. Out: kg/m³ at that temperature.
 * RangeError outside. Leaves out: the pull of the surface, which its makers allow for.
 * @example densityOfHydrometer({ readingKgPerM3: 1030, temperatureC: 10 }) // 1030.26
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { coldestC, warmestC } from '../alcoholometry/density-of-spirit.ts'
import { glassGrowth } from '../alcoholometry/true-strength.ts'
import { requireRange } from '../range.ts'

export function densityOfHydrometer(shown: {
  readonly readingKgPerM3: number
  readonly temperatureC: number
  readonly graduatedAtC?: number
}): number {
  const { readingKgPerM3, temperatureC, graduatedAtC = 20 } = shown
  requireRange('hydrometer reading', readingKgPerM3, 600, 2000, 'kg/m³')
  requireRange('temperature', temperatureC, coldestC, warmestC, '°C')
  requireRange('graduation temperature', graduatedAtC, 0, 30, '°C')
  return readingKgPerM3 / glassGrowth(temperatureC, graduatedAtC)
}

export const densityOfHydrometerExplained: Explanation = {
  id: 'densityOfHydrometer',
  method:
    'Glass grows by 25 millionths of its volume a degree from where it was graduated, so the liquid is that much less dense than shown. What it is at 20 °C depends on what is in it.',
  source: 'Expansion of instrument glass, OIML R 22 (1975)',
  limits: '600 to 2000 kg/m³, −20 to 40 °C.',
  uncertainty:
    'From the hydrometer’s and, where the density is carried to 20 °C, the thermometer’s.',
}
