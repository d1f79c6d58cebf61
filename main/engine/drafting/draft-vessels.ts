/**
 * Which vessels a draft stands in: those its maker chose, and vessels of a usual size elsewhere.
 * A usual vessel is first taken as large as need be; once the draft has been run, `sized` gives it
 * the smallest usual size that holds what came into it.
 */
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import type { DraftSpec, DraftVessel, PlannedVessel } from '../../../shared/schemas/drafts.ts'

export interface DraftJar {
  readonly jarId: string
  readonly role: PlannedVessel['role']
  /** Absent while nobody chose one. */
  readonly chosen: DraftVessel | undefined
}

export interface DraftJars {
  readonly steep: readonly DraftJar[]
  /** Share of the fruit that goes into each of `steep`; they add up to 1. */
  readonly shares: readonly number[]
  readonly extract: (index: number) => DraftJar
  readonly married: DraftJar
}

/** To the brim, mL; what shops sell. */
const usualSizesMl = [
  500, 1000, 1500, 2000, 3000, 4000, 5000, 7500, 10_000, 15_000, 20_000, 25_000, 34_000, 54_000,
] as const

export const largestUsualMl = usualSizesMl[usualSizesMl.length - 1] as number

const usualSizeFor = (fillMl: number): number =>
  usualSizesMl.find((sizeMl) => fillMl <= safeFillFraction * sizeMl) ?? largestUsualMl

/** Wide-mouthed up to five litres; beyond, a demijohn. */
const widestJarMl = 5000

const jarOf = (
  role: DraftJar['role'],
  name: string,
  chosen: DraftVessel | undefined,
): DraftJar => ({ jarId: chosen?.jarId ?? name, role, chosen })

/** The jars of a draft; `steepCount` is how many the fruit needs where none was chosen. */
export function jarsOf({ vessels }: DraftSpec, steepCount: number): DraftJars {
  const chosenSteep: (DraftVessel | undefined)[] =
    vessels.steep.length > 0 ? vessels.steep : Array.from({ length: steepCount }, () => undefined)
  const wholeMl = chosenSteep.reduce((sum, vessel) => sum + (vessel?.capacityMl ?? 1), 0)
  const lastExtract = vessels.extracts.length - 1
  return {
    steep: chosenSteep.map((vessel, index) => jarOf('steep', `draft-steep-${index + 1}`, vessel)),
    shares: chosenSteep.map((vessel) => (vessel?.capacityMl ?? 1) / wholeMl),
    extract: (index) => {
      const at = lastExtract < 0 ? index : Math.min(index, lastExtract)
      return jarOf('extract', `draft-extract-${at + 1}`, vessels.extracts[at])
    },
    married: jarOf('married', 'draft-married', vessels.married),
  }
}

/** The vessel as the draft shows it, once it is known how full it gets. */
export function sized({ jarId, role, chosen }: DraftJar, peakFillMl: number): PlannedVessel {
  if (chosen) return { ...chosen, jarId, role, isUsualSize: false, peakFillMl }
  const capacityMl = usualSizeFor(peakFillMl)
  const shape = capacityMl > widestJarMl ? 'demijohn' : 'jar'
  return { jarId, role, shape, capacityMl, isUsualSize: true, peakFillMl }
}
