/**
 * How much, how dense, how strong and how sweet is a liquid, from the grams in it?
 *
 * Volume by liquidVolumeMl; strength is the volume of its ethanol alone (789.24 kg/m³) in 100
 * volumes, and sugar its grams in a litre, both at 20 °C as the trade states them.
 * In: grams of which ethanol and water are not both 0; −20 to 40 °C for volume and density.
 * Out: mL and kg/m³ at that temperature, % vol and g/L at 20 °C, degrees Brix that a refractometer
 * shows at 20 °C, far above the sugar. RangeError outside.
 * Leaves out: whether that much sugar dissolves (sucroseSolubility), and pulp.
 * @example describeSolution({ ethanolG: 315.7, waterG: 560, sugarG: 200 }).strengthPctVol // 38.0
 */
import {
  coldestC,
  densityProfile,
  ethanolDensityKgPerM3,
  profileAtTwenty,
  warmestC,
} from '../alcoholometry/density-of-spirit.ts'
import { requireRange } from '../range.ts'
import { solutionOf, solutionVolumeMl, type SolutionAmounts } from './liquid-volume.ts'
import { brixShown, requireLiquid } from './refraction.ts'

export interface SolutionDescription {
  readonly volumeMl: number
  readonly densityKgPerM3: number
  readonly strengthPctVol: number
  readonly sugarGPerL: number
  readonly apparentBrix: number
}

export function describeSolution(
  amounts: SolutionAmounts & { readonly temperatureC?: number },
): SolutionDescription {
  const { temperatureC = 20 } = amounts
  requireRange('temperature', temperatureC, coldestC, warmestC, '°C')
  const solution = solutionOf(amounts)
  requireLiquid(solution)
  const { ethanolG, waterG, sugarG, acidG, solublesG } = solution
  const volumeAt20Ml = solutionVolumeMl(solution, 20, profileAtTwenty)
  const volumeMl =
    temperatureC === 20
      ? volumeAt20Ml
      : solutionVolumeMl(solution, temperatureC, densityProfile(temperatureC))
  return {
    volumeMl,
    densityKgPerM3: (1000 * (ethanolG + waterG + sugarG + acidG + solublesG)) / volumeMl,
    // Pure ethanol is 100 % vol, and rounding must not make it more.
    strengthPctVol: Math.min(100, (1e5 * ethanolG) / ethanolDensityKgPerM3 / volumeAt20Ml),
    sugarGPerL: (1000 * sugarG) / volumeAt20Ml,
    apparentBrix: brixShown(solution, volumeAt20Ml),
  }
}
