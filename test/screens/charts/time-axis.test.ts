import { msPerDay } from '../../../shared/spans-of-time.ts'
import { describe, expect, it } from 'vitest'
import {
  amountTicks,
  spanTicks,
  dateTicks,
  dayTicks,
  timeDomain,
} from '../../../renderer/charts/time-axis.ts'

const start = new Date(2026, 5, 10, 9).getTime()
const after = (days: number) => timeDomain(start, start + days * msPerDay)

describe('timeDomain', () => {
  it('is a day wide for a batch that began this minute', () => {
    expect(timeDomain(start, start + 60_000).toMs - start).toBe(msPerDay)
  })
})

describe('dayTicks', () => {
  it('marks each fortnight of ten weeks', () => {
    const days = dayTicks(after(70), 8).map((at) => (at - start) / msPerDay)
    expect(days).toEqual([0, 14, 28, 42, 56, 70])
  })
  it('marks quarters of the first day', () => {
    expect(dayTicks(after(1), 8).map((at) => (at - start) / msPerDay)).toEqual([
      0, 0.25, 0.5, 0.75, 1,
    ])
  })
})

describe('dateTicks', () => {
  it('marks firsts of months over five months', () => {
    const { ticks, precision } = dateTicks(after(150), 8)
    expect(precision).toBe('month')
    expect(ticks.map((at) => [new Date(at).getMonth(), new Date(at).getDate()])).toEqual([
      [6, 1],
      [7, 1],
      [8, 1],
      [9, 1],
      [10, 1],
    ])
  })
  it('marks New Years over eight years', () => {
    const { ticks, precision } = dateTicks(after(8 * 365), 9)
    expect(precision).toBe('year')
    expect(ticks.map((at) => new Date(at).getFullYear())).toEqual([
      2027, 2028, 2029, 2030, 2031, 2032, 2033, 2034,
    ])
  })
  it('marks midnights inside four days', () => {
    const { ticks, precision } = dateTicks(after(4), 8)
    expect(precision).toBe('day')
    expect(ticks.map((at) => new Date(at).getDate())).toEqual([11, 12, 13, 14])
  })
})

describe('amountTicks', () => {
  it('rises in round steps to above the greatest', () => {
    expect(amountTicks(63, 4)).toEqual([0, 20, 40, 60, 80])
    expect(amountTicks(412, 4)).toEqual([0, 125, 250, 375, 500])
  })
  it('has a scale even when everything is zero', () => {
    expect(new Set(amountTicks(0, 4)).size).toBe(5)
  })
})

describe('spanTicks', () => {
  it('steps roundly from below the least to above the greatest', () => {
    expect(spanTicks(31.2, 52.4, 4)).toEqual([30, 40, 50, 60])
    expect(spanTicks(118, 171, 4)).toEqual([100, 120, 140, 160, 180])
  })

  it('has two marks at least', () => {
    expect(spanTicks(5, 5, 4)).toHaveLength(2)
  })
})
