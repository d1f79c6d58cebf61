/**
 * How strong is a sugar-free spirit of a given density and temperature?
 *
 * The inverse of OIML R 22 (1975): Newton's method, kept inside a shrinking bracket. Density falls
 * with strength at every temperature in range, so there is one answer; but well below 0 °C it is
 * nearly flat from about 17 to 35 % vol (spirit that would be slush): there 1 kg/m³ hides more than
 * 2 % vol, and the question is refused as `ambiguous`. Warm the spirit and measure again.
 * In: kg/m³ between ethanol's and water's, −20 to 40 °C. Out: mass fraction, or % vol at 20 °C.
 * RangeError outside. Leaves out: sugar; see strengthByBoilOff and strengthByTwoInstruments.
 * @example strengthOfDensity({ densityKgPerM3: 948.05, temperatureC: 20 }) // 40.00
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { DomainError } from '../domain-error.ts'
import { requireRange } from '../range.ts'
import {
  coldestC,
  densityOn,
  densityProfile,
  densitySlopeOn,
  warmestC,
  type DensityProfile,
} from './density-of-spirit.ts'
import { strengthOfMassFraction } from './strength.ts'

/**
 * kg/m³ per unit of mass fraction; flatter than this, the density does not tell the strength.
 * From −7.3 °C up no spirit is so flat.
 */
const flattestSlope = -60

/** kg/m³; the great terms of the equation cancel to about 1e-10. */
const rounding = 1e-8

const quantity = 'density of spirit'

export interface MeasuredDensity {
  readonly densityKgPerM3: number
  readonly temperatureC: number
}

export function massFractionOfDensity(measured: MeasuredDensity): number {
  const { densityKgPerM3, temperatureC } = measured
  requireRange('temperature', temperatureC, coldestC, warmestC, '°C')
  const profile = densityProfile(temperatureC)
  const [ethanol, water] = [densityOn(profile, 1), densityOn(profile, 0)]
  const where = ` at ${temperatureC} °C`
  requireRange(quantity, densityKgPerM3, ethanol - rounding, water + rounding, 'kg/m³', where)
  const massFraction = solveMassFraction(profile, densityKgPerM3, ethanol, water)
  if (densitySlopeOn(profile, massFraction) > flattestSlope)
    throw new DomainError(
      'ambiguous',
      `${quantity}${where} is ${densityKgPerM3} kg/m³, where many strengths share it; warm it first`,
      { quantity, value: densityKgPerM3, temperatureC, unit: 'kg/m³' },
    )
  return massFraction
}

export const strengthOfDensity = (measured: MeasuredDensity): number =>
  strengthOfMassFraction(massFractionOfDensity(measured))

function solveMassFraction(
  profile: DensityProfile,
  densityKgPerM3: number,
  ethanol: number,
  water: number,
): number {
  let [low, high] = [0, 1]
  const drop = (water - densityKgPerM3) / (water - ethanol)
  let fraction = drop + 0.4 * drop * (1 - drop)
  for (let round = 0; round < 60; round++) {
    const excess = densityOn(profile, fraction) - densityKgPerM3
    if (excess > 0) low = fraction
    else high = fraction
    const newton = fraction - excess / densitySlopeOn(profile, fraction)
    const next = newton >= low && newton <= high ? newton : (low + high) / 2
    if (Math.abs(next - fraction) < 1e-14) return next
    fraction = next
  }
  return fraction
}

export const strengthOfDensityExplained: Explanation = {
  id: 'strengthOfDensity',
  method:
    'Looks for the one strength whose spirit has this density at this temperature. Stronger is always lighter, so there is one answer.',
  source: 'International alcoholometric tables, OIML R 22 (1975), solved backwards',
  limits:
    'Spirit and water alone, −20 to 40 °C; below 0 °C weak spirit is refused, where many strengths share a density. Sugar makes it useless.',
  uncertainty: 'From the density’s and the thermometer’s, and 0.05 kg/m³ of the equation’s own.',
}
