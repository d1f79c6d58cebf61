/**
 * What do the strengths and volumes of American instruments, stated at 60 °F, mean at 20 °C?
 *
 * Proof is twice the % vol at 60 °F (15.56 °C), by the same OIML R 22 (1975) densities: a strength
 * names a mass fraction at either temperature. Agrees with 27 CFR 30.61, 30.66 and 30.67.
 * In: proof 0 to 200, % vol at 20 °C, mL, −4 to 104 °F. Out: likewise. RangeError outside.
 * Leaves out: British and other old proofs.
 * @example strengthOfProof(80) // 40.07
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { greatestVolumeMl, requirePositive, requireRange } from '../range.ts'
import { coldestC, densityOn, densityProfile, warmestC } from './density-of-spirit.ts'
import { massFractionOfDensity } from './strength-of-density.ts'
import {
  massFractionOfStrength,
  massFractionOfVolumeShare,
  strengthOfMassFraction,
  volumeShareOfMassFraction,
} from './strength.ts'
import { glassGrowth } from './true-strength.ts'

export const celsiusOfFahrenheit = (temperatureF: number): number => ((temperatureF - 32) * 5) / 9
export const fahrenheitOfCelsius = (temperatureC: number): number => (temperatureC * 9) / 5 + 32

const sixtyFahrenheitC = celsiusOfFahrenheit(60)
const profileAtSixty = densityProfile(sixtyFahrenheitC)

export function massFractionOfProof(proof: number): number {
  requireRange('proof', proof, 0, 200, 'proof')
  return massFractionOfVolumeShare(profileAtSixty, proof / 200)
}

export const strengthOfProof = (proof: number): number =>
  strengthOfMassFraction(massFractionOfProof(proof))

export const proofOfStrength = (strengthPctVol: number): number =>
  proofOfMassFraction(massFractionOfStrength(strengthPctVol))

/** The proof of the spirit in which a glass hydrometer graduated at 60 °F shows a reading. */
export function trueProof(shown: { readingProof: number; temperatureF: number }): number {
  const temperatureC = celsiusOfFahrenheit(shown.temperatureF)
  const [coldestF, warmestF] = [fahrenheitOfCelsius(coldestC), fahrenheitOfCelsius(warmestC)]
  requireRange('temperature', shown.temperatureF, coldestF, warmestF, '°F')
  const graduated = densityOn(profileAtSixty, massFractionOfProof(shown.readingProof))
  const densityKgPerM3 = graduated / glassGrowth(temperatureC, sixtyFahrenheitC)
  return proofOfMassFraction(massFractionOfDensity({ densityKgPerM3, temperatureC }))
}

/** What a volume of spirit measured at a temperature is at 60 °F. */
export function volumeAtSixtyFahrenheit(spirit: {
  volumeMl: number
  strengthPctVol: number
  temperatureC: number
}): number {
  requirePositive('volume', spirit.volumeMl, greatestVolumeMl, 'mL')
  requireRange('temperature', spirit.temperatureC, coldestC, warmestC, '°C')
  const massFraction = massFractionOfStrength(spirit.strengthPctVol)
  const density = densityOn(densityProfile(spirit.temperatureC), massFraction)
  return (spirit.volumeMl * density) / densityOn(profileAtSixty, massFraction)
}

const proofOfMassFraction = (massFraction: number): number =>
  200 * volumeShareOfMassFraction(profileAtSixty, massFraction)

export const proofExplained: Explanation = {
  id: 'proof',
  method:
    'Proof is twice the percentage by volume at 60 °F. The strength is turned into a share of ethanol by mass, which no temperature changes, and back at 20 °C.',
  source: '27 CFR 30.61, 30.66 and 30.67, by the densities of OIML R 22 (1975)',
  limits: 'American proof, 0 to 200; −4 to 104 °F for the hydrometer. British proof is another.',
  uncertainty:
    'From the number’s own, and 0.06 proof of the method’s where a hydrometer is corrected.',
}
