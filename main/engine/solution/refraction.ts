/**
 * What does a refractometer show in a liquid with spirit and sugar in it?
 *
 * Indices of ethanol-water and sucrose-water at 20 °C, sodium D line: polynomials fitted to the
 * CRC Handbook's tables (3e-4 and 1e-4). Together: additive specific refractions (Lorentz, Lorenz)
 * over the volume of liquidVolumeMl; acid and other solubles refract as sugar does.
 * In: grams; index of a syrup of −5 to 85 °Bx. Out: index at 20 °C; degrees Brix. RangeError outside.
 * Leaves out: what spirit and sugar do to each other's refraction (no public table was found).
 * @example brixOfRefractiveIndex(1.3639) // 20.0
 */
import { densityOn, profileAtTwenty } from '../alcoholometry/density-of-spirit.ts'
import { DomainError } from '../domain-error.ts'
import { requireRange } from '../range.ts'
import { syrupDensityKgPerM3 } from './density-of-sucrose.ts'
import {
  solutionOf,
  solutionVolumeMl,
  type Solution,
  type SolutionAmounts,
} from './liquid-volume.ts'

const waterIndex = 1.33299
/** In rising powers (from 1) of the mass fraction. */
const ethanolTerms = [0.051543785, 0.20496073, -0.71898843, 0.85582313, -0.4034622, 0.038770696]
const sucroseTerms = [0.14277138, 0.054531306, 0.016717484]

/** Below this the difference is lost in rounding; the value here stands for all weaker syrups. */
const leastMassFraction = 1e-4

/** Beyond this the density is not good enough to tell the specific refraction: it is held. */
const heldMassFraction = 0.7

export const lowestBrix = -5
export const highestBrix = 85

export function refractiveIndex(amounts: SolutionAmounts): number {
  const solution = solutionOf(amounts)
  requireLiquid(solution)
  const volumeMl = solutionVolumeMl(solution, 20, profileAtTwenty)
  return indexOf(refractionMl(solution) / volumeMl)
}

export function brixOfRefractiveIndex(index: number): number {
  const [low, high] = [syrupIndex(lowestBrix / 100), syrupIndex(highestBrix / 100)]
  requireRange('refractive index', index, low, high, '(ratio)')
  return brixOfIndex(index)
}

export function refractiveIndexOfBrix(brix: number): number {
  requireRange('refractometer reading', brix, lowestBrix, highestBrix, '°Bx')
  return syrupIndex(brix / 100)
}

export function requireLiquid({ ethanolG, waterG }: Solution): void {
  if (ethanolG + waterG > 0) return
  const details = { quantity: 'ethanol and water', value: 0, low: 0, unit: 'g' }
  throw new DomainError('outOfRange', 'ethanol and water are both 0 g, must be above 0', details)
}

/** Unchecked: degrees Brix that a refractometer at 20 °C shows, from the mixture's volume there. */
export const brixShown = (solution: Solution, volumeMl: number): number =>
  brixOfIndex(indexOf(refractionMl(solution) / volumeMl))

/**
 * Unchecked: what a temperature-compensated refractometer shows at another temperature, from the
 * mixture's volume there. Its compensation is made for sugar in water: it reads the syrup that
 * would refract as much at that temperature, and a spirit changes more than a syrup does.
 */
export function brixShownAt(solution: Solution, volumeMl: number, temperatureC: number): number {
  const refraction = refractionMl(solution) / volumeMl
  let brix = brixOfIndex(indexOf(refraction))
  if (temperatureC === 20) return brix
  for (let round = 0; round < 4; round++) {
    const fraction = brix / 100
    const thinning =
      syrupDensityKgPerM3(fraction, 20) / syrupDensityKgPerM3(fraction, Math.max(temperatureC, 0))
    brix = brixOfIndex(indexOf(refraction * thinning))
  }
  return brix
}

/** Specific refraction times mass, in mL. */
function refractionMl({ ethanolG, waterG, sugarG, acidG, solublesG }: Solution): number {
  const spiritG = ethanolG + waterG
  const solidG = sugarG + acidG + solublesG
  const ofSpirit = spiritG === 0 ? 0 : spiritG * spiritMlPerG(ethanolG / spiritG)
  return solidG === 0 ? ofSpirit : ofSpirit + solidG * sugarMlPerG(solidG / (solidG + waterG))
}

const spiritMlPerG = (massFraction: number): number =>
  (1000 * refractionOf(waterIndex + series(ethanolTerms, massFraction))) /
  densityOn(profileAtTwenty, massFraction)

/** By difference from the water that the sugar is dissolved in. */
function sugarMlPerG(massFraction: number): number {
  const fraction = Math.min(Math.max(massFraction, leastMassFraction), heldMassFraction)
  const ofSyrup = (1000 * refractionOf(syrupIndex(fraction))) / syrupDensityKgPerM3(fraction, 20)
  return (ofSyrup - (1 - fraction) * waterMlPerG) / fraction
}

const syrupIndex = (massFraction: number): number => waterIndex + series(sucroseTerms, massFraction)

const refractionOf = (index: number): number => (index * index - 1) / (index * index + 2)

const indexOf = (refraction: number): number => Math.sqrt((1 + 2 * refraction) / (1 - refraction))

const waterMlPerG = (1000 * refractionOf(waterIndex)) / syrupDensityKgPerM3(0, 20)

function series(terms: readonly number[], x: number): number {
  let sum = 0
  for (let k = terms.length - 1; k >= 0; k--) sum = (sum + terms[k]!) * x
  return sum
}

/** The syrup of that index: Newton's method on a cubic that rises throughout. */
function brixOfIndex(index: number): number {
  const [a, b, c] = sucroseTerms as [number, number, number]
  const rise = index - waterIndex
  let fraction = rise / 0.175
  for (let round = 0; round < 12; round++) {
    const value = fraction * (a + fraction * (b + fraction * c)) - rise
    const step = value / (a + fraction * (2 * b + fraction * 3 * c))
    fraction -= step
    if (Math.abs(step) < 1e-14) break
  }
  return 100 * fraction
}
