import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gammaQuantile } from '../../../main/engine/ageing/gamma-quantile.ts'
import { forecastStock, type StockChange, type StockQuestion } from '../../../main/engine/index.ts'
import {
  bottleMl,
  dayMs,
  drinkerOf,
  kindIdOf,
  randomOf,
  takingsOf,
  type Drinker,
} from './synthetic-drinkers.ts'

const startMs = Date.UTC(2020, 0, 1)
const dayAt = (day: number) => startMs + day * dayMs

/** So many bottles of each kind laid down at once, and what was taken of them since. */
function cellarOf(takings: readonly StockChange[], kinds: number, bottles: number, nowDay: number) {
  const laidDown = Array.from({ length: kinds }, (_, kind): StockChange => ({
    atMs: startMs,
    kindId: kindIdOf(kind),
    changeMl: bottles * bottleMl,
    way: 'other',
  }))
  const changes = [...laidDown, ...takings]
  return {
    kinds: laidDown.map(({ kindId }) => {
      const volumeMl = changes
        .filter((change) => change.kindId === kindId)
        .reduce((sum, { changeMl }) => sum + changeMl, 0)
      return { kindId, bottleCount: Math.round(volumeMl / bottleMl), volumeMl }
    }),
    changes,
    nowMs: dayAt(nowDay),
    months: 24,
  } satisfies StockQuestion
}

/** How often the truth lay in the band, over drinkers with histories of all lengths. */
function coverage(months: number, drinkers: number, kindCount: number) {
  let [inside, cases] = [0, 0]
  for (let seed = 1; seed <= drinkers; seed += 1) {
    const random = randomOf(seed * 7919)
    const drinker = drinkerOf(random, kindCount)
    // History ends on the first of a month, so that the truth is known at the ends of months.
    const historyMonths = 3 + Math.floor(random() * 45)
    const nowDay = (Date.UTC(2020, historyMonths, 1) - startMs) / dayMs
    const endDay = (Date.UTC(2020, historyMonths + months, 1) - startMs) / dayMs
    const question = cellarOf(takingsOf(drinker, random, 0, nowDay), kindCount, 400, nowDay)
    const future = takingsOf(drinker, random, nowDay, endDay)
    const found = forecastStock(question)
    for (const kind of [...found.kinds, found.all]) {
      const takenMl = future
        .filter(({ kindId }) => kind.kindId === 'all' || kindId === kind.kindId)
        .reduce((sum, { changeMl }) => sum - changeMl, 0)
      const band = kind.forecast[months - 1]?.volumeMl
      if (!band) throw new Error('no forecast')
      const left = kind.volumeMl - takenMl
      cases += 1
      if (left >= band.low && left <= band.high) inside += 1
    }
  }
  return { share: inside / cases, cases }
}

