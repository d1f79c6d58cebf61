import { describe, expect, it } from 'vitest'
import { fruitOf } from '../../../main/engine/fruit/fruit-library.ts'
import {
  isAllYear,
  middleMs,
  regionShiftWeeks,
  windowOfYear,
  windowsWithin,
} from '../../../main/engine/season/fruit-windows.ts'
import { freshPurchases, learnedDates } from '../../../main/engine/season/learned-dates.ts'
import type { Region } from '../../../shared/schemas/season.ts'
import type { Cut } from '../../../shared/schemas/moves.ts'
import { buyFruit, buySpirit, dayAt, folded, type Deed } from '../ledger/book-of-moves.ts'

const day = 86_400_000
const week = 7 * day
const north: Region = { zone: 'northTemperate', ownShiftWeeks: 0 }
const cherry = { fruit: fruitOf('sour_cherry'), region: north }
/** Plenty is July: its middle is noon of the 16th. */
const middleOf = (year: number) => Date.UTC(year, 6, 16, 12)
const bought = (atMs: number, batchId = 'b') => ({ fruitId: 'sour_cherry', batchId, atMs })

const charge = (lotId: string, batchId: string, cut: Cut = 'pricked'): Deed => ({
  kind: 'charge',
  batchId,
  jarId: `jar-${batchId}`,
  lotId,
  massG: 100,
  refuseG: 0,
  cut,
})

describe('freshPurchases', () => {
  it('tells the day that fruit was bought on when it is charged within two weeks, and not frozen', () => {
    const { steps, refused } = folded([
      [0, buySpirit('spirit', 1000, 70)],
      [1, buyFruit('plums', 'plum', 1000)],
      [2, buyFruit('cherries', 'sour_cherry', 1000)],
      [3, charge('plums', 'one')],
      [4, charge('cherries', 'frozen', 'frozen')],
      // Fourteen days after the day they were bought on, and a day too late.
      [15, charge('plums', 'two')],
      [16, charge('plums', 'three')],
    ])
    expect(refused).toEqual([])
    const atMs = Date.parse(dayAt(1))
    expect(freshPurchases(steps)).toEqual([
      { fruitId: 'plum', batchId: 'one', atMs },
      { fruitId: 'plum', batchId: 'two', atMs },
    ])
    expect(freshPurchases([])).toEqual([])
  })
})

describe('learnedDates', () => {
  it('shrinks the mean of the years as if the library were two more', () => {
    const told = learnedDates(cherry, [
      bought(middleOf(2024) + 3 * week, 'x'),
      bought(middleOf(2025) + 1 * week, 'y'),
      bought(middleOf(2025) + 2 * week, 'z'),
      bought(middleOf(2025) + 2 * week, 'z'),
    ])!
    // 2024 tells 3 weeks, 2025 (1 + 2 + 2)/3; their mean, half of it believed.
    const own = (3 + 5 / 3) / 2
    expect(told.shiftWeeks.own).toBeCloseTo(own, 9)
    expect(told.shiftWeeks.blended).toBeCloseTo(own / 2, 9)
    expect(told.shiftWeeks.library).toBe(0)
    expect(told.shiftWeeks.batchIds).toEqual(['x', 'y', 'z'])
    expect(told.years).toBe(2)
    expect(told.boughtAt).toEqual([
      '2024-08-06T12:00:00.000Z',
      '2025-07-23T12:00:00.000Z',
      '2025-07-30T12:00:00.000Z',
    ])
  })

  it('puts the days in order, and tells earlier ones as weeks below zero', () => {
    const told = learnedDates(cherry, [
      bought(middleOf(2026) - week),
      bought(middleOf(2025) - 2 * week),
    ])!
    expect(told.shiftWeeks.own).toBeCloseTo(-1.5, 9)
    expect(told.boughtAt).toEqual(['2025-07-02T12:00:00.000Z', '2026-07-09T12:00:00.000Z'])
  })

  it('lets a day tell until five weeks before the season and after it, and no further', () => {
    const isTold = (atMs: number) => learnedDates(cherry, [bought(atMs)]) !== undefined
    const [from, to] = [Date.UTC(2026, 5, 1), Date.UTC(2026, 8, 1)]
    expect(isTold(from - 5 * week + 1)).toBe(true)
    expect(isTold(from - 5 * week)).toBe(false)
    expect(isTold(to + 5 * week - 1)).toBe(true)
    expect(isTold(to + 5 * week)).toBe(false)
  })

  it('takes the nearer of two seasons that a day could belong to', () => {
    // Lemon peel from November to April, plenty until February: its middle is mid-January.
    const lemon = { fruit: fruitOf('lemon_peel'), region: north }
    const middle = (Date.UTC(2026, 11, 1) + Date.UTC(2027, 2, 1)) / 2
    const told = learnedDates(lemon, [
      { fruitId: 'lemon_peel', batchId: 'b', atMs: middle + week },
    ])!
    expect(told.shiftWeeks.own).toBeCloseTo(1, 9)
    // A season of eleven months: in January the old one is 5 months over its middle, the next 6 off.
    const long = {
      region: north,
      fruit: { season: { startMonth: 2, endMonth: 12, peakMonths: [7] } },
    }
    const january = learnedDates(long, [bought(Date.UTC(2026, 0, 20))])!
    const nearest = Date.UTC(2026, 0, 20) - Date.UTC(2026, 6, 16, 12)
    expect(january.shiftWeeks.own).toBeCloseTo(nearest / week, 9)
  })

  it('counts from where the region expects it, and learns nothing of what is sold all year', () => {
    const late = { fruit: cherry.fruit, region: { ...north, ownShiftWeeks: 2 } }
    expect(learnedDates(late, [bought(middleOf(2026))])!.shiftWeeks.own).toBeCloseTo(-2, 9)
    const ginger = { fruit: fruitOf('ginger'), region: north }
    expect(learnedDates(ginger, [bought(middleOf(2026))])).toBeUndefined()
    expect(learnedDates(cherry, [])).toBeUndefined()
  })
})

