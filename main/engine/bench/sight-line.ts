/**
 * Which liquids show an instrument what it showed? A line over strength, for a picture: the sugar
 * that goes with each strength, and where the instrument would show one uncertainty less or more.
 */
import type { SightLine } from '../../../shared/schemas/bench.ts'
import { densityProfile } from '../alcoholometry/density-of-spirit.ts'
import { DomainError } from '../domain-error.ts'
import { sugarAtStrength } from '../readings/solve-one.ts'
import { describeSolution } from '../solution/describe-solution.ts'
import { solutionVolumeMl, type Solution } from '../solution/liquid-volume.ts'
import { brixShownAt } from '../solution/refraction.ts'

export interface Sight {
  readonly see: (liquid: Solution) => number
  readonly seen: number
  readonly uncertainty: number
}

export const densitySight =
  (temperatureC: number) =>
  (liquid: Solution): number =>
    describeSolution({ ...liquid, temperatureC }).densityKgPerM3

export function brixSight(temperatureC: number): (liquid: Solution) => number {
  const profile = densityProfile(temperatureC)
  return (liquid) =>
    brixShownAt(liquid, solutionVolumeMl(liquid, temperatureC, profile), temperatureC)
}

/** Strengths at which no sugar fits are left out; a band's edge beyond what can be is drawn at 0. */
export function sightLine(sight: Sight, strengths: readonly number[]): SightLine {
  return strengths.flatMap((strengthPctVol) => {
    const sugar = (off: number) => sugarWhere(sight, strengthPctVol, off)
    const sugarGPerL = sugar(0)
    if (sugarGPerL === undefined) return []
    return [
      { strengthPctVol, sugarGPerL, lowGPerL: sugar(-1) ?? 0, highGPerL: sugar(1) ?? sugarGPerL },
    ]
  })
}

function sugarWhere({ see, seen, uncertainty }: Sight, strengthPctVol: number, off: number) {
  try {
    return sugarAtStrength({ strengthPctVol, see, seen: seen + off * uncertainty, margin: 0 })
  } catch (error) {
    if (error instanceof DomainError) return undefined
    throw error
  }
}

/** Evenly spaced strengths about a middle, within what can be. */
export function strengthsAround(middlePctVol: number, halfPctVol: number, count: number): number[] {
  const from = Math.max(middlePctVol - halfPctVol, 0)
  const to = Math.min(from + 2 * halfPctVol, 96)
  return Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1))
}
