/**
 * How strong is the spirit in which a glass alcoholometer shows a reading at a temperature?
 *
 * The instrument is graduated in % vol at 20 °C. At another temperature its glass has grown by
 * 25e-6 per °C (OIML R 22), so a reading R means a density of ρ(R, 20) / (1 + 25e-6 · (t − 20));
 * the strength is that of the spirit which has this density at t. Against 27 CFR 30.61: 0.06 proof rms.
 * In: 0 to 100 % vol, −20 to 40 °C. Out: % vol at 20 °C. RangeError outside, and where no spirit
 * is that dense or light at that temperature. Leaves out: sugar, which makes the reading useless.
 * @example trueStrength({ readingPctVol: 40, temperatureC: 10 }) // 43.98
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { requireRange } from '../range.ts'
import { coldestC, densityOn, profileAtTwenty, warmestC } from './density-of-spirit.ts'
import { strengthOfDensity } from './strength-of-density.ts'
import { massFractionOfStrength } from './strength.ts'

/** Cubic expansion of instrument glass, per °C (OIML R 22). */
const glassExpansionPerC = 25e-6

/** How much larger the instrument is than where it was graduated, as a ratio of volumes. */
export const glassGrowth = (temperatureC: number, graduatedAtC: number): number =>
  1 + glassExpansionPerC * (temperatureC - graduatedAtC)

export function trueStrength(shown: { readingPctVol: number; temperatureC: number }): number {
  const { readingPctVol, temperatureC } = shown
  requireRange('alcoholometer reading', readingPctVol, 0, 100, '% vol')
  requireRange('temperature', temperatureC, coldestC, warmestC, '°C')
  if (temperatureC === 20) return readingPctVol
  const graduated = densityOn(profileAtTwenty, massFractionOfStrength(readingPctVol))
  return strengthOfDensity({
    densityKgPerM3: graduated / glassGrowth(temperatureC, 20),
    temperatureC,
  })
}

export const trueStrengthExplained: Explanation = {
  id: 'trueStrength',
  method:
    'The reading is turned into the density the glass floats in, allowing for the growth of the glass itself (25 millionths a degree), and that density at that temperature into strength.',
  source: 'OIML R 22 (1975); checked against the table of 27 CFR 30.61',
  limits: '0 to 100 % vol, −20 to 40 °C, an instrument graduated at 20 °C, no sugar.',
  uncertainty:
    'From the instrument’s and the thermometer’s, and 0.03 % vol of the method’s own (its scatter against the printed table).',
}
