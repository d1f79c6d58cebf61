/**
 * What room does a mixture of ethanol, water, sugar, acid and other solubles take?
 *
 * Ethanol and water by OIML R 22 (1975), with their contraction; each gram of sugar adds its
 * apparent specific volume in the mixture's water (ICUMSA), held at the 70 % value beyond; acid and
 * other solubles add 0.60 mL/g (engineering estimate). Exact without sugar, or without ethanol;
 * between, about 1 kg/m³, since how ethanol changes the volume of sugar is not known.
 * In: grams, −20 to 40 °C. Out: mL; no liquid is 0 mL. RangeError outside. Leaves out: pulp.
 * @example liquidVolumeMl({ ethanolG: 0, waterG: 500, sugarG: 500 }) // 813.2
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import {
  coldestC,
  densityOn,
  densityProfile,
  warmestC,
  type DensityProfile,
} from '../alcoholometry/density-of-spirit.ts'
import { requireMass, requireRange } from '../range.ts'
import { sucroseMlPerG } from './density-of-sucrose.ts'

export interface Solution {
  readonly ethanolG: number
  readonly waterG: number
  readonly sugarG: number
  readonly acidG: number
  readonly solublesG: number
}

/** A solution whose lesser parts may be left out. */
export type SolutionAmounts = Pick<Solution, 'ethanolG' | 'waterG' | 'sugarG'> &
  Partial<Pick<Solution, 'acidG' | 'solublesG'>>

export const solublesMlPerG = 0.6

export function liquidVolumeMl(amounts: SolutionAmounts, temperatureC = 20): number {
  requireRange('temperature', temperatureC, coldestC, warmestC, '°C')
  return solutionVolumeMl(solutionOf(amounts), temperatureC, densityProfile(temperatureC))
}

/** Checks each amount, and fills in those left out. */
export const solutionOf = (amounts: SolutionAmounts): Solution => ({
  ethanolG: requireMass('ethanol', amounts.ethanolG),
  waterG: requireMass('water', amounts.waterG),
  sugarG: requireMass('sugar', amounts.sugarG),
  acidG: requireMass('acid', amounts.acidG ?? 0),
  solublesG: requireMass('other solubles', amounts.solublesG ?? 0),
})

/** Unchecked. */
export function solutionVolumeMl(
  solution: Solution,
  temperatureC: number,
  profile: DensityProfile,
): number {
  const { ethanolG, waterG, sugarG, acidG, solublesG } = solution
  const spiritG = ethanolG + waterG
  const spiritMl = spiritG === 0 ? 0 : (1000 * spiritG) / densityOn(profile, ethanolG / spiritG)
  const sugarMl =
    sugarG === 0 ? 0 : sugarG * sucroseMlPerG(sugarG / (sugarG + waterG), temperatureC)
  return spiritMl + sugarMl + (acidG + solublesG) * solublesMlPerG
}

export const liquidVolumeExplained: Explanation = {
  id: 'liquidVolume',
  method:
    'The volume of the spirit and water alone, and on top of it the room that sugar takes in water: 0.62 ml a gram, a little more where there is much.',
  source: 'OIML R 22 (1975) and ICUMSA (SPS-4) put together',
  limits:
    'Exact for spirit alone and for syrup alone; what ethanol and sugar do to each other is in no public table.',
  uncertainty: 'About 1 kg/m³ in a sweet liqueur: 0.005 ml for each gram of sugar.',
}
