/**
 * How many standard drinks are in a glass?
 *
 * Its ethanol over what a country calls one drink: 10 mL (8 g) in the United Kingdom, 14 g in the
 * USA, 10 g in Australia and in the questionnaires of the WHO; others use 8 to 20 g.
 * In: mL and % vol at 20 °C. Out: mL and g of ethanol, and drinks. RangeError outside.
 * Leaves out: what anyone can safely drink.
 * @example standardDrinks({ volumeMl: 35, strengthPctVol: 40 }).unitedKingdom // 1.4
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { ethanolDensityKgPerM3 } from '../alcoholometry/density-of-spirit.ts'
import { greatestVolumeMl, requirePositive, requireRange } from '../range.ts'

const britishUnitMl = 10
const americanDrinkG = 14
const australianDrinkG = 10

export interface StandardDrinks {
  readonly ethanolMl: number
  readonly ethanolG: number
  readonly unitedKingdom: number
  readonly unitedStates: number
  readonly australia: number
}

export function standardDrinks(glass: {
  readonly volumeMl: number
  readonly strengthPctVol: number
}): StandardDrinks {
  requirePositive('volume', glass.volumeMl, greatestVolumeMl, 'mL')
  requireRange('strength', glass.strengthPctVol, 0, 100, '% vol')
  const ethanolMl = (glass.volumeMl * glass.strengthPctVol) / 100
  const ethanolG = (ethanolMl * ethanolDensityKgPerM3) / 1000
  return {
    ethanolMl,
    ethanolG,
    unitedKingdom: ethanolMl / britishUnitMl,
    unitedStates: ethanolG / americanDrinkG,
    australia: ethanolG / australianDrinkG,
  }
}

export const standardDrinksExplained: Explanation = {
  id: 'standardDrinks',
  method:
    'The ethanol in the glass over what a country calls one drink: 10 ml in the United Kingdom, 14 g in the United States, 10 g in Australia.',
  source:
    'Guidance of the health authorities of those countries; questionnaires of the WHO (AUDIT, 2001; the year from memory)',
  limits: 'Says nothing of what anyone can safely drink.',
  uncertainty: 'From how well volume and strength are known.',
}
