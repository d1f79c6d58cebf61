import { describe, expect, it } from 'vitest'
import {
  byNextSeason,
  ownDatesWithin,
  supplyStretches,
} from '../../../renderer/charts/fruit-year-rows.ts'
import { occupancyOf, stepInOccupancy } from '../../../renderer/charts/occupancy-rows.ts'
import { weeksDomain } from '../../../renderer/charts/week-scale.ts'
import { calendar, fruitSeason, seasonPlan, startMs, weekAt } from './season-fixture.ts'

describe('occupancyOf', () => {
  const { rows, domain } = occupancyOf(seasonPlan())

  it('puts the largest jars first and bars in the order of their weeks', () => {
    expect(rows.map(({ jar }) => jar.name)).toEqual([
      'Old crock',
      'South jar',
      'North jar',
      'Spare',
    ])
    expect(rows[0]?.bars.map(({ use, weeks }) => [use, weeks])).toEqual([
      ['standingSettle', 4],
      ['steep', 6],
      ['cleaning', 1],
    ])
  })

  it('tells the kind of a planned batch, and the batch of one that stands today', () => {
    const [, steep] = rows[0]?.bars ?? []
    expect(steep?.kindId).toBe('sour_cherry')
    const [standing] = rows[2]?.bars ?? []
    expect(standing?.batchId).toBe('damson')
    expect(standing?.kindId).toBeUndefined()
  })

  it('shows the weeks of the plan, and further where a jar is taken for longer', () => {
    expect(new Date(domain.toMs).toISOString()).toBe(weekAt(52))
    const [span] = seasonPlan().spans
    if (!span) throw new Error('the fixture has spans')
    const long = occupancyOf(seasonPlan({ spans: [{ ...span, toWeek: 60 }] }))
    expect(new Date(long.domain.toMs).toISOString()).toBe(weekAt(60))
  })
})

describe('stepInOccupancy', () => {
  const { rows } = occupancyOf(seasonPlan())
  const bar = (row: number, index: number) => {
    const found = rows[row]?.bars[index]
    if (!found) throw new Error('no such bar')
    return found
  }

  it('goes along a jar, and to what stands at the same time in the next', () => {
    expect(stepInOccupancy(rows, bar(0, 0), 'ArrowRight')).toBe(bar(0, 1))
    expect(stepInOccupancy(rows, bar(0, 0), 'ArrowLeft')).toBeUndefined()
    expect(stepInOccupancy(rows, bar(0, 0), 'End')).toBe(bar(0, 2))
    expect(stepInOccupancy(rows, bar(1, 0), 'ArrowDown')).toBe(bar(2, 2))
    expect(stepInOccupancy(rows, bar(2, 0), 'ArrowUp')).toBe(bar(1, 0))
    expect(stepInOccupancy(rows, bar(0, 0), 'a')).toBeUndefined()
  })
})

describe('supplyStretches', () => {
  it('joins weeks alike and leaves out those without', () => {
    const weeks = ['none', 'maybe', 'likely', 'likely', 'none', 'plenty'] as const
    expect(
      supplyStretches(weeks, startMs).map(({ supply, fromMs, toMs }) => [
        supply,
        new Date(fromMs).toISOString(),
        new Date(toMs).toISOString(),
      ]),
    ).toEqual([
      ['maybe', weekAt(1), weekAt(2)],
      ['likely', weekAt(2), weekAt(4)],
      ['plenty', weekAt(5), weekAt(6)],
    ])
  })
})

describe('ownDatesWithin', () => {
  it('moves days of past years into the year that is shown', () => {
    const domain = weeksDomain(Date.parse('2026-11-23T00:00:00Z'), 52)
    const dates = ownDatesWithin(
      {
        shiftWeeks: { own: 0, library: 0, blended: 0, batchIds: ['damson'] },
        boughtAt: ['2021-09-08T09:00:00Z', '2022-12-01T09:00:00Z'],
      },
      domain,
    )
    expect(dates.map((atMs) => new Date(atMs).toISOString().slice(0, 10))).toEqual([
      '2027-09-08',
      '2026-12-01',
    ])
  })

  it('knows none without any', () => {
    expect(ownDatesWithin(undefined, weeksDomain(startMs, 52))).toEqual([])
  })
})

describe('byNextSeason', () => {
  it('puts own kinds first, and of them what comes next', () => {
    const order = byNextSeason(calendar().fruits, 0).map(({ fruitId }) => fruitId)
    expect(order).toEqual(['sour_cherry', 'damson', 'quince'])
  })

  it('puts what is sold all year after what has a season', () => {
    const ginger = fruitSeason({ fruitId: 'ginger', isAllYear: true })
    expect(byNextSeason([ginger, fruitSeason()], 0)[0]?.fruitId).toBe('damson')
  })
})