describe('fruit windows', () => {
  const season = (startMonth: number, endMonth: number, peakMonths: number[] = []) => ({
    season: { startMonth, endMonth, peakMonths },
  })
  const asked = (fruit: ReturnType<typeof season>) => ({
    fruit,
    region: north,
    learnedWeeks: 0,
    yearsTold: 0,
  })

  it('is all year without a season or with all twelve months, and not with eleven', () => {
    expect(isAllYear({ season: undefined })).toBe(true)
    expect(isAllYear(season(1, 12))).toBe(true)
    expect(isAllYear(season(1, 11))).toBe(false)
    expect(isAllYear(season(2, 12))).toBe(false)
    expect(windowOfYear(asked(season(1, 12)), 2026)).toBeUndefined()
    expect(windowsWithin(asked(season(1, 12)), 0, week)).toEqual([])
  })

  it('shifts by the fruit’s own weeks around the Mediterranean alone, and by the maker’s everywhere', () => {
    const fruit = { mediterraneanShiftWeeks: -3 }
    const by = (zone: Region['zone'], own: number) =>
      regionShiftWeeks(fruit, { zone, ownShiftWeeks: own })
    expect([by('mediterranean', 1), by('northTemperate', 1), by('southTemperate', -2)]).toEqual([
      -2, 1, -2,
    ])
    expect(regionShiftWeeks({}, { zone: 'mediterranean', ownShiftWeeks: 1 })).toBe(1)
  })

  it('tells first and last day two weeks either way, and its plenty', () => {
    const spread = 2 * week
    const band = (likelyMs: number) => ({
      earlyMs: likelyMs - spread,
      likelyMs,
      lateMs: likelyMs + spread,
    })
    expect(windowOfYear(asked(season(9, 2, [11, 1, 12])), 2026)).toEqual({
      from: band(Date.UTC(2026, 8, 1)),
      to: band(Date.UTC(2027, 2, 1)),
      peak: { fromMs: Date.UTC(2026, 10, 1), toMs: Date.UTC(2027, 1, 1) },
    })
    expect(windowOfYear(asked(season(9, 9)), 2026)).toEqual({
      from: band(Date.UTC(2026, 8, 1)),
      to: band(Date.UTC(2026, 9, 1)),
      peak: undefined,
    })
  })

  it('lies half a year later in the south, and by the weeks learned', () => {
    const south = {
      ...asked(season(9, 11, [10])),
      region: { ...north, zone: 'southTemperate' as const },
    }
    const window = windowOfYear({ ...south, learnedWeeks: 1, yearsTold: 6 }, 2026)!
    expect(window.from.likelyMs).toBe(Date.UTC(2027, 2, 1) + week)
    expect(window.to.likelyMs).toBe(Date.UTC(2027, 5, 1) + week)
    expect(window.peak).toEqual({
      fromMs: Date.UTC(2027, 3, 1) + week,
      toMs: Date.UTC(2027, 4, 1) + week,
    })
    // Six own years halve the two weeks: the square root of 2 in 8.
    expect(window.from.earlyMs).toBe(Date.UTC(2027, 2, 1))
    expect(window.to.lateMs).toBe(Date.UTC(2027, 5, 1) + 2 * week)
  })

  it('finds the windows that touch a stretch, their early and late days included', () => {
    const june = asked(season(6, 6))
    const years = (fromMs: number, toMs: number) =>
      windowsWithin(june, fromMs, toMs).map(({ from }) => new Date(from.likelyMs).getUTCFullYear())
    const [early, late] = [Date.UTC(2026, 5, 1) - 2 * week, Date.UTC(2026, 6, 1) + 2 * week]
    expect(years(late - 1, late)).toEqual([2026])
    expect(years(late, late + week)).toEqual([])
    expect(years(early - week, early)).toEqual([])
    expect(years(early - week, early + 1)).toEqual([2026])
    expect(years(Date.UTC(2025, 5, 10), Date.UTC(2027, 5, 10))).toEqual([2025, 2026, 2027])
  })

  it('finds a window of the south that began two calendar years before', () => {
    // October to September in the north is April to March in the south: begun in "2025", it ends in 2027.
    const long = {
      ...asked(season(10, 9)),
      region: { zone: 'southTemperate' as const, ownShiftWeeks: 0 },
    }
    const [first] = windowsWithin(long, Date.UTC(2027, 2, 10), Date.UTC(2027, 2, 11))
    expect(first!.from.likelyMs).toBe(Date.UTC(2026, 3, 1))
    expect(first!.to.likelyMs).toBe(Date.UTC(2027, 3, 1))
  })

  it('has its middle in that of plenty, or of the season', () => {
    const peaked = windowOfYear(asked(season(6, 8, [7])), 2026)!
    expect(middleMs(peaked)).toBe(middleOf(2026))
    const even = windowOfYear(asked(season(6, 6)), 2026)!
    expect(middleMs(even)).toBe(Date.UTC(2026, 5, 16))
  })
})