describe('forecastStock', () => {
  it.each([3, 6, 12, 24])('covers the true stock nine times in ten after %i months', (months) => {
    const { share, cases } = coverage(months, 80, 6)
    expect(cases).toBeGreaterThanOrEqual(300)
    expect(share).toBeGreaterThan(0.85)
    expect(share).toBeLessThan(0.95)
  })

  it('covers it oftener after one month, when a bottle or none makes the band', () => {
    const { share } = coverage(1, 80, 6)
    expect(share).toBeGreaterThan(0.9)
    expect(share).toBeLessThan(0.99)
  })

  it('finds the pace of a long history, its gifts, and when it runs out', () => {
    const drinker = steady(2, 0.5)
    const takings = takingsOf(drinker, randomOf(5), 0, monthDay(48))
    const { kinds } = forecastStock(cellarOf(takings, 1, 160, monthDay(48)))
    const [kind] = kinds
    // 2.5 bottles of half a litre a month.
    expect(kind?.perYearMl.value).toBeGreaterThan(0.85 * 2.5 * 12 * bottleMl)
    expect(kind?.perYearMl.value).toBeLessThan(1.15 * 2.5 * 12 * bottleMl)
    expect(kind?.perYearMl.low).toBeLessThan(kind?.perYearMl.value ?? 0)
    expect(kind?.givenShare).toBeCloseTo(0.2, 1)
    expect(kind?.isOwnHistory).toBe(true)
    const { early, likely, late } = kind?.runsOutMs ?? { early: 0, likely: null, late: null }
    const expectedMs = dayAt(monthDay(48)) + ((kind?.volumeMl ?? 0) / bottleMl / 2.5) * monthMs
    expect(early).toBeLessThan(likely ?? 0)
    expect(Math.abs((likely ?? 0) - expectedMs)).toBeLessThan(4 * monthMs)
    expect(late === null || late > (likely ?? 0)).toBe(true)
  })

  it('learns that gifts go at the end of the year, and drinking does not', () => {
    const drinker = { ...steady(1, 1), givenSeason: onlyDecember }
    const takings = takingsOf(drinker, randomOf(11), 0, monthDay(60))
    const { all } = forecastStock(cellarOf(takings, 1, 400, monthDay(60)))
    const taken = all.forecast.map(
      ({ volumeMl }, i) => (all.forecast[i - 1]?.volumeMl.value ?? all.volumeMl) - volumeMl.value,
    )
    // The 60th month is January 2025: December is the twelfth of the forecast.
    const june = taken[5] ?? 0
    expect(taken[11]).toBeGreaterThan(4 * june)
    expect(june / bottleMl).toBeGreaterThan(0.5)
  })

  it('lets the other kinds stand in where a kind has no history, and says so', () => {
    const drinker = steady(1.5, 0)
    const takings = takingsOf(drinker, randomOf(3), 0, monthDay(36))
    const question = cellarOf(takings, 1, 100, monthDay(36))
    const fresh = { kindId: 'fresh', bottleCount: 20, volumeMl: 20 * bottleMl }
    const { kinds } = forecastStock({
      ...question,
      kinds: [...question.kinds, fresh],
      changes: [
        ...question.changes,
        { atMs: dayAt(monthDay(36) - 1), kindId: 'fresh', changeMl: 20 * bottleMl, way: 'other' },
      ],
    })
    const [known, own] = kinds
    expect([known?.isOwnHistory, own?.isOwnHistory]).toEqual([true, false])
    expect((own?.perYearMl.value ?? 0) / (known?.perYearMl.value ?? 1)).toBeCloseTo(1, 0)
    // Much wider than what is known.
    const width = (kind: typeof own) => (kind?.perYearMl.high ?? 0) / (kind?.perYearMl.low ?? 1)
    expect(width(own)).toBeGreaterThan(2 * width(known))
  })

  it('believes in a cellar without any history that its stock lasts three years, very roughly', () => {
    const { all, kinds } = forecastStock(cellarOf([], 2, 36, 1))
    expect(all.isOwnHistory).toBe(false)
    expect(all.perYearMl.value / bottleMl).toBeCloseTo(24, -1)
    expect(all.perYearMl.high / all.perYearMl.low).toBeGreaterThan(5)
    expect(kinds.map(({ isOwnHistory }) => isOwnHistory)).toEqual([false, false])
  })

  it('counts only the months in which there was something to take', () => {
    // Two bottles a month for half a year, then none for three years because none was there.
    const taken = Array.from({ length: 12 }, (_, i): StockChange => ({
      atMs: dayAt(15 * i + 5),
      kindId: kindIdOf(0),
      changeMl: -bottleMl,
      way: 'drunk',
    }))
    const gone = cellarOf(taken, 1, 12, monthDay(42))
    expect(gone.kinds[0]?.volumeMl).toBe(0)
    const { kinds } = forecastStock(gone)
    expect((kinds[0]?.perYearMl.value ?? 0) / bottleMl).toBeGreaterThan(15)
    expect(kinds[0]?.runsOutMs).toBeUndefined()
  })

  it('is less sure where bottles are drunk by the dozen', () => {
    const every = (days: number, bottles: number) =>
      Array.from({ length: Math.floor(1000 / days) }, (_, i): StockChange => ({
        atMs: dayAt(days * i + 3),
        kindId: kindIdOf(0),
        changeMl: -bottles * bottleMl,
        way: 'drunk',
      }))
    const width = (takings: StockChange[]) => {
      const band = forecastStock(cellarOf(takings, 1, 400, 1000)).all.forecast[11]?.volumeMl
      return (band?.high ?? 0) - (band?.low ?? 0)
    }
    expect(width(every(120, 12))).toBeGreaterThan(2 * width(every(10, 1)))
    // Twelve glasses of one evening are one bottle drunk, not twelve independent ones.
    const glasses = every(120, 1).flatMap((taking) => Array.from({ length: 12 }, () => taking))
    expect(width(glasses)).toBeGreaterThan(1.5 * width(every(10, 1)))
  })

  it('tells what stood there at the end of each month gone', () => {
    const takings: StockChange[] = [
      { atMs: Date.UTC(2020, 1, 10), kindId: kindIdOf(0), changeMl: -bottleMl, way: 'given' },
      { atMs: Date.UTC(2020, 3, 1), kindId: kindIdOf(0), changeMl: -bottleMl, way: 'drunk' },
    ]
    const { kinds } = forecastStock(cellarOf(takings, 1, 10, monthDay(4)))
    expect(kinds[0]?.past).toEqual([
      { atMs: Date.UTC(2020, 1, 1), volumeMl: 5000 },
      { atMs: Date.UTC(2020, 2, 1), volumeMl: 4500 },
      // What happens at the stroke of the month belongs to the next.
      { atMs: Date.UTC(2020, 3, 1), volumeMl: 4500 },
      { atMs: Date.UTC(2020, 4, 1), volumeMl: 4000 },
    ])
    expect(kinds[0]?.forecast[0]?.atMs).toBe(Date.UTC(2020, 5, 1))
    expect(kinds[0]?.forecast).toHaveLength(24)
  })

  const change = fc.record({
    atMs: fc.integer({ min: -3000, max: 400 }).map(dayAt),
    kindId: fc.constantFrom('a', 'b'),
    changeMl: fc.double({ min: -3000, max: 6000, noNaN: true }),
    way: fc.constantFrom('drunk', 'given', 'other' as const),
  })
  const anyStock: fc.Arbitrary<StockQuestion> = fc.record({
    kinds: fc.tuple(
      ...['a', 'b', 'c'].map((kindId) =>
        fc.record({
          kindId: fc.constant(kindId),
          bottleCount: fc.nat(200),
          volumeMl: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 1e5, noNaN: true })),
        }),
      ),
    ),
    changes: fc.array(change, { maxLength: 40 }),
    nowMs: fc.integer({ min: 0, max: 800 }).map(dayAt),
    months: fc.integer({ min: 1, max: 40 }),
  })

  it('is never below zero nor above what stands there, never rises, and keeps its band in order', () => {
    fc.assert(
      fc.property(anyStock, (question) => {
        const { kinds, all } = forecastStock(question)
        for (const kind of [...kinds, all]) {
          let before = { low: kind.volumeMl, value: kind.volumeMl, high: kind.volumeMl }
          for (const { volumeMl } of kind.forecast) {
            expect(volumeMl.low).toBeGreaterThanOrEqual(0)
            expect(volumeMl.low).toBeLessThanOrEqual(volumeMl.value)
            expect(volumeMl.value).toBeLessThanOrEqual(volumeMl.high)
            for (const end of ['low', 'value', 'high'] as const)
              expect(volumeMl[end]).toBeLessThanOrEqual(before[end])
            before = volumeMl
          }
          for (const { volumeMl } of kind.past) expect(volumeMl).toBeGreaterThanOrEqual(0)
          expect(kind.perYearMl.low).toBeLessThanOrEqual(kind.perYearMl.value)
          expect(kind.perYearMl.value).toBeLessThanOrEqual(kind.perYearMl.high)
          expect(kind.givenShare).toBeGreaterThanOrEqual(0)
          expect(kind.givenShare).toBeLessThanOrEqual(1)
          const { early, likely, late } = kind.runsOutMs ?? {}
          expect(early ?? Infinity).toBeGreaterThanOrEqual(question.nowMs)
          expect(early ?? 0).toBeLessThanOrEqual(likely ?? Infinity)
          expect(likely ?? 0).toBeLessThanOrEqual(late ?? Infinity)
        }
      }),
      { numRuns: 300 },
    )
  })

  it('is the same whatever order the changes come in', () => {
    fc.assert(
      fc.property(anyStock, (question) => {
        const times = new Set(question.changes.map(({ atMs }) => atMs))
        fc.pre(times.size === question.changes.length)
        const found = forecastStock(question)
        const turned = { ...question, changes: question.changes.toReversed() }
        expect(forecastStock(turned)).toEqual(found)
      }),
      { numRuns: 100 },
    )
  })
})

