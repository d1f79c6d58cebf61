/**
 * How much does the volume of a mixture grow with a gram more of each thing in it?
 *
 * Volume is no sum of volumes, for spirit and water contract; but it grows in proportion when
 * everything does, so at a given mixture it is the sum of grams times these growths (Euler). Found
 * by differences of solutionVolumeMl, then scaled so that the sum holds to the last digit.
 * In: grams, not all 0. Out: mL/g at 20 °C of ethanol, water, sugar, acid and other solubles.
 * Leaves out: pulp.
 * @example partialVolumes({ ethanolG: 316, waterG: 560, sugarG: 200 }).ethanolG // 1.198
 */
import { profileAtTwenty } from '../alcoholometry/density-of-spirit.ts'
import {
  solutionOf,
  solutionVolumeMl,
  type Solution,
  type SolutionAmounts,
} from '../solution/liquid-volume.ts'

const kinds = ['ethanolG', 'waterG', 'sugarG', 'acidG', 'solublesG'] as const

/** Of the mixture's mass: small against curvature, large against rounding. */
const stepFraction = 1e-5

export function partialVolumes(amounts: SolutionAmounts): Solution {
  const solution = solutionOf(amounts)
  const massG = kinds.reduce((sum, kind) => sum + solution[kind], 0)
  const stepG = massG * stepFraction
  const volumeWith = (kind: keyof Solution, changeG: number) =>
    solutionVolumeMl({ ...solution, [kind]: solution[kind] + changeG }, 20, profileAtTwenty)
  const growth = (kind: keyof Solution) => {
    const backG = Math.min(stepG, solution[kind])
    return (volumeWith(kind, stepG) - volumeWith(kind, -backG)) / (stepG + backG)
  }
  const rough = ofEach(growth)
  const sum = kinds.reduce((total, kind) => total + rough[kind] * solution[kind], 0)
  const exact = solutionVolumeMl(solution, 20, profileAtTwenty) / sum
  return ofEach((kind) => rough[kind] * exact)
}

const ofEach = (amountOf: (kind: keyof Solution) => number): Solution => ({
  ethanolG: amountOf('ethanolG'),
  waterG: amountOf('waterG'),
  sugarG: amountOf('sugarG'),
  acidG: amountOf('acidG'),
  solublesG: amountOf('solublesG'),
})

/** What a matter adds to the volume of such a mixture, in mL. */
export const addedVolumeMl = (matter: Solution, growth: Solution): number =>
  kinds.reduce((sum, kind) => sum + matter[kind] * growth[kind], 0)
