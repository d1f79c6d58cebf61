/**
 * What is a volume, measured warm or cold, at the 20 °C by which liquids are sold and bottled?
 *
 * The same grams at both temperatures, by composeSolution and liquidVolumeMl: about 0.7 % for 10 °C
 * at 40 % vol. In: mL, −20 to 40 °C, % vol and g/L at 20 °C (water if left out). Out: mL at 20 °C.
 * RangeError outside. Leaves out: the jug's own expansion (below 0.03 % for glass).
 * @example volumeAt20({ volumeMl: 1000, temperatureC: 10, strengthPctVol: 40 }) // 1006.8
 */
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
