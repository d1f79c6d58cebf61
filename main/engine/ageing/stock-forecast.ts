/**
 * How much of each kind will there be, month by month, and when does it run out?
 *
 * Method: what stands there less what is drunk and given, two streams with seasons of their own
 * (taking-rates.ts). What is taken until a month's end is a gamma with the mean and variance of both
 * streams: of the takings at their rate, and of the rate. The whole cellar counts as one kind more,
 * for who finds one kind gone takes another. In: changes of stock, ml and ms. Out: ml at the ends of
 * calendar months in UTC, with bands of 90 %; never below zero; a year's taking with the band of
 * its rate. Leaves out: bottles yet to be filled, breakage, and a change of habits.
 * @example forecastStock({ kinds: [], changes: [], nowMs: 0 }).all.perYearMl.value // 0
 */
import type { Banded } from '../../../shared/schemas/steeping.ts'
import { sigmasOf90Pct } from '../steeping/beliefs.ts'
import { gammaQuantile, type Moments } from './gamma-quantile.ts'
import { endOfMonthMs, monthOf, monthsPerYear, shareOfMonth } from './months.ts'
import { factorOf } from './seasonality.ts'
import type {
  KindStockFound,
  StockChange,
  StockFound,
  StockNow,
  StockQuestion,
} from './stock-question.ts'
import { streams, takingHistory, type TakingHistory } from './taking-history.ts'
import { takingRates, type StreamRates, type TakingRate } from './taking-rates.ts'

const usualMonths = 36
/** Where nothing was ever taken, what stands there is believed to last three years; an estimate. */
const usualLastingMonths = 36
const usualShares = { drunk: 0.8, given: 0.2 } as const
/** With fewer takings, the other kinds say more of it than it does itself. */
const leastTakings = 3
const traceMl = 1

export function forecastStock({
  kinds,
  changes,
  nowMs,
  months = usualMonths,
}: StockQuestion): StockFound {
  const past = changes.filter(({ atMs }) => atMs <= nowMs).toSorted((a, b) => a.atMs - b.atMs)
  const byKind = Map.groupBy(past, ({ kindId }) => kindId)
  const changesOf = ({ kindId }: StockNow) => byKind.get(kindId) ?? []
  const all: StockNow = {
    kindId: 'all',
    bottleCount: kinds.reduce((sum, { bottleCount }) => sum + bottleCount, 0),
    volumeMl: kinds.reduce((sum, { volumeMl }) => sum + volumeMl, 0),
  }
  return {
    kinds: forecasts(kinds, changesOf, nowMs, months),
    all: forecasts([all], () => past, nowMs, months)[0] as KindStockFound,
  }
}

/** Of kinds that tell of each other. */
function forecasts(
  kinds: readonly StockNow[],
  changesOf: (kind: StockNow) => readonly StockChange[],
  nowMs: number,
  months: number,
): KindStockFound[] {
  const histories = kinds.map((kind) => takingHistory(changesOf(kind), kind.volumeMl, nowMs))
  const standing = kinds.filter(({ volumeMl }) => volumeMl > traceMl)
  const meanStockMl = standing.reduce((sum, { volumeMl }) => sum + volumeMl, 0) / standing.length
  const usualMonthMl = standing.length > 0 ? meanStockMl / usualLastingMonths : 0
  const [drunk, given] = streams.map((stream) =>
    takingRates(histories, stream, usualShares[stream] * usualMonthMl),
  ) as [StreamRates, StreamRates]
  return kinds.map((kind, index) => {
    const of = ({ season, rates }: StreamRates): Habit => ({
      season,
      ...(rates[index] as TakingRate),
    })
    const habits = [of(drunk), of(given)] as const
    return {
      ...kind,
      past: pastOf(changesOf(kind), kind.volumeMl, nowMs),
      ...futureOf(kind.volumeMl, habits, nowMs, months),
      perYearMl: perYear(habits),
      givenShare: givenShareOf(habits),
      isOwnHistory: takingsIn(histories[index] as TakingHistory) >= leastTakings,
    }
  })
}

const takingsIn = ({ sizesMl }: TakingHistory) => sizesMl.drunk.length + sizesMl.given.length

/** How one of the streams goes on. */
interface Habit extends TakingRate {
  readonly season: StreamRates['season']
}
type Habits = readonly [drunk: Habit, given: Habit]

function perYear(habits: Habits): Banded {
  const year = habits.reduce<Moments>(
    ({ mean, variance }, { meanMl, varianceMl2 }) => ({
      mean: mean + monthsPerYear * meanMl,
      variance: variance + monthsPerYear * monthsPerYear * varianceMl2,
    }),
    nothing,
  )
  return {
    value: year.mean,
    low: Math.min(year.mean, gammaQuantile(year, -sigmasOf90Pct)),
    high: Math.max(year.mean, gammaQuantile(year, sigmasOf90Pct)),
  }
}

