/** Which jar stands in for each vessel of a draft when it is started, and how full that one gets. */
import type { Jar } from '../../../shared/schemas/cellar.ts'
import type { DraftSpec, DraftVessel, PlannedVessel } from '../../../shared/schemas/drafts.ts'
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import type { JarInPlace } from '../../parts/names/use-names.ts'

/** A jar's id by the draft's own name of the vessel; not in it: none yet. */
export type Choice = ReadonlyMap<string, string>

type Jars = ReadonlyMap<string, JarInPlace>

export function vesselsChosen(
  planned: readonly PlannedVessel[],
  choice: Choice,
  jars: Jars,
): DraftSpec['vessels'] {
  const of = (role: PlannedVessel['role']) =>
    planned
      .filter((vessel) => vessel.role === role)
      .map((vessel) => draftVessel(vessel, jars.get(choice.get(vessel.jarId) ?? '')?.jar))
  const [married] = of('married')
  return { steep: of('steep'), extracts: of('extract'), ...(married && { married }) }
}

const draftVessel = (planned: PlannedVessel, jar: Jar | undefined): DraftVessel =>
  jar
    ? { jarId: jar.id, name: jar.name, shape: jar.shape, capacityMl: jar.capacityMl }
    : { shape: planned.shape, capacityMl: planned.capacityMl }

/**
 * How full each vessel gets once these jars were chosen. One jar may stand in for several; vessels
 * without a jar are known by their place among those of their role.
 */
export function fillsChosen(
  planned: readonly PlannedVessel[],
  choice: Choice,
  reckoned: readonly PlannedVessel[],
): ReadonlyMap<string, number> {
  const chosen = new Set(choice.values())
  const onPaper = reckoned.filter(({ jarId }) => !chosen.has(jarId))
  const fills = new Map<string, number>()
  for (const { jarId, role, peakFillMl } of planned) {
    const own = choice.get(jarId)
    const at = own === undefined ? onPaper.findIndex((vessel) => vessel.role === role) : -1
    const [vessel] =
      own === undefined
        ? onPaper.splice(at, at < 0 ? 0 : 1)
        : reckoned.filter((one) => one.jarId === own)
    fills.set(jarId, vessel?.peakFillMl ?? peakFillMl)
  }
  return fills
}

/** The jar meant for it where that is free, else the smallest that holds it; the fullest goes first. */
export function suggestedJars(planned: readonly PlannedVessel[], jars: Jars): Choice {
  const free = [...jars.values()]
    .filter(({ jar, contents }) => !contents && !jar.isRetired)
    .map(({ jar }) => jar)
    .sort((a, b) => a.capacityMl - b.capacityMl)
  const found = new Map<string, string>()
  const take = (vesselId: string, at: number) => {
    const [jar] = at < 0 ? [] : free.splice(at, 1)
    if (jar) found.set(vesselId, jar.id)
  }
  for (const { jarId, isUsualSize } of planned)
    if (!isUsualSize)
      take(
        jarId,
        free.findIndex(({ id }) => id === jarId),
      )
  for (const { jarId, peakFillMl } of [...planned].sort((a, b) => b.peakFillMl - a.peakFillMl))
    if (!found.has(jarId))
      take(
        jarId,
        free.findIndex(({ capacityMl }) => peakFillMl <= safeFillFraction * capacityMl),
      )
  return found
}
