/**
 * How dense is a sugar syrup, and how much room does the sugar in it take?
 *
 * The ICUMSA equation (SPS-4): water plus a polynomial in the mass fraction of sucrose and in
 * (t − 20 °C) / 100. The apparent specific volume is what sugar adds to the volume of the water.
 * In: mass fraction 0 to 0.85 (degrees Brix are 100 times that), 0 to 80 °C. Out: kg/m³; within
 * 0.1 of published tables to 50 %, 0.2 to 60 %, 0.8 at 84 %. RangeError outside.
 * Leaves out: invert and fruit sugars, which differ by about 1 kg/m³.
 * @example densityOfSucrose({ massFraction: 0.5, temperatureC: 20 }) // 1229.65
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { requireRange } from '../range.ts'
import { waterDensityKgPerM3 } from './density-of-water.ts'

/** One row per power of (t − 20 °C) / 100, each in rising powers (from 1) of the mass fraction. */
const coefficients: readonly (readonly number[])[] = [
  [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
  [-46.272, -7.172, 1.1597, 5.1126, 17.5254],
  [59.7712, 7.2491, 12.363, -35.4791],
  [-47.2207, -21.6977, 27.6301],
  [18.3184, 12.3081],
]

export const richestMassFraction = 0.85

/** Beyond this the equation is not good enough to tell how the sugar's own volume changes. */
const heldMassFraction = 0.7

export function densityOfSucrose(syrup: { massFraction: number; temperatureC: number }): number {
  requireRange('mass fraction of sucrose', syrup.massFraction, 0, richestMassFraction, 'of 1')
  requireRange('temperature of syrup', syrup.temperatureC, 0, 80, '°C')
  return syrupDensityKgPerM3(syrup.massFraction, syrup.temperatureC)
}

/** Unchecked. */
export const syrupDensityKgPerM3 = (massFraction: number, temperatureC: number): number =>
  waterDensityKgPerM3(temperatureC) + massFraction * excessPerFraction(massFraction, temperatureC)

/** (ρ − ρ of water) / w, which has a limit where the syrup is water. */
function excessPerFraction(massFraction: number, temperatureC: number): number {
  const tau = (temperatureC - 20) / 100
  const rows = tau === 0 ? 1 : coefficients.length
  let excess = 0
  for (let j = rows - 1; j >= 0; j--) {
    const row = coefficients[j]!
    let ofRow = 0
    for (let i = row.length - 1; i >= 0; i--) ofRow = ofRow * massFraction + row[i]!
    excess = excess * tau + ofRow
  }
  return excess
}

/**
 * Unchecked: mL that one gram of sucrose adds to the water it is dissolved in. The subtraction of
 * two volumes is done on paper, so that it is exact down to the last trace of sugar.
 */
export function sucroseMlPerG(massFraction: number, temperatureC: number): number {
  const fraction = Math.min(massFraction, heldMassFraction)
  const heldC = Math.max(temperatureC, 0)
  const water = waterDensityKgPerM3(heldC)
  const excess = excessPerFraction(fraction, heldC)
  return (1000 * (water - (1 - fraction) * excess)) / (water * (water + fraction * excess))
}

export const densityOfSucroseExplained: Explanation = {
  id: 'densityOfSucrose',
  method:
    'The density follows from the share of sugar by mass (degrees Brix) and the temperature by one polynomial; the other way round it is solved.',
  source: 'ICUMSA, method SPS-4',
  limits:
    '0 to 85 % by mass, 0 to 80 °C, cane or beet sugar in water; fruit sugars differ by about 1 kg/m³.',
  uncertainty:
    '0.1 kg/m³ of the equation’s own up to half sugar, 0.2 to 60 %, 0.8 beyond, and from the instruments’.',
}