function givenShareOf([drunk, given]: Habits): number {
  const sum = drunk.meanMl + given.meanMl
  return sum > 0 ? given.meanMl / sum : 0
}

function meanTakingMl(habits: Habits): number {
  const takenMl = habits.reduce((sum, { meanMl }) => sum + meanMl, 0)
  if (takenMl === 0) return 0
  return habits.reduce((sum, { meanMl, takingMl }) => sum + meanMl * takingMl, 0) / takenMl
}

const nothing: Moments = { mean: 0, variance: 0 }

/** At the end of each month that went by since the first bottle. */
function pastOf(
  changes: readonly StockChange[],
  volumeMl: number,
  nowMs: number,
): KindStockFound['past'] {
  const first = changes[0]
  if (!first) return []
  const found: { atMs: number; volumeMl: number }[] = []
  let levelMl = volumeMl
  let next = changes.length - 1
  for (let month = monthOf(nowMs) - 1; month >= monthOf(first.atMs); month -= 1) {
    const atMs = endOfMonthMs(month)
    for (; next >= 0 && (changes[next] as StockChange).atMs >= atMs; next -= 1)
      levelMl -= (changes[next] as StockChange).changeMl
    found.push({ atMs, volumeMl: Math.max(0, levelMl) })
  }
  return found.toReversed()
}

/** What will have been taken by an instant: the least, the middle and the most of it. */
interface TakenBy {
  readonly atMs: number
  readonly least: number
  readonly middle: number
  readonly most: number
}

function futureOf(
  volumeMl: number,
  habits: Habits,
  nowMs: number,
  months: number,
): Pick<KindStockFound, 'forecast' | 'runsOutMs'> {
  const taken = takenByMonths(habits, nowMs, months)
  const left = (takenMl: number) => Math.max(0, volumeMl - takenMl)
  const forecast = taken.map(({ atMs, least, middle, most }) => ({
    atMs,
    volumeMl: { value: left(middle), low: left(most), high: left(least) },
  }))
  if (volumeMl <= traceMl) return { forecast }
  const whenGone = (of: (by: TakenBy) => number) => reaches(taken, of, volumeMl, nowMs)
  const early = whenGone(({ most }) => most)
  if (early === null) return { forecast }
  const runsOutMs = {
    early,
    likely: whenGone(({ middle }) => middle),
    late: whenGone(({ least }) => least),
  }
  return { forecast, runsOutMs }
}

function takenByMonths(habits: Habits, nowMs: number, months: number): TakenBy[] {
  const first = monthOf(nowMs)
  /** Mean months that count until then, stream by stream. */
  const seasons = habits.map(() => 0)
  // A bottle is taken whole or not: the gamma stands for steps of that size.
  const halfTakingMl = meanTakingMl(habits) / 2
  let [least, middle, most] = [0, 0, 0]
  return Array.from({ length: months }, (_, index) => {
    const month = first + index
    const share = shareOfMonth(month, nowMs, Infinity)
    const sum = habits.reduce<Moments>(({ mean, variance }, habit, stream) => {
      const gone = (seasons[stream] as number) + share * factorOf(habit.season, month)
      seasons[stream] = gone
      return {
        mean: mean + habit.meanMl * gone,
        variance: variance + (habit.unitMl * habit.meanMl + habit.varianceMl2 * gone) * gone,
      }
    }, nothing)
    // What is gone does not come back: the quantiles' rounding must not say so.
    least = Math.max(least, gammaQuantile(sum, -sigmasOf90Pct) - halfTakingMl)
    middle = Math.max(middle, least, gammaQuantile(sum, 0))
    most = Math.max(most, middle, gammaQuantile(sum, sigmasOf90Pct) + halfTakingMl)
    return { atMs: endOfMonthMs(month), least, middle, most }
  })
}

/** When what was taken comes to all that stands there; null beyond the last month. */
function reaches(
  taken: readonly TakenBy[],
  of: (by: TakenBy) => number,
  volumeMl: number,
  nowMs: number,
): number | null {
  let [beforeMs, beforeMl] = [nowMs, 0]
  for (const by of taken) {
    const takenMl = of(by)
    if (takenMl >= volumeMl)
      return beforeMs + ((volumeMl - beforeMl) / (takenMl - beforeMl)) * (by.atMs - beforeMs)
    ;[beforeMs, beforeMl] = [by.atMs, takenMl]
  }
  return null
}
