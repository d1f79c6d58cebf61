/** What the moves share: getting at a jar, taking liquid out of it, pouring matter in. */
import { addMatter, massOf, noMatter, splitMatter, type Matter } from '../../../../shared/matter.ts'
import type { Stage, Transfer } from '../../../../shared/schemas/cellar.ts'
import { liquidVolumeMl } from '../../solution/liquid-volume.ts'
import { freshJar, jarAt, jarPlace, type CellarState, type JarState } from '../cellar-state.ts'
import { killed } from '../fruit-charge.ts'
import { freeVolumeMl, wholeVolumeMl } from '../jar-liquid.ts'
import { nothingThere, notEnough, refused, shareOf, slackMl, type Refused } from '../refusal.ts'

type Found<T> = { ok: true; found: T } | Refused

/** The jar of this batch, settled to now; refused when it is empty or another batch's. */
export function occupiedJar(
  cellar: CellarState,
  jarId: string,
  batchId: string | undefined,
  atMs: number,
): Found<JarState> {
  const jar = jarAt(cellar, jarId, atMs)
  if (!jar) return nothingThere(jarPlace(jarId))
  if (batchId !== undefined && jar.batchId !== batchId) return taken(jarId, jar)
  return { ok: true, found: jar }
}

/** The jar to pour into: this batch's, or an empty one that becomes this batch's. */
export function receivingJar(
  cellar: CellarState,
  jarId: string,
  batchId: string,
  atMs: number,
  stage: Stage,
): Found<JarState> {
  const jar = jarAt(cellar, jarId, atMs)
  if (jar && jar.batchId !== batchId) return taken(jarId, jar)
  return { ok: true, found: jar ?? freshJar(batchId, atMs, stage) }
}

const taken = (jarId: string, jar: JarState) =>
  refused({ code: 'jarTaken', place: jarPlace(jarId), batchId: jar.batchId })

/** Pours matter into the free liquid; spirit kills the cells of any fruit it comes to. */
export const pourInto = (jar: JarState, matter: Matter): JarState => ({
  ...jar,
  fruit: jar.fruit && matter.ethanolG > 0 ? killed(jar.fruit) : jar.fruit,
  bodies: { ...jar.bodies, free: addMatter(jar.bodies.free, matter) },
})

/** Less than this in a jar without fruit is a wet glass, or a few crystals: rinsed out, and empty. */
const wetGlassG = 2

/** The jar after liquid was taken out: null when it stands empty, its last trace booked as waste. */
export function afterTaking(
  jarId: string,
  jar: JarState,
): { left: JarState | null; rinsed: Transfer[] } {
  const trace = wholeMatter(jar)
  const traceG = massOf(trace)
  if (jar.fruit !== null || traceG >= wetGlassG) return { left: jar, rinsed: [] }
  const rinsed = { from: jarPlace(jarId), to: 'outside:waste', matter: trace }
  return { left: null, rinsed: traceG === 0 ? [] : [rinsed] }
}

/**
 * Takes liquid out of a jar: what pours first, then what the fruit still holds, because how much
 * of it drains is an estimate and the maker's jug is not.
 */
export function takeLiquid(
  jarId: string,
  jar: JarState,
  volumeMl: number,
): Found<{ taken: Matter; left: JarState }> {
  const place = jarPlace(jarId)
  const freeMl = freeVolumeMl(jar)
  const availableMl = wholeVolumeMl(jar)
  if (availableMl < slackMl) return nothingThere(place)
  const fromFree = shareOf(volumeMl, freeMl, slackMl)
  const { free, held, bed } = jar.bodies
  if (fromFree !== undefined) {
    const { part, rest } = splitMatter(free, fromFree)
    return { ok: true, found: { taken: part, left: withBodies(jar, { free: rest, held, bed }) } }
  }
  const heldMl = availableMl - freeMl
  const fromHeld = shareOf(volumeMl - freeMl, heldMl, slackMl)
  if (fromHeld === undefined) return notEnough(place, 'ml', volumeMl, availableMl)
  const { part, rest } = splitMatter({ ...held, pulpG: 0 }, fromHeld)
  return {
    ok: true,
    found: {
      taken: addMatter(free, part),
      left: withBodies(jar, { free: noMatter, held: { ...rest, pulpG: held.pulpG }, bed }),
    },
  }
}

const withBodies = (jar: JarState, bodies: JarState['bodies']): JarState => ({ ...jar, bodies })

/** Liquid and solids in all the jar's bodies. */
export const wholeMatter = (jar: JarState): Matter =>
  addMatter(addMatter(jar.bodies.free, jar.bodies.held), jar.bodies.bed)

export const hasSpirit = (jar: JarState): boolean => wholeMatter(jar).ethanolG > 0

export const heldVolumeMl = (jar: JarState): number => liquidVolumeMl(jar.bodies.held)