const monthMs = (365.25 / 12) * dayMs
/** Days until the first of a month, counted from January 2020. */
const monthDay = (month: number) => (Date.UTC(2020, month, 1) - startMs) / dayMs
const even = Array.from({ length: 12 }, () => 1)
const onlyDecember = even.map((_, month) => (month === 11 ? 12 : 0))

/** One kind, the same all year. */
const steady = (drunk: number, given: number): Drinker => ({
  drunkAMonth: [drunk],
  givenAMonth: [given],
  drunkSeason: even,
  givenSeason: even,
})

describe('gammaQuantile', () => {
  it('meets published quantiles of chi-square', () => {
    // Mean ten, variance twenty: 3.940, 9.342 and 18.307 (tables of ten degrees of freedom).
    const chiSquare = { mean: 10, variance: 20 }
    expect(gammaQuantile(chiSquare, -1.6449)).toBeCloseTo(3.94, 1)
    expect(gammaQuantile(chiSquare, 0)).toBeCloseTo(9.342, 1)
    expect(gammaQuantile(chiSquare, 1.6449)).toBeCloseTo(18.307, 1)
  })

  it('is nothing of nothing, and never below zero', () => {
    expect(gammaQuantile({ mean: 0, variance: 0 }, 1)).toBe(0)
    expect(gammaQuantile({ mean: 1, variance: 50 }, -1.6449)).toBe(0)
  })
})
