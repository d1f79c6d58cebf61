/** Vessels that makers usually own, to start from; sizes as they are sold, to the brim. */
import type { Settings } from '../../../shared/channels.ts'
import type { Jar, JarShape } from '../../../shared/schemas/cellar.ts'

export interface UsualVessel {
  readonly key: string
  readonly shape: JarShape
  readonly capacityMl: number
}

const vessel = (shape: JarShape, capacityMl: number): UsualVessel => ({
  key: `${shape}-${capacityMl}`,
  shape,
  capacityMl,
})

const quartMl = 946.352946
const gallonMl = 3785.411784

export const usualVessels: Readonly<Record<Settings['units'], readonly UsualVessel[]>> = {
  metric: [
    vessel('jar', 1000),
    vessel('jar', 2000),
    vessel('jar', 3000),
    vessel('jar', 4000),
    vessel('jar', 5000),
    vessel('demijohn', 5000),
    vessel('demijohn', 10_000),
    vessel('demijohn', 20_000),
    vessel('crock', 5000),
    vessel('flask', 2000),
  ],
  us: [
    vessel('jar', quartMl),
    vessel('jar', 2 * quartMl),
    vessel('jar', gallonMl),
    vessel('demijohn', gallonMl),
    vessel('demijohn', 3 * gallonMl),
    vessel('demijohn', 5 * gallonMl),
    vessel('crock', 2 * gallonMl),
    vessel('flask', 2 * quartMl),
  ],
}

/** How many of each vessel, by its key. */
export type VesselCounts = Readonly<Record<string, number>>

/** The jars to add, numbered through each kind, the small ones first. */
export function jarsOf(
  vessels: readonly UsualVessel[],
  counts: VesselCounts,
  name: (shape: JarShape, number: number) => string,
  newId: () => string,
): Jar[] {
  const numbers = new Map<JarShape, number>()
  return vessels.flatMap(({ key, shape, capacityMl }) =>
    Array.from({ length: counts[key] ?? 0 }, (): Jar => {
      const number = (numbers.get(shape) ?? 0) + 1
      numbers.set(shape, number)
      return { id: newId(), name: name(shape, number), shape, capacityMl, isRetired: false }
    }),
  )
}
