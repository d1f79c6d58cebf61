/** What a jar shows: its liquids described, and the room each body takes. */
import type { Matter } from '../../../shared/matter.ts'
import type { JarContents, Liquid } from '../../../shared/schemas/cellar.ts'
import { describeSolution } from '../solution/describe-solution.ts'
import { liquidVolumeMl } from '../solution/liquid-volume.ts'
import { restingLiquid } from '../steeping/bodies.ts'
import type { JarState } from './cellar-state.ts'

/** Skins, seeds and stones, mL/g: cell-wall matter is about 1.5 g/mL; engineering estimate. */
const pulpMlPerG = 0.67

/** Crystal sugar, mL/g: sucrose is 1.587 g/mL; from memory. */
const crystalMlPerG = 0.63

/** Below this there is a wet jar, not a liquid: it would be told as 0 ml. */
const leastMl = 0.5

/** A liquid's volume, strength, sugar and acid at 20 °C; undefined where there is none. */
export function describeLiquid(matter: Matter): Liquid | undefined {
  const { ethanolG, waterG, sugarG } = matter
  // No liquid here is lighter than ethanol: less than this weighs less than the least volume.
  if (ethanolG + waterG <= 0 || ethanolG + waterG + sugarG < 0.78 * leastMl) return undefined
  const { volumeMl, strengthPctVol, sugarGPerL, densityKgPerM3 } = describeSolution(matter)
  if (volumeMl < leastMl) return undefined
  return {
    volumeMl,
    strengthPctVol,
    sugarGPerL,
    acidGPerL: (1000 * matter.acidG) / volumeMl,
    densityKgPerM3,
  }
}

export const freeVolumeMl = (jar: JarState): number => liquidVolumeMl(jar.bodies.free)

/** Everything liquid in the jar, in and out of the fruit. */
export const wholeVolumeMl = (jar: JarState): number =>
  freeVolumeMl(jar) + liquidVolumeMl(jar.bodies.held)

export function describeJar(jarId: string, jar: JarState): JarContents {
  const { free, held, bed } = jar.bodies
  const liquid = describeLiquid(free)
  // Raw fruit keeps its juice: only dead tissue mixes with what stands around it.
  const isRaw = jar.fruit?.cells === 'living'
  const resting = isRaw
    ? undefined
    : describeLiquid(restingLiquid(jar.bodies, jar.keeping.temperatureC))
  const heldMl = liquidVolumeMl(held)
  const pulpMl = held.pulpG * pulpMlPerG
  const bedMl = bed.sugarG * crystalMlPerG
  const trueMl = freeVolumeMl(jar) + heldMl + pulpMl + bedMl
  return {
    jarId,
    batchId: jar.batchId,
    free,
    held,
    bed,
    ...(liquid && { liquid }),
    ...(resting && { resting }),
    heldMl,
    pulpMl,
    bedMl,
    fillMl: isRaw ? Math.max(trueMl, jar.fruit?.bulkMl ?? 0) : trueMl,
    fruits: jar.fruit ? jar.fruit.fruits.map((fruit) => ({ ...fruit })) : [],
    sugarDraws: jar.fruit?.sugarDraws ?? 0,
  }
}
