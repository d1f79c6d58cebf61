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
  profileAtTwenty,
  type DensityProfile,
} from './density-of-spirit.ts'

export function strengthOfMassFraction(massFraction: number): number {
  requireRange('mass fraction of ethanol', massFraction, 0, 1, 'of 1')
  return 100 * volumeShareOfMassFraction(profileAtTwenty, massFraction)
}

export function massFractionOfStrength(strengthPctVol: number): number {
  requireRange('strength', strengthPctVol, 0, 100, '% vol')
  return massFractionOfVolumeShare(profileAtTwenty, strengthPctVol / 100)
}

/** Unchecked: volume of ethanol alone per volume of the mixture, at the profile's temperature. */
export const volumeShareOfMassFraction = (profile: DensityProfile, massFraction: number): number =>
  Math.min((massFraction * densityOn(profile, massFraction)) / densityOn(profile, 1), 1)

/** Unchecked. */
export function massFractionOfVolumeShare(profile: DensityProfile, share: number): number {
  if (share === 1) return 1
  const ethanol = share * densityOn(profile, 1)
  // Density falls from 998 to 789: taken as a straight line, the start is within 0.05 of the root.
  let fraction = ethanol / (998 - 209 * share)
  for (let round = 0; round < 8; round++) {
    const density = densityOn(profile, fraction)
    const slope = density + fraction * densitySlopeOn(profile, fraction)
    const step = (fraction * density - ethanol) / slope
    fraction -= step
    if (Math.abs(step) < 1e-15) break
  }
  return Math.min(Math.max(fraction, 0), 1)
}
