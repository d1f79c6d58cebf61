/**
 * When is a fruit to be had around a given day, where the maker lives?
 *
 * Method: the library's months for the north-temperate zone (about 50 to 54° N), moved by the
 * fruit's own weeks around the Mediterranean, by six months in the south, and by what the maker set
 * or taught. First and last day are sure to two weeks either way, as published seasons move by two
 * to four weeks from year to year (craft reference, seasons); own years narrow that.
 * In: the fruit's months, the region, weeks of shift, years told. Out: spans in ms, with plenty.
 * Leaves out: glasshouses, imports and late varieties; there is no rule by latitude.
 */
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { Region } from '../../../shared/schemas/season.ts'
import { msPerWeek } from './weeks.ts'

export interface Band {
  readonly earlyMs: number
  readonly likelyMs: number
  readonly lateMs: number
}

export interface Window {
  readonly from: Band
  readonly to: Band
  readonly peak: { readonly fromMs: number; readonly toMs: number } | undefined
}

const yearToYearWeeks = 2

/** Sold in every month: there is no season to wait for. */
export const isAllYear = ({ season }: Pick<Fruit, 'season'>): boolean =>
  !season || (season.startMonth === 1 && season.endMonth === 12)

/** Weeks by which the fruit's season lies later than in the library, before own dates count. */
export function regionShiftWeeks(
  fruit: Pick<Fruit, 'mediterraneanShiftWeeks'>,
  { zone, ownShiftWeeks }: Region,
): number {
  const zoneWeeks = zone === 'mediterranean' ? (fruit.mediterraneanShiftWeeks ?? 0) : 0
  return zoneWeeks + ownShiftWeeks
}

export interface Asked {
  readonly fruit: Pick<Fruit, 'season' | 'mediterraneanShiftWeeks'>
  readonly region: Region
  /** Weeks that own dates add to the region's shift, and how many years of them there are. */
  readonly learnedWeeks: number
  readonly yearsTold: number
}

/** The windows that begin in the given year; none for what is sold all year. */
export function windowOfYear(
  { fruit, region, learnedWeeks, yearsTold }: Asked,
  year: number,
): Window | undefined {
  const { season } = fruit
  if (!season || isAllYear(fruit)) return undefined
  const southMonths = region.zone === 'southTemperate' ? 6 : 0
  const shiftMs = (regionShiftWeeks(fruit, region) + learnedWeeks) * msPerWeek
  const first = season.startMonth + southMonths
  const monthAt = (month: number) => Date.UTC(year, month - 1, 1) + shiftMs
  const lastMonth = first + ((season.endMonth - season.startMonth + 12) % 12)
  const spreadMs = yearToYearWeeks * Math.sqrt(2 / (yearsTold + 2)) * msPerWeek
  const band = (likelyMs: number): Band => ({
    earlyMs: likelyMs - spreadMs,
    likelyMs,
    lateMs: likelyMs + spreadMs,
  })
  const peaks = season.peakMonths.map((month) => first + ((month - season.startMonth + 12) % 12))
  return {
    from: band(monthAt(first)),
    to: band(monthAt(lastMonth + 1)),
    peak:
      peaks.length === 0
        ? undefined
        : { fromMs: monthAt(Math.min(...peaks)), toMs: monthAt(Math.max(...peaks) + 1) },
  }
}

/** The windows that touch a stretch of time, early and late days included, in order. */
export function windowsWithin(asked: Asked, fromMs: number, toMs: number): Window[] {
  const firstYear = new Date(fromMs).getUTCFullYear() - 2
  const lastYear = new Date(toMs).getUTCFullYear() + 1
  const years = Array.from({ length: lastYear - firstYear + 1 }, (_, index) => firstYear + index)
  return years.flatMap((year) => {
    const window = windowOfYear(asked, year)
    return window && window.to.lateMs > fromMs && window.from.earlyMs < toMs ? [window] : []
  })
}

/** The middle of plenty, or of the season. */
export const middleMs = ({ from, to, peak }: Window): number =>
  peak ? (peak.fromMs + peak.toMs) / 2 : (from.likelyMs + to.likelyMs) / 2
