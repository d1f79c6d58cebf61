/** Liqueurs composed on paper, and what instruments would read in them, with seeded noise. */
import { rootBetween } from '../../../main/engine/root.ts'
import { composeLitre } from '../../../main/engine/solution/compose-solution.ts'
import { densityOfSucrose } from '../../../main/engine/solution/density-of-sucrose.ts'
import { describeSolution } from '../../../main/engine/solution/describe-solution.ts'

export interface Liqueur {
  readonly strengthPctVol: number
  readonly sugarGPerL: number
}

/** 15 to 45 % vol by 20 to 400 g/L. */
export const liqueurGrid: readonly Liqueur[] = [15, 20, 25, 30, 35, 40, 45].flatMap(
  (strengthPctVol) =>
    [20, 60, 100, 150, 200, 250, 300, 350, 400].map((sugarGPerL) => ({
      strengthPctVol,
      sugarGPerL,
    })),
)

/** `roomOff` is by how many mL/g the sugar takes more room than the equations say. */
export interface Circumstances {
  readonly temperatureC?: number
  readonly roomOff?: number
}

export function readTwoInstruments(liqueur: Liqueur, circumstances: Circumstances = {}) {
  const { temperatureC = 20, roomOff = 0 } = circumstances
  const solution = composeLitre(liqueur)
  const { densityKgPerM3, apparentBrix, volumeMl } = describeSolution({ ...solution, temperatureC })
  const roomMl = liqueur.sugarGPerL * roomOff
  return {
    densityKgPerM3: (densityKgPerM3 * volumeMl) / (volumeMl + roomMl),
    brixReading: apparentBrix,
    temperatureC,
  }
}

/** The residue is made up to the volume that the liqueur had at that temperature. */
export function readBoilOff(liqueur: Liqueur, circumstances: Circumstances = {}) {
  const { temperatureC = 20 } = circumstances
  const { densityKgPerM3 } = readTwoInstruments(liqueur, circumstances)
  const { volumeMl } = describeSolution({ ...composeLitre(liqueur), temperatureC })
  const sugarGPerL = (1000 * liqueur.sugarGPerL) / volumeMl
  const density = (massFraction: number) => densityOfSucrose({ massFraction, temperatureC })
  const fraction = rootBetween((share) => share * density(share) - sugarGPerL, 0, 0.8)
  return {
    densityBeforeKgPerM3: densityKgPerM3,
    densityAfterKgPerM3: density(fraction),
    temperatureC,
  }
}

/** Mulberry32, by its seed: the same cases in every run. */
export function noiseOf(seed: number) {
  let state = seed
  const even = () => {
    state = (state + 0x6d2b79f5) | 0
    let bits = Math.imul(state ^ (state >>> 15), state | 1)
    bits ^= bits + Math.imul(bits ^ (bits >>> 7), bits | 61)
    return ((bits ^ (bits >>> 14)) >>> 0) / 4294967296
  }
  const normal = () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even())
  const liqueur = (): Liqueur => ({
    strengthPctVol: 15 + 30 * even(),
    sugarGPerL: 20 + 380 * even(),
  })
  return { even, normal, liqueur }
}
