/**
 * What strength by volume has a given strength by mass, and the reverse?
 *
 * By definition at 20 °C: % vol = 100 · p · ρ(p) / ρ(1), with ρ of OIML R 22 (1975). The reverse
 * has no closed form: Newton's method on the rising p · ρ(p), to the last bits of a double.
 * In and out: mass fraction 0 to 1, strength 0 to 100 % vol at 20 °C. RangeError outside.
 * Leaves out: sugar; for a sweet liquid see describeSolution.
 * @example strengthOfMassFraction(0.333) // 40.00
 */
import { requireRange } from '../range.ts'
import {
  densityOn,
  densitySlopeOn,
  ethanolDensityKgPerM3,
  profileAtTwenty,
} from './density-of-spirit.ts'

export function strengthOfMassFraction(massFraction: number): number {
  requireRange('mass fraction of ethanol', massFraction, 0, 1, 'of 1')
  return (100 * massFraction * densityOn(profileAtTwenty, massFraction)) / ethanolDensityKgPerM3
}

export function massFractionOfStrength(strengthPctVol: number): number {
  requireRange('strength', strengthPctVol, 0, 100, '% vol')
  if (strengthPctVol === 100) return 1
  const ethanolKgPerM3 = (strengthPctVol / 100) * ethanolDensityKgPerM3
  // ρ is 998 in water and 789 in ethanol: this start is within 0.05 of the root everywhere.
  let fraction = ethanolKgPerM3 / (998 - 2.09 * strengthPctVol)
  for (let round = 0; round < 8; round++) {
    const density = densityOn(profileAtTwenty, fraction)
    const slope = density + fraction * densitySlopeOn(profileAtTwenty, fraction)
    const step = (fraction * density - ethanolKgPerM3) / slope
    fraction -= step
    if (Math.abs(step) < 1e-15) break
  }
  return Math.min(Math.max(fraction, 0), 1)
}
