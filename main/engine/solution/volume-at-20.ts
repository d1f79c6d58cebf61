/**
 * What is a volume, measured warm or cold, at the 20 °C by which liquids are sold and bottled?
 *
 * The same grams at both temperatures, by composeSolution and liquidVolumeMl: about 0.7 % for 10 °C
 * at 40 % vol. In: mL, −20 to 40 °C, % vol and g/L at 20 °C (water if left out). Out: mL at 20 °C.
 * RangeError outside. Leaves out: the jug's own expansion (below 0.03 % for glass).
 * @example volumeAt20({ volumeMl: 1000, temperatureC: 10, strengthPctVol: 40 }) // 1006.8
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { composeSolution, type SolutionStrength } from './compose-solution.ts'
import { liquidVolumeMl } from './liquid-volume.ts'

export function volumeAt20(
  measured: {
    readonly volumeMl: number
    readonly temperatureC: number
  } & Partial<SolutionStrength>,
): number {
  return liquidVolumeMl(composeSolution({ strengthPctVol: 0, sugarGPerL: 0, ...measured }))
}

export const volumeAt20Explained: Explanation = {
  id: 'volumeAt20',
  method:
    'The same grams take more room when warm. They are worked out from the volume as measured, and their volume at 20 °C follows.',
  source: 'OIML R 22 (1975) and ICUMSA (SPS-4); at 60 °F as 27 CFR 30.67',
  limits: '−20 to 40 °C; the expansion of the jug itself is left out (below 0.03 %).',
  uncertainty: 'From the jug’s and the thermometer’s, and 0.02 % of the equations’ own.',
}
