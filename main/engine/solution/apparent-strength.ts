/**
 * What does an alcoholometer show in a liqueur, and why does it mislead?
 *
 * It floats by density alone, and sugar makes the liquid dense: it shows the strength of the
 * sugar-free spirit of that density (OIML R 22), about 0.27 % vol less per g/L near 40 % vol. From
 * about 135 g/L at 40 % vol it does not show anything: the liquid is denser than water.
 * In: % vol and g/L at 20 °C, −20 to 40 °C. Out: % vol shown, undefined when off the scale, and
 * the kg/m³ by which it is. RangeError outside. Leaves out: nothing known to matter.
 * @example apparentStrength({ strengthPctVol: 40, sugarGPerL: 100 }).readingPctVol // 9.4
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { densityOn, profileAtTwenty } from '../alcoholometry/density-of-spirit.ts'
import { strengthOfDensity } from '../alcoholometry/strength-of-density.ts'
import { glassGrowth } from '../alcoholometry/true-strength.ts'
import { composeSolution, type SolutionStrength } from './compose-solution.ts'
import { describeSolution } from './describe-solution.ts'

export interface ApparentStrength {
  readonly readingPctVol: number | undefined
  readonly densityKgPerM3: number
  readonly offScaleKgPerM3: number
}

export function apparentStrength(
  liquid: SolutionStrength & { readonly temperatureC?: number },
): ApparentStrength {
  const { temperatureC = 20 } = liquid
  const solution = composeSolution({ ...liquid, volumeMl: 1000 })
  const { densityKgPerM3 } = describeSolution({ ...solution, temperatureC })
  const graduated = densityKgPerM3 * glassGrowth(temperatureC, 20)
  const [lightest, densest] = [densityOn(profileAtTwenty, 1), densityOn(profileAtTwenty, 0)]
  const offScaleKgPerM3 =
    graduated > densest ? graduated - densest : Math.min(graduated - lightest, 0)
  const readingPctVol =
    offScaleKgPerM3 === 0
      ? strengthOfDensity({ densityKgPerM3: graduated, temperatureC: 20 })
      : undefined
  return { readingPctVol, densityKgPerM3, offScaleKgPerM3 }
}

export const apparentStrengthExplained: Explanation = {
  id: 'apparentStrength',
  method:
    'An alcoholometer floats by density alone, and its scale was made for spirit without sugar. Sugar makes the liquid dense, so it stands too high and shows too little: about 0.27 % vol for each g/L near 40 % vol.',
  source: 'OIML R 22 (1975) and ICUMSA (SPS-4) put together',
  limits: '−20 to 40 °C. Off the scale it shows nothing.',
  uncertainty:
    'From how well strength and sugar are known, and about 1 kg/m³ of the sweet liquid’s own.',
}
