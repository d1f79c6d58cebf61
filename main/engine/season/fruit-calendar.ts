/** The fruit year as a maker reads it: 52 weeks, and how sure each fruit is to be had in each. */
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { FruitSeason, Region, SeasonCalendar, Supply } from '../../../shared/schemas/season.ts'
import { isAllYear, windowsWithin, type Asked, type Band, type Window } from './fruit-windows.ts'
import { learnedDates, type BoughtFresh, type LearnedDates } from './learned-dates.ts'
import { instant, mondayMs, msPerWeek, weeksShown, weekStartMs, weekStarts } from './weeks.ts'

export interface CalendarAsked {
  /** Any day of the first week. */
  readonly fromMs: number
  readonly region: Region
  readonly fruits: readonly Fruit[]
  readonly fresh: readonly BoughtFresh[]
  readonly pantryG: ReadonlyMap<string, number>
  readonly ownKindIds: ReadonlySet<string>
}

export function fruitCalendar(asked: CalendarAsked): SeasonCalendar {
  const startMs = mondayMs(asked.fromMs)
  const { region } = asked
  const byFruit = Map.groupBy(asked.fresh, ({ fruitId }) => fruitId)
  const fruits = asked.fruits.map((fruit): FruitSeason => {
    const learned = learnedDates({ fruit, region }, byFruit.get(fruit.id) ?? [])
    const own = supplyOf({ fruit, region }, learned, startMs)
    return {
      fruitId: fruit.id,
      isAllYear: isAllYear(fruit),
      spans: own.windows.map(spanOf),
      weeks: own.weeks,
      ...(learned && {
        learned: { shiftWeeks: learned.shiftWeeks, boughtAt: [...learned.boughtAt] },
      }),
      pantryG: asked.pantryG.get(fruit.id) ?? 0,
      isOwnKind: asked.ownKindIds.has(fruit.id),
    }
  })
  return { region, weekStarts: weekStarts(startMs), fruits }
}

export function supplyOf(
  asked: Pick<Asked, 'fruit' | 'region'>,
  learned: LearnedDates | undefined,
  startMs: number,
): { windows: Window[]; weeks: Supply[] } {
  if (isAllYear(asked.fruit))
    return { windows: [], weeks: Array.from({ length: weeksShown }, () => 'likely') }
  const windows = windowsWithin(
    { ...asked, learnedWeeks: learned?.shiftWeeks.blended ?? 0, yearsTold: learned?.years ?? 0 },
    startMs,
    weekStartMs(startMs, weeksShown),
  )
  const weeks = Array.from({ length: weeksShown }, (_, week) =>
    supplyAt(windows, weekStartMs(startMs, week) + msPerWeek / 2),
  )
  return { windows, weeks }
}

const supplyAt = (windows: readonly Window[], atMs: number): Supply =>
  windows.map((window) => supplyIn(window, atMs)).find((supply) => supply !== 'none') ?? 'none'

function supplyIn({ from, to, peak }: Window, atMs: number): Supply {
  if (peak && atMs >= peak.fromMs && atMs < peak.toMs) return 'plenty'
  if (atMs >= from.likelyMs && atMs < to.likelyMs) return 'likely'
  return atMs >= from.earlyMs && atMs < to.lateMs ? 'maybe' : 'none'
}

const spanOf = ({ from, to, peak }: Window) => ({
  from: told(from),
  to: told(to),
  ...(peak && { peakFrom: instant(peak.fromMs), peakTo: instant(peak.toMs) }),
})

const told = ({ earlyMs, likelyMs, lateMs }: Band) => ({
  early: instant(earlyMs),
  likely: instant(likelyMs),
  late: instant(lateMs),
})
