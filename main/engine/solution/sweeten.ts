/**
 * How much sugar brings a liquid to a sweetness, and what does that make?
 *
 * Sugar takes room, about 0.62 mL/g, so more is needed than the missing g/L, and the strength
 * falls: the root of sugar over liquidVolumeMl. The most that dissolves is sucroseSolubility's guide.
 * In: mL, % vol, g/L, all at 20 °C; the target from the present sugar to 1200 g/L. Out: g, mL, % vol,
 * and the g that would stay undissolved. RangeError outside, and where no mixture is so sweet.
 * Leaves out: invert and fruit sugars, which take the same room within 1 kg/m³.
 * @example sweeten({ volumeMl: 1000, strengthPctVol: 40, targetSugarGPerL: 200 }).sugarG // 228.3
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { requireRange } from '../range.ts'
import { rootBetween } from '../root.ts'
import { composeSolution } from './compose-solution.ts'
import { describeSolution } from './describe-solution.ts'
import { sucroseSolubility } from './sucrose-solubility.ts'

/** More room than a gram of sugar ever takes, for an upper bound of what is needed. */
const mostSugarMlPerG = 0.65

export interface Sweetening {
  readonly sugarG: number
  readonly resultMl: number
  readonly resultPctVol: number
  readonly addedMl: number
  readonly undissolvedG: number
}

export function sweeten(liquid: {
  readonly volumeMl: number
  readonly strengthPctVol: number
  readonly sugarGPerL?: number
  readonly acidGPerL?: number
  readonly targetSugarGPerL: number
}): Sweetening {
  const { sugarGPerL = 0, targetSugarGPerL, volumeMl } = liquid
  requireRange('target sugar', targetSugarGPerL, sugarGPerL, 1200, 'g/L')
  const before = composeSolution({ ...liquid, sugarGPerL })
  const sweetened = (sugarG: number) =>
    describeSolution({ ...before, sugarG: before.sugarG + sugarG })
  const target = targetSugarGPerL / 1000
  const mostG = (volumeMl * target) / (1 - target * mostSugarMlPerG)
  const excess = (addedG: number) => sweetened(addedG).sugarGPerL - targetSugarGPerL
  const sugarG = excess(0) >= 0 ? 0 : rootBetween(excess, 0, mostG + 1, 1e-9)
  const after = sweetened(sugarG)
  const { ethanolG, waterG } = before
  const solubleG =
    waterG *
    sucroseSolubility({ ethanolMassFraction: ethanolG / (ethanolG + waterG), temperatureC: 20 })
  return {
    sugarG,
    resultMl: after.volumeMl,
    resultPctVol: after.strengthPctVol,
    addedMl: after.volumeMl - volumeMl,
    undissolvedG: Math.max(before.sugarG + sugarG - solubleG, 0),
  }
}

export const sweetenExplained: Explanation = {
  id: 'sweeten',
  method:
    'Sugar takes room itself, so more is needed than the missing grams a litre, and the strength falls. The amount is the one that comes out right after it has dissolved.',
  source: 'ICUMSA (SPS-4) and OIML R 22 (1975) put together',
  limits: 'Up to 1200 g/L, all at 20 °C.',
  uncertainty:
    'From how well volume, strength and sugar are known, and 0.005 ml for each gram of sugar.',
}
