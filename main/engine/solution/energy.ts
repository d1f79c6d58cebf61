/**
 * How much energy is in a glass?
 *
 * Grams of each part times the factors of Regulation (EU) 1169/2011, Annex XIV; ethanol weighs
 * 0.78924 g/mL at 20 °C. In: mL (100 if left out), % vol and g/L at 20 °C. Out: kJ and kcal.
 * RangeError outside. Leaves out: protein, fat (nut and cream liqueurs), fibre.
 * @example energyOf({ strengthPctVol: 40, sugarGPerL: 200 }).kJ // 1255.5
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { ethanolDensityKgPerM3 } from '../alcoholometry/density-of-spirit.ts'
import { greatestVolumeMl, requirePositive, requireRange } from '../range.ts'

const perGram = {
  ethanol: { kJ: 29, kcal: 7 },
  sugar: { kJ: 17, kcal: 4 },
  acid: { kJ: 13, kcal: 3 },
} as const

export interface Energy {
  readonly kJ: number
  readonly kcal: number
}

export function energyOf(glass: {
  readonly volumeMl?: number
  readonly strengthPctVol: number
  readonly sugarGPerL: number
  readonly acidGPerL?: number
}): Energy {
  const { volumeMl = 100, strengthPctVol, sugarGPerL, acidGPerL = 0 } = glass
  requirePositive('volume', volumeMl, greatestVolumeMl, 'mL')
  requireRange('strength', strengthPctVol, 0, 100, '% vol')
  requireRange('sugar', sugarGPerL, 0, 1600, 'g/L')
  requireRange('acid', acidGPerL, 0, 1600, 'g/L')
  const grams = {
    ethanol: (volumeMl * (strengthPctVol / 100) * ethanolDensityKgPerM3) / 1000,
    sugar: (volumeMl * sugarGPerL) / 1000,
    acid: (volumeMl * acidGPerL) / 1000,
  }
  const total = (unit: keyof Energy) =>
    grams.ethanol * perGram.ethanol[unit] +
    grams.sugar * perGram.sugar[unit] +
    grams.acid * perGram.acid[unit]
  return { kJ: total('kJ'), kcal: total('kcal') }
}

export const energyOfExplained: Explanation = {
  id: 'energyOf',
  method:
    'Grams of ethanol, sugar and acid, each times the energy that labels count for it: 29, 17 and 13 kJ (7, 4 and 3 kcal).',
  source: 'Regulation (EU) 1169/2011, Annex XIV',
  limits: 'Without protein and fat, such as in cream or nut liqueurs.',
  uncertainty: 'From how well volume, strength and sugar are known; the factors are a convention.',
}
