/**
 * Which grams make a liquid of a given volume, strength and sweetness?
 *
 * The inverse of describeSolution: ethanol, sugar, acid and other solubles follow from the amounts
 * per litre at 20 °C, and water fills what is left of the volume: Newton's method on liquidVolumeMl.
 * In: mL (at 20 °C, or at temperatureC when given), % vol and g/L at 20 °C. Out: grams.
 * RangeError outside; where no water fits any more, a DomainError `noSuchMixture` (also a
 * RangeError) with the mL that a litre would overflow by. Leaves out: whether the sugar dissolves.
 * @example composeSolution({ volumeMl: 1000, strengthPctVol: 40, sugarGPerL: 200 }).waterG // 506.3
 */
import {
  coldestC,
  densityProfile,
  ethanolDensityKgPerM3,
  profileAtTwenty,
  warmestC,
} from '../alcoholometry/density-of-spirit.ts'
import { DomainError } from '../domain-error.ts'
import { greatestVolumeMl, requirePositive, requireRange } from '../range.ts'
import { sucroseMlPerG } from './density-of-sucrose.ts'
import { solutionVolumeMl, type Solution } from './liquid-volume.ts'

const litreMl = 1000

/** An overflow below this is rounding: spirit of 100 % vol leaves no water at all. */
const roundingMl = 1e-9

/** What is in a litre at 20 °C. */
export interface SolutionStrength {
  readonly strengthPctVol: number
  readonly sugarGPerL: number
  readonly acidGPerL?: number
  readonly solublesGPerL?: number
}

export function composeSolution(
  wanted: SolutionStrength & { readonly volumeMl: number; readonly temperatureC?: number },
): Solution {
  const { volumeMl, temperatureC = 20 } = wanted
  requirePositive('volume', volumeMl, greatestVolumeMl, 'mL')
  requireRange('temperature', temperatureC, coldestC, warmestC, '°C')
  const litre = composeLitre(wanted)
  const litreThereMl =
    temperatureC === 20
      ? litreMl
      : solutionVolumeMl(litre, temperatureC, densityProfile(temperatureC))
  const litres = volumeMl / litreThereMl
  return {
    ethanolG: litre.ethanolG * litres,
    waterG: litre.waterG * litres,
    sugarG: litre.sugarG * litres,
    acidG: litre.acidG * litres,
    solublesG: litre.solublesG * litres,
  }
}

/** A litre at 20 °C. */
export function composeLitre(wanted: SolutionStrength): Solution {
  const { strengthPctVol, sugarGPerL, acidGPerL = 0, solublesGPerL = 0 } = wanted
  requireRange('strength', strengthPctVol, 0, 100, '% vol')
  requireRange('sugar', sugarGPerL, 0, 1600, 'g/L')
  requireRange('acid', acidGPerL, 0, 1600, 'g/L')
  requireRange('other solubles', solublesGPerL, 0, 1600, 'g/L')
  const dry = {
    ethanolG: (strengthPctVol / 100) * ethanolDensityKgPerM3,
    waterG: 0,
    sugarG: sugarGPerL,
    acidG: acidGPerL,
    solublesG: solublesGPerL,
  }
  const dryMl = solutionVolumeMl(dry, 20, profileAtTwenty)
  if (dryMl > litreMl + roundingMl) throw overflowing(wanted, dryMl - litreMl)
  return { ...dry, waterG: fillingWaterG(dry, dryMl) }
}

/** The strength of a litre in which sugar and ethanol leave no room for water. */
export const greatestStrengthPctVol = (sugarGPerL: number): number =>
  Math.max(100 - (100 * sugarGPerL * sucroseMlPerG(1, 20)) / litreMl, 0)

/** The sugar of a litre in which sugar and ethanol leave no room for water. */
export const greatestSugarGPerL = (strengthPctVol: number): number =>
  ((1 - strengthPctVol / 100) * litreMl) / sucroseMlPerG(1, 20)

/** The volume rises with the water, nearly in a straight line, so few rounds are enough. */
function fillingWaterG(dry: Solution, dryMl: number): number {
  const volumeWith = (waterG: number) => solutionVolumeMl({ ...dry, waterG }, 20, profileAtTwenty)
  let [before, beforeMl] = [0, dryMl]
  let waterG = Math.max(litreMl - dryMl, 0)
  for (let round = 0; round < 40; round++) {
    const volumeMl = volumeWith(waterG)
    const rise = waterG === before ? 1 : (volumeMl - beforeMl) / (waterG - before)
    const next = Math.max(waterG - (volumeMl - litreMl) / (rise > 0.3 ? rise : 1), 0)
    if (Math.abs(next - waterG) < 1e-12 * litreMl) return next
    ;[before, beforeMl, waterG] = [waterG, volumeMl, next]
  }
  return waterG
}

function overflowing(wanted: SolutionStrength, overflowMl: number): DomainError {
  const { strengthPctVol, sugarGPerL } = wanted
  return new DomainError(
    'noSuchMixture',
    `strength ${strengthPctVol} % vol with sugar ${sugarGPerL} g/L is no mixture: ` +
      `spirit and sugar alone overfill the litre by ${overflowMl.toFixed(1)} mL`,
    { strengthPctVol, sugarGPerL, overflowMlPerL: overflowMl },
  )
}
