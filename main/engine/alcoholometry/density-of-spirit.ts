/**
 * How dense is a mixture of ethanol and water, from its strength by mass and its temperature?
 *
 * The equation of OIML R 22 (1975), a polynomial in the mass fraction of ethanol and in t − 20 °C,
 * evaluated in nested form: terms near 1e5 cancel, so the digits and the doubles are all kept.
 * In: mass fraction 0 to 1, −20 to 40 °C. Out: kg/m³ (OIML tables within 0.01). RangeError outside.
 * Leaves out: sugar, and whether so weak a spirit would be frozen at that temperature.
 * @example densityOfSpirit({ massFraction: 0.4, temperatureC: 20 }) // 935.15
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { requireRange } from '../range.ts'
import { atTwenty, ofMixture, ofWater } from './oiml-coefficients.ts'

export const coldestC = -20
export const warmestC = 40

/** The density at one temperature: coefficients in rising powers of the mass fraction. */
export type DensityProfile = readonly number[]

export const profileAtTwenty: DensityProfile = atTwenty

export function densityOfSpirit(spirit: { massFraction: number; temperatureC: number }): number {
  requireRange('mass fraction of ethanol', spirit.massFraction, 0, 1, 'of 1')
  requireRange('temperature', spirit.temperatureC, coldestC, warmestC, '°C')
  return densityOn(densityProfile(spirit.temperatureC), spirit.massFraction)
}

/** Unchecked. Worth keeping when many densities are wanted at one temperature. */
export function densityProfile(temperatureC: number): DensityProfile {
  const tau = temperatureC - 20
  if (tau === 0) return profileAtTwenty
  const profile: number[] = [...atTwenty]
  let power = 1
  for (let i = 0; i < ofWater.length; i++) {
    power *= tau
    profile[0]! += ofWater[i]! * power
    const row: readonly number[] = ofMixture[i] ?? []
    for (let k = 0; k < row.length; k++) profile[k + 1]! += row[k]! * power
  }
  return profile
}

/** Unchecked. */
export function densityOn(profile: DensityProfile, massFraction: number): number {
  let density = 0
  for (let k = profile.length - 1; k >= 0; k--) density = density * massFraction + profile[k]!
  return density
}

/** Unchecked: kg/m³ per unit of mass fraction. */
export function densitySlopeOn(profile: DensityProfile, massFraction: number): number {
  let slope = 0
  for (let k = profile.length - 1; k >= 1; k--) slope = slope * massFraction + k * profile[k]!
  return slope
}

/** Pure ethanol at 20 °C, by which strength by volume is defined. */
export const ethanolDensityKgPerM3 = densityOn(profileAtTwenty, 1)

export const densityOfSpiritExplained: Explanation = {
  id: 'densityOfSpirit',
  method:
    'The density follows from the share of ethanol by mass and the temperature by one long polynomial, fitted to measurements of the highest grade.',
  source: 'International alcoholometric tables, OIML R 22 (1975)',
  limits: 'Spirit and water alone, −20 to 40 °C.',
  uncertainty:
    '0.05 kg/m³: the equation meets its own tables within 0.01, and older independent tables within 0.12.',
}
