/** A fruit's year as stretches of one supply each, and the maker's own dates laid onto it. */
import type { FruitSeason, Supply } from '../../shared/schemas/season.ts'
import type { TimeDomain } from './time-axis.ts'
import { weekMs } from './week-scale.ts'

export interface SupplyStretch {
  readonly supply: Exclude<Supply, 'none'>
  readonly fromMs: number
  readonly toMs: number
}

export function supplyStretches(weeks: readonly Supply[], startMs: number): SupplyStretch[] {
  const found: { supply: Supply; from: number; to: number }[] = []
  weeks.forEach((supply, week) => {
    const last = found.at(-1)
    if (last?.supply === supply) last.to = week + 1
    else found.push({ supply, from: week, to: week + 1 })
  })
  return found.flatMap(({ supply, from, to }) =>
    supply === 'none' ? [] : [{ supply, fromMs: weekMs(startMs, from), toMs: weekMs(startMs, to) }],
  )
}

/** Days of past years at their place in the year that is shown; those outside it are left out. */
export function ownDatesWithin(
  learned: FruitSeason['learned'],
  { fromMs, toMs }: TimeDomain,
): number[] {
  const years = new Set([new Date(fromMs).getFullYear(), new Date(toMs).getFullYear()])
  return (learned?.boughtAt ?? []).flatMap((instant) =>
    [...years]
      .map((year) => new Date(instant).setFullYear(year))
      .filter((atMs) => atMs >= fromMs && atMs < toMs)
      .slice(0, 1),
  )
}

/** Own kinds first, and among them what comes next in the year first. */
export function byNextSeason(fruits: readonly FruitSeason[], nowWeek: number): FruitSeason[] {
  const next = ({ weeks, isAllYear }: FruitSeason) => {
    if (isAllYear) return weeks.length + 1
    const at = weeks.findIndex((supply, week) => week >= nowWeek && supply !== 'none')
    return at < 0 ? weeks.length : at
  }
  return fruits.toSorted((a, b) => Number(b.isOwnKind) - Number(a.isOwnKind) || next(a) - next(b))
}
