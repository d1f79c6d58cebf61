/**
 * What do the days on which a cellar bought its fruit fresh teach of its season?
 *
 * Method: each charge of fruit bought at most two weeks before, and not frozen, tells a day; the
 * days of one year are one word. It is compared with the middle of plenty that the region expects,
 * and the mean of n years is shrunk to it as if that were two years more, n mean / (n + 2), as
 * yields are. Days further from the season than five weeks were bought elsewhere and tell nothing.
 * In: the steps of the folded ledger. Out: weeks later than expected, and the days behind them.
 * Leaves out: fruit sold all year, and how a purchase lies within its own season.
 */
import type { Learned } from '../../../shared/schemas/fruits.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { Step } from '../ledger/fold.ts'
import { isAllYear, middleMs, windowsWithin, type Asked } from './fruit-windows.ts'
import { instant, msPerWeek } from './weeks.ts'

export interface BoughtFresh {
  readonly fruitId: string
  readonly batchId: string
  readonly atMs: number
}

const freshForMs = 14 * msPerDay
const strayMs = 5 * msPerWeek
const libraryCountsAs = 2

export function freshPurchases(steps: readonly Step[]): BoughtFresh[] {
  const bought = new Map<string, { fruitId: string; atMs: number }>()
  const fresh: BoughtFresh[] = []
  for (const { recorded, atMs } of steps) {
    const { move } = recorded
    if (move.kind === 'buy' && move.goods.kind === 'fruit')
      bought.set(move.lotId, { fruitId: move.goods.fruitId, atMs })
    if (move.kind !== 'charge' || move.cut === 'frozen') continue
    const lot = bought.get(move.lotId)
    if (lot && atMs - lot.atMs <= freshForMs)
      fresh.push({ fruitId: lot.fruitId, batchId: move.batchId, atMs: lot.atMs })
  }
  return fresh
}

export interface LearnedDates {
  readonly shiftWeeks: Learned
  readonly boughtAt: readonly string[]
  readonly years: number
}

/** Undefined while no day tells anything. */
export function learnedDates(
  asked: Pick<Asked, 'fruit' | 'region'>,
  days: readonly BoughtFresh[],
): LearnedDates | undefined {
  if (isAllYear(asked.fruit)) return undefined
  const told = days.flatMap((day) => {
    const shiftWeeks = shiftOf(asked, day.atMs)
    return shiftWeeks === undefined ? [] : [{ ...day, shiftWeeks }]
  })
  if (told.length === 0) return undefined
  const byYear = Map.groupBy(told, ({ atMs }) => new Date(atMs).getUTCFullYear())
  const means = [...byYear.values()].map((year) => mean(year.map(({ shiftWeeks }) => shiftWeeks)))
  const own = mean(means)
  const weight = means.length / (means.length + libraryCountsAs)
  return {
    shiftWeeks: {
      own,
      library: 0,
      blended: weight * own,
      batchIds: [...new Set(told.map(({ batchId }) => batchId))],
    },
    boughtAt: [...new Set(told.map(({ atMs }) => instant(atMs)))].sort(),
    years: means.length,
  }
}

/** Weeks later than the nearest middle of the season; undefined for a day that belongs to none. */
function shiftOf(asked: Pick<Asked, 'fruit' | 'region'>, atMs: number): number | undefined {
  const windows = windowsWithin(
    { ...asked, learnedWeeks: 0, yearsTold: 0 },
    atMs - strayMs,
    atMs + strayMs,
  )
  const near = windows
    .filter(({ from, to }) => atMs > from.likelyMs - strayMs && atMs < to.likelyMs + strayMs)
    .map((window) => atMs - middleMs(window))
    .sort((a, b) => Math.abs(a) - Math.abs(b))[0]
  return near === undefined ? undefined : near / msPerWeek
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length
