import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { backupsToDrop } from '../../main/cellar/backup-rule.ts'
import { msPerDay } from '../../shared/spans-of-time.ts'

const now = Date.parse('2026-11-25T18:00:00Z')
const daysAgo = (days: number) => ({ file: `${days}`, madeAtMs: now - days * msPerDay })
const daily = (days: number) => Array.from({ length: days }, (_, day) => daysAgo(day))
const keptOf = (backups: readonly { file: string; madeAtMs: number }[], at = now) => {
  const dropped = new Set(backupsToDrop(backups, at))
  return backups.filter(({ file }) => !dropped.has(file))
}

describe('backupsToDrop', () => {
  it('keeps all of the last seven days, however many a day', () => {
    const hourly = Array.from({ length: 7 * 24 }, (_, hour) => daysAgo(hour / 24))
    expect(backupsToDrop(hourly, now)).toEqual([])
  })

  it('keeps of ten years of daily backups some two dozen and one a year', () => {
    const kept = keptOf(daily(3650))
    const ages = kept.map(({ file }) => Number(file))
    expect(ages.slice(0, 8)).toEqual([0, 1, 2, 3, 4, 5, 6, 7])
    expect(ages.filter((age) => age > 7 && age <= 35)).toHaveLength(5)
    expect(ages.filter((age) => age > 35 && age <= 372)).toHaveLength(12)
    expect(ages.filter((age) => age > 372)).toHaveLength(10)
  })

  it('keeps of each week, month and year the newest', () => {
    // Monday 26 October to Sunday 1 November; 31 days make it the range of weeks.
    expect(
      keptOf([daysAgo(0), daysAgo(24), daysAgo(26), daysAgo(30)]).map(({ file }) => file),
    ).toEqual(['0', '24'])
    // March of this year, then two of 2020.
    const old = [daysAgo(0), daysAgo(240), daysAgo(250), daysAgo(2200), daysAgo(2210)]
    expect(keptOf(old).map(({ file }) => file)).toEqual(['0', '240', '2200'])
  })

  it('keeps the newest however old it is, and what seems to come from the future', () => {
    expect(keptOf([daysAgo(4000)])).toHaveLength(1)
    expect(keptOf([daysAgo(-400), daysAgo(-401), daysAgo(0)])).toHaveLength(3)
  })

  it('gives the same when kept up every day as when done at once, to within a span', () => {
    let held: { file: string; madeAtMs: number }[] = []
    for (let day = 800; day >= 0; day -= 1) {
      held.push(daysAgo(day))
      held = keptOf(held, now - day * msPerDay)
    }
    const ages = held.map(({ file }) => Number(file))
    expect(ages.filter((age) => age <= 7)).toHaveLength(8)
    // No hole longer than a month within the first year, and something of the years before.
    const gaps = ages.slice(1).map((age, index) => (ages[index] ?? 0) - age)
    const recent = gaps.filter((_, index) => (ages[index] ?? 0) <= 365)
    expect(Math.max(...recent)).toBeLessThanOrEqual(40)
    expect(ages[0]).toBeGreaterThan(365)
  })

  it('never drops all, and names no file twice', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -30, max: 5000, noNaN: true }), { minLength: 1 }),
        (ages) => {
          const backups = ages.map((age, index) => ({ ...daysAgo(age), file: `${index}` }))
          const dropped = backupsToDrop(backups, now)
          expect(new Set(dropped).size).toBe(dropped.length)
          expect(dropped.length).toBeLessThan(backups.length)
        },
      ),
      { seed: 8 },
    )
  })
})
