import { describe, expect, it } from 'vitest'
import { fruitOf } from '../../../main/engine/fruit/fruit-library.ts'
import { fruitCalendar } from '../../../main/engine/season/fruit-calendar.ts'
import { learnedDates } from '../../../main/engine/season/learned-dates.ts'
import { mondayMs } from '../../../main/engine/season/weeks.ts'
import type { Region } from '../../../shared/schemas/season.ts'

const north: Region = { zone: 'northTemperate', ownShiftWeeks: 0 }
const at = (day: string) => Date.parse(`${day}T12:00:00Z`)

const calendar = (id: string, region: Region = north, fresh: string[] = []) =>
  fruitCalendar({
    fromMs: at('2026-11-25'),
    region,
    fruits: [fruitOf(id)],
    fresh: fresh.map((day, index) => ({ fruitId: id, batchId: `b${index}`, atMs: at(day) })),
    pantryG: new Map(),
    ownKindIds: new Set(),
  }).fruits[0]!

const weekOf = (day: string) =>
  Math.round((mondayMs(at(day)) - mondayMs(at('2026-11-25'))) / (7 * 86_400_000))

describe('fruitCalendar', () => {
  it('has sour cherries from June to August, plenty in July, by the library', () => {
    const { spans, weeks, isAllYear } = calendar('sour_cherry')
    expect(isAllYear).toBe(false)
    expect(spans).toHaveLength(1)
    expect(spans[0]!.from.likely).toBe('2027-06-01T00:00:00.000Z')
    expect(spans[0]!.to.likely).toBe('2027-09-01T00:00:00.000Z')
    expect(spans[0]!.from.early).toBe('2027-05-18T00:00:00.000Z')
    expect(weeks).toHaveLength(52)
    expect(weeks[weekOf('2027-07-14')]).toBe('plenty')
    expect(weeks[weekOf('2027-08-18')]).toBe('likely')
    expect(weeks[weekOf('2027-05-26')]).toBe('maybe')
    expect(weeks[weekOf('2027-03-10')]).toBe('none')
  })

  it('tells each fruit whole, with what the pantry has and what is made here', () => {
    const told = fruitCalendar({
      fromMs: at('2026-11-25'),
      region: north,
      fruits: [fruitOf('sour_cherry'), fruitOf('ginger')],
      fresh: [{ fruitId: 'ginger', batchId: 'b', atMs: at('2026-03-01') }],
      pantryG: new Map([['ginger', 300]]),
      ownKindIds: new Set(['sour_cherry']),
    })
    expect(told.region).toEqual(north)
    expect(told.weekStarts).toHaveLength(52)
    expect(told.weekStarts.slice(0, 2)).toEqual([
      '2026-11-23T00:00:00.000Z',
      '2026-11-30T00:00:00.000Z',
    ])
    const [cherry, ginger] = told.fruits
    expect(cherry).toMatchObject({ fruitId: 'sour_cherry', pantryG: 0, isOwnKind: true })
    expect(cherry).not.toHaveProperty('learned')
    expect(cherry!.spans).toEqual([
      {
        from: {
          early: '2027-05-18T00:00:00.000Z',
          likely: '2027-06-01T00:00:00.000Z',
          late: '2027-06-15T00:00:00.000Z',
        },
        to: {
          early: '2027-08-18T00:00:00.000Z',
          likely: '2027-09-01T00:00:00.000Z',
          late: '2027-09-15T00:00:00.000Z',
        },
        peakFrom: '2027-07-01T00:00:00.000Z',
        peakTo: '2027-08-01T00:00:00.000Z',
      },
    ])
    // By Thursday noon of each week: 18 May to 15 September, sure from June on, and plenty on the five
    // Thursdays of July.
    const count = (supply: string) => cherry!.weeks.filter((week) => week === supply).length
    expect(['maybe', 'likely', 'plenty'].map(count)).toEqual([4, 8, 5])
    expect(cherry!.weeks.indexOf('maybe')).toBe(weekOf('2027-05-19'))
    expect(cherry!.weeks.indexOf('likely')).toBe(weekOf('2027-06-02'))
    expect(cherry!.weeks.indexOf('plenty')).toBe(weekOf('2027-06-30'))
    expect(cherry!.weeks.lastIndexOf('maybe')).toBe(weekOf('2027-09-08'))
    expect(ginger).toEqual({
      fruitId: 'ginger',
      isAllYear: true,
      spans: [],
      weeks: Array.from({ length: 52 }, () => 'likely'),
      pantryG: 300,
      isOwnKind: false,
    })
  })

  it('is three weeks earlier around the Mediterranean, half a year later in the south', () => {
    const mediterranean = calendar('sour_cherry', { zone: 'mediterranean', ownShiftWeeks: 0 })
    expect(mediterranean.spans[0]!.from.likely).toBe('2027-05-11T00:00:00.000Z')
    const south = calendar('sour_cherry', { zone: 'southTemperate', ownShiftWeeks: 0 })
    expect(south.spans[0]!.from.likely).toBe('2026-12-01T00:00:00.000Z')
    const late = calendar('sour_cherry', { zone: 'northTemperate', ownShiftWeeks: 2 })
    expect(late.spans[0]!.from.likely).toBe('2027-06-15T00:00:00.000Z')
  })

  it('goes over the turn of the year: lemons from November to April', () => {
    const { spans } = calendar('lemon_peel')
    expect(spans.map(({ from, to }) => [from.likely.slice(0, 10), to.likely.slice(0, 10)])).toEqual(
      [
        ['2026-11-01', '2027-05-01'],
        ['2027-11-01', '2028-05-01'],
      ],
    )
    expect(spans[0]!.peakFrom!.slice(0, 10)).toBe('2026-12-01')
    expect(spans[0]!.peakTo!.slice(0, 10)).toBe('2027-03-01')
  })

  it('has ginger in every week', () => {
    const { isAllYear, weeks, spans } = calendar('ginger')
    expect([isAllYear, spans.length]).toEqual([true, 0])
    expect(new Set(weeks)).toEqual(new Set(['likely']))
  })

  it('moves with own years, half of the way after two of them, and is surer then', () => {
    // Plenty is July, its middle noon of the 16th: two weeks later, in two years.
    const { learned, spans } = calendar('sour_cherry', north, ['2025-07-30', '2026-07-30'])
    expect(learned!.shiftWeeks.own).toBeCloseTo(2, 1)
    expect(learned!.shiftWeeks.blended).toBeCloseTo(1, 1)
    const days = (a: string, b: string) => (Date.parse(b) - Date.parse(a)) / 86_400_000
    expect(days('2027-06-01T00:00:00Z', spans[0]!.from.likely)).toBeCloseTo(7, 0)
    expect(days(spans[0]!.from.early, spans[0]!.from.likely)).toBeCloseTo(14 / Math.SQRT2, 3)
  })

  it('learns nothing from fruit bought at Christmas, and counts a year once', () => {
    const asked = { fruit: fruitOf('sour_cherry'), region: north }
    const fresh = (day: string) => ({ fruitId: 'sour_cherry', batchId: day, atMs: at(day) })
    expect(learnedDates(asked, [fresh('2025-12-24')])).toBeUndefined()
    const told = learnedDates(asked, [fresh('2025-07-16'), fresh('2025-07-18')])!
    expect(told.years).toBe(1)
    expect(told.boughtAt).toHaveLength(2)
  })
})
