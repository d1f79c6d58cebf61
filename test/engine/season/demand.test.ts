import { describe, expect, it } from 'vitest'
import { demandOf, type DemandAsked } from '../../../main/engine/season/demand.ts'
import { seasonYield } from '../../../main/engine/season/season-yield.ts'
import { wish } from './season-cellar.ts'

const year = 365.25 * 86_400_000
const asked = (change: Partial<DemandAsked> = {}): DemandAsked => ({
  stockMl: 6000,
  perYearMl: { value: 4000, low: 3000, high: 5000 },
  nowMs: 0,
  readyMs: year,
  reserveMonths: 0,
  wishes: [],
  ...change,
})

describe('demandOf', () => {
  it('wants a year of drinking less what is left when it is ready', () => {
    const demand = demandOf(asked())
    expect(demand.leftThenMl).toEqual({ value: 2000, low: 1000, high: 3000 })
    expect(demand.wantedMl).toBe(2000)
    expect(demand.runsDryMs).toBeUndefined()
    // At the low rate 3000 are left of which 3000 are drunk: nothing of it is sure.
    expect(demand.tiers).toEqual([{ priority: 'should', isSure: false, volumeMl: 2000 }])
  })

  it('tells when today’s stock runs dry before the new one is ready', () => {
    const demand = demandOf(asked({ stockMl: 2000 }))
    expect(demand.runsDryMs).toBe(year / 2)
    expect(demand.wantedMl).toBe(4000)
    expect(demand.tiers[0]).toEqual({ priority: 'should', isSure: true, volumeMl: 3000 })
  })

  it('wants nothing where two years of it stand there', () => {
    expect(demandOf(asked({ stockMl: 12_000 })).wantedMl).toBe(0)
  })

  it('adds a reserve, gifts, and what a wish asks for beyond', () => {
    const demand = demandOf(
      asked({
        reserveMonths: 3,
        wishes: [
          wish('plum', { atLeastMl: 5000, priority: 'must' }),
          wish('plum', { atLeastMl: 1500, purpose: 'gift', priority: 'must' }),
        ],
      }),
    )
    expect(demand.needs).toEqual([
      { because: 'drinking', priority: 'must', volumeMl: 2000 },
      { because: 'reserve', priority: 'could', volumeMl: 1000 },
      { because: 'wish', priority: 'must', volumeMl: 2000 },
      { because: 'gift', priority: 'must', volumeMl: 1500 },
    ])
    expect(demand.wantedMl).toBe(6500)
  })

  it('cuts from the least urgent end at what is wished at most', () => {
    const wishes = [
      wish('plum', { atMostMl: 1200 }),
      wish('plum', { purpose: 'gift', atLeastMl: 1000, priority: 'must' }),
    ]
    const demand = demandOf(asked({ wishes }))
    expect(demand.atMostMl).toBe(1200)
    expect(demand.tiers).toEqual([
      { priority: 'must', isSure: true, volumeMl: 1000 },
      { priority: 'should', isSure: false, volumeMl: 200 },
    ])
    expect(demandOf(asked({ wishes: [wish('plum', { atMostMl: 0 })] })).wantedMl).toBe(0)
  })

  it('lays the must down first, then the sure, then the likely, and a reserve last', () => {
    // 4000 a year, 3000 of it sure; nothing is left; 2500 must be there, 3 months more are kept.
    const demand = demandOf(
      asked({
        stockMl: 0,
        reserveMonths: 3,
        wishes: [wish('plum', { atLeastMl: 2500, priority: 'must' })],
      }),
    )
    expect(demand.needs).toEqual([
      { because: 'drinking', priority: 'must', volumeMl: 2500 },
      { because: 'drinking', priority: 'should', volumeMl: 1500 },
      { because: 'reserve', priority: 'could', volumeMl: 1000 },
    ])
    expect(demand.tiers).toEqual([
      { priority: 'must', isSure: true, volumeMl: 2500 },
      { priority: 'should', isSure: true, volumeMl: 500 },
      { priority: 'should', isSure: false, volumeMl: 1000 },
      { priority: 'could', isSure: false, volumeMl: 1000 },
    ])
    expect(demand.atMostMl).toBeUndefined()
    expect(demand.leftThenMl).toEqual({ value: 0, low: 0, high: 0 })
    expect(demand.runsDryMs).toBe(0)
  })

  it('takes what is left beyond a year off the reserve', () => {
    // 8500 less a year is 4500: half a litre more than the year after wants, of a reserve of 1000.
    const { needs } = demandOf(asked({ stockMl: 8500, reserveMonths: 3 }))
    expect(needs).toEqual([{ because: 'reserve', priority: 'could', volumeMl: 500 }])
    expect(demandOf(asked({ stockMl: 9500, reserveMonths: 3 })).wantedMl).toBe(0)
  })

  it('adds wishes of one purpose up, as urgent as the most urgent that asks for something', () => {
    const gifts = [
      wish('plum', { purpose: 'gift', atLeastMl: 300, priority: 'could' }),
      wish('plum', { purpose: 'gift', atLeastMl: 700, priority: 'should' }),
      wish('plum', { purpose: 'gift', atMostMl: 5000, priority: 'must' }),
      wish('plum', { purpose: 'gift', atLeastMl: 0, priority: 'must' }),
    ]
    const demand = demandOf(asked({ stockMl: 12_000, wishes: gifts }))
    expect(demand.needs).toEqual([{ because: 'gift', priority: 'should', volumeMl: 1000 }])
    expect(demand.tiers).toEqual([{ priority: 'should', isSure: true, volumeMl: 1000 }])
    const twice = [wish('plum', { atMostMl: 900 }), wish('plum', { atMostMl: 400 })]
    expect(demandOf(asked({ wishes: twice })).atMostMl).toBe(400)
  })

  it('asks beyond drinking and reserve for what a wish that need not be still wants', () => {
    const wishes = [wish('plum', { atLeastMl: 5000, priority: 'could' })]
    const { needs } = demandOf(asked({ reserveMonths: 3, wishes }))
    expect(needs).toEqual([
      { because: 'drinking', priority: 'should', volumeMl: 2000 },
      { because: 'reserve', priority: 'could', volumeMl: 1000 },
      { because: 'wish', priority: 'could', volumeMl: 2000 },
    ])
  })

  it('runs dry only before the new one is ready, and never where nothing is drunk', () => {
    expect(demandOf(asked({ stockMl: 4000 })).runsDryMs).toBeUndefined()
    expect(demandOf(asked({ stockMl: 3999 })).runsDryMs).toBeCloseTo(year * (3999 / 4000), 0)
    const none = { value: 0, low: 0, high: 0 }
    const idle = demandOf(asked({ stockMl: 0, perYearMl: none }))
    expect([idle.runsDryMs, idle.wantedMl]).toEqual([undefined, 0])
    // Ready already: nothing is drunk until then.
    const now = demandOf(asked({ nowMs: year, readyMs: 0, stockMl: 1000 }))
    expect(now.leftThenMl).toEqual({ value: 1000, low: 1000, high: 1000 })
    expect(now.wantedMl).toBe(3000)
    expect(demandOf(asked({ nowMs: year, readyMs: 2 * year, stockMl: 2000 })).runsDryMs).toBe(
      1.5 * year,
    )
  })
})

describe('seasonYield', () => {
  it('blends own batches with two of the recipe, and narrows with them', () => {
    const alone = seasonYield(1.6, undefined)
    expect(alone.value).toBe(1.6)
    const blended = seasonYield(1.6, { own: 2, batchIds: ['a', 'b'] })
    expect(blended.value).toBeCloseTo(1.8)
    const share = ({ value, low }: typeof alone) => 1 - low / value
    expect(share(alone)).toBeCloseTo(0.247, 3)
    expect(share(blended)).toBeCloseTo(1.645 * Math.sqrt(0.01 + 0.0125 / 2), 6)
  })
})
