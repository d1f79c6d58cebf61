/**
 * How fast is each kind drunk, or given away, and how sure is that?
 *
 * Method: empirical Bayes. Takings of a kind are a Poisson stream in an effective unit, the size of a
 * taking with its scatter (and with bunching, where months scatter more than that); its rate is
 * gamma about the cellar's mean, with the spread between kinds that is seen (moments). Exposure
 * counts only while there was some, weighed by the season.
 * In: histories of kinds. Out: ml a month, with shape, for the mean month.
 * Leaves out: that young bottles are spared, and that one kind stands in for another.
 */
import { factorOf, seasonalityOf, type Seasonality } from './seasonality.ts'
import type { Stream, TakingHistory } from './taking-history.ts'

export interface TakingRate {
  /** Of the mean month. */
  readonly meanMl: number
  /** Of the rate itself, not of what a month brings. */
  readonly varianceMl2: number
  /** Variance of what is taken over its mean, at a known rate. */
  readonly unitMl: number
  /** What is usually taken at once. */
  readonly takingMl: number
}

export interface StreamRates {
  readonly season: Seasonality
  readonly rates: readonly TakingRate[]
}

/** A usual bottle, for a cellar from which nothing was taken yet. */
const usualTakingMl = 500
/** Takings of the cellar's usual size that a kind's own size is shrunk by. */
const believedSizes = 3
/** Months of the usual pace that the cellar's mean is shrunk by. */
const believedMonths = 3
/** How alike kinds are: shapes of the gamma between them, and what is believed of a single one. */
const [leastShape, usualShape, greatestShape] = [0.5, 1, 10]

export function takingRates(
  kinds: readonly TakingHistory[],
  stream: Stream,
  usualMonthMl: number,
): StreamRates {
  const sizes = kinds.flatMap(({ sizesMl }) => sizesMl[stream])
  const takingMl = sizes.length > 0 ? total(sizes) / sizes.length : usualTakingMl
  const season = seasonalityOf(
    kinds.map(({ months }) => months),
    stream,
    takingMl,
  )
  const seen = kinds.map(({ months, sizesMl }) => ({
    takenMl: total(months.map((month) => month.takenMl[stream])),
    months: total(months.map((month) => month.exposure * factorOf(season, month.month))),
    unitMl: sizeWithScatter(sizesMl[stream], sizes, takingMl),
    takingMl: sizeOf(sizesMl[stream], takingMl),
  }))
  const bunching = bunchingOf(kinds, stream, season, seen)
  const units = seen.map((kind) => ({ ...kind, unitMl: kind.unitMl * bunching }))
  const meanMl =
    (believedMonths * usualMonthMl + total(units.map((kind) => kind.takenMl))) /
    (believedMonths + total(units.map((kind) => kind.months)))
  const shape = shapeBetween(units, meanMl)
  return { season, rates: units.map((kind) => shrunk(kind, meanMl, shape)) }
}

interface Seen {
  readonly takenMl: number
  /** In which there was some, weighed by the season. */
  readonly months: number
  readonly unitMl: number
  readonly takingMl: number
}

const sizeOf = (own: readonly number[], takingMl: number): number =>
  (total(own) + believedSizes * takingMl) / (own.length + believedSizes)

/** Of a compound Poisson stream: mean square over mean of the sizes. */
function sizeWithScatter(own: readonly number[], all: readonly number[], takingMl: number): number {
  const squares = (sizes: readonly number[]) => total(sizes.map((size) => size * size))
  const cellarsMl = all.length > 0 ? squares(all) / total(all) : takingMl
  const believedMl = believedSizes * takingMl
  return (squares(own) + believedMl * cellarsMl) / (total(own) + believedMl)
}

/** How many times more the months scatter than the sizes of the takings explain; at least once. */
function bunchingOf(
  kinds: readonly TakingHistory[],
  stream: Stream,
  season: Seasonality,
  seen: readonly Seen[],
): number {
  let squares = 0
  let explained = 0
  let cells = 0
  kinds.forEach(({ months }, index) => {
    const { takenMl, months: exposure, unitMl } = seen[index] as Seen
    if (takenMl === 0) return
    for (const month of months) {
      const meanMl = (takenMl / exposure) * month.exposure * factorOf(season, month.month)
      squares += (month.takenMl[stream] - meanMl) ** 2
      explained += unitMl * meanMl
      cells += 1
    }
  })
  const free = cells - kinds.length - season.length
  if (free <= 0 || explained === 0) return 1
  return Math.max(1, ((squares / explained) * cells) / free)
}

/** By moments: what kinds differ by beyond their own scatter, and as if one more kind were usual. */
function shapeBetween(kinds: readonly Seen[], meanMl: number): number {
  const known = kinds.filter(({ months }) => months > 0)
  const all = total(known.map(({ months }) => months))
  if (known.length < 2 || meanMl <= 0) return usualShape
  const apart = total(known.map(({ takenMl, months }) => months * (takenMl / months - meanMl) ** 2))
  const scatter = total(known.map(({ unitMl, months }) => unitMl * meanMl * (1 - months / all)))
  const weight = all - total(known.map(({ months }) => months * months)) / all
  const believed = all / known.length
  const between =
    (Math.max(0, apart - scatter) + (believed * meanMl * meanMl) / usualShape) / (weight + believed)
  return Math.min(greatestShape, Math.max(leastShape, (meanMl * meanMl) / between))
}

function shrunk(
  { takenMl, months, unitMl, takingMl }: Seen,
  meanMl: number,
  shape: number,
): TakingRate {
  const takings = shape + takenMl / unitMl
  const exposure = (shape * unitMl) / Math.max(meanMl, Number.MIN_VALUE) + months
  return {
    meanMl: (unitMl * takings) / exposure,
    varianceMl2: (unitMl * unitMl * takings) / (exposure * exposure),
    unitMl,
    takingMl,
  }
}

const total = (numbers: readonly number[]): number => numbers.reduce((sum, next) => sum + next, 0)
