import { describe, expect, it } from 'vitest'
import { compareSeasons, seasonBefore } from '../../../main/engine/season/compare-seasons.ts'
import type { KeptSeasonPlan } from '../../../shared/schemas/season.ts'
import { buyFruit, buySpirit, buySugar, dayAt, folded, type Deed } from '../ledger/book-of-moves.ts'
import { paperBatch, paperKind, paperPlan, paperTotals } from './paper-plan.ts'

const day = 86_400_000
const priced = (deed: Deed, priceMinor: number): Deed =>
  deed.kind === 'buy' ? { ...deed, priceMinor } : deed
const charge = (batchId: string, jarId: string, lotId: string, massG: number): Deed => ({
  kind: 'charge',
  batchId,
  jarId,
  lotId,
  massG,
  refuseG: 0,
  cut: 'pricked',
})

/** Day 0 is 2024-06-01. The first batch begins before the year looked back on, the last after it. */
const story = folded([
  [0, priced(buySpirit('spirit', 8000, 70), 8000)],
  [0, priced(buyFruit('early', 'quince', 1000), 350)],
  [1, charge('before', 'j0', 'early', 1000)],
  [1, { kind: 'pourSpirit', batchId: 'before', jarId: 'j0', lotId: 'spirit', volumeMl: 1000 }],
  [10, priced(buyFruit('cherries', 'sour_cherry', 4000), 1800)],
  [10, charge('first', 'j1', 'cherries', 1000)],
  [10, { kind: 'pourSpirit', batchId: 'first', jarId: 'j1', lotId: 'spirit', volumeMl: 2000 }],
  [12, charge('second', 'j2', 'cherries', 2000)],
  [12, { kind: 'pourSpirit', batchId: 'second', jarId: 'j2', lotId: 'spirit', volumeMl: 2000 }],
  [14, charge('first', 'j1', 'cherries', 500)],
  [20, buyFruit('plums', 'plum', 1000)],
  [20, charge('unpriced', 'j3', 'plums', 1000)],
  [50, { kind: 'drawOff', batchId: 'first', fromJarId: 'j1', toJarId: 'j4' }],
  [
    60,
    {
      kind: 'bottle',
      batchId: 'first',
      fromJarId: 'j4',
      bottleLotId: 'bottles',
      bottleSizeMl: 500,
      count: 3,
    },
  ],
  [374, priced(buySugar('sugar', 1000), 120)],
  [374, buyFruit('late', 'sour_cherry', 1000)],
  [374, charge('after', 'j5', 'late', 1000)],
])

const looking = { steps: story.steps, cellar: story.cellar, nowMs: Date.parse(dayAt(374)) }

const keptPlan = (change: Partial<KeptSeasonPlan['plan']> = {}): KeptSeasonPlan => ({
  id: 'kept',
  keptAt: '2024-06-02T00:00:00.000Z',
  plan: paperPlan({ startAt: dayAt(10), ...change }),
})

describe('compareSeasons', () => {
  it('tells nothing but the time looked back on, where nothing was planned or done', () => {
    const nothing = folded([])
    const told = compareSeasons({
      now: undefined,
      earlier: undefined,
      steps: nothing.steps,
      cellar: nothing.cellar,
      nowMs: Date.parse(dayAt(364)),
    })
    expect(told).toEqual({ from: dayAt(0), to: dayAt(364), kinds: [], money: {} })
  })

  it('looks back on 52 weeks from the start of the plan kept then, the first day in and the last out', () => {
    expect(story.refused).toEqual([])
    const told = compareSeasons({ ...looking, now: undefined, earlier: keptPlan() })
    expect([told.from, told.to]).toEqual([dayAt(10), dayAt(10 + 364)])
    expect(told.earlier).toEqual({ id: 'kept', keptAt: '2024-06-02T00:00:00.000Z' })
    expect(told.kinds.map(({ kindId }) => kindId)).toEqual(['sour_cherry', 'plum'])
    // What was bought on the first day counts, what on the last does not; the plums had no price.
    expect(told.money).toEqual({
      earlier: { minor: 0, isComplete: true },
      happened: { minor: 1800, isComplete: false },
    })
  })

  it('adds up what the batches begun in that time took, gave and cost', () => {
    const told = compareSeasons({ ...looking, now: undefined, earlier: keptPlan() })
    const { happened } = told.kinds[0]!
    expect(happened).toMatchObject({
      fruitG: 3500,
      volumeMl: 1500,
      bottles: 3,
      firstAt: dayAt(10),
      batchIds: ['first', 'second'],
    })
    // 3.5 of 4 kg of cherries at 18.00, half of the spirit at 80.00.
    expect(happened!.spent!.minor).toBeCloseTo(0.875 * 1800 + 4000, 6)
    expect(happened!.spent!.isComplete).toBe(true)
    // Three jars: free liquid of both batches, roughly, without contraction and what is dissolved.
    const freeMl = (jarId: string) => {
      const { ethanolG, waterG } = story.cellar.jars.get(jarId)!.bodies.free
      return ethanolG / 0.789 + waterG
    }
    expect(happened!.inJarsMl).toBeGreaterThan(1500)
    const roughMl = ['j1', 'j2', 'j4'].reduce((sum, id) => sum + freeMl(id), 0)
    expect(Math.abs(happened!.inJarsMl / roughMl - 1)).toBeLessThan(0.1)
    // Nothing that went into the plums has a price.
    expect(told.kinds[1]).toEqual({
      kindId: 'plum',
      earlier: { fruitG: 0, volumeMl: 0, bottles: 0 },
      happened: {
        fruitG: 1000,
        volumeMl: 0,
        bottles: 0,
        inJarsMl: 0,
        firstAt: dayAt(20),
        batchIds: ['unpriced'],
      },
    })
  })

  it('sets both plans kind by kind beside it, those of the new plan first', () => {
    const batches = [
      paperBatch({ startAt: dayAt(40), fruitG: 1500, bottles: 4 }),
      paperBatch({ kindId: 'quince', startAt: dayAt(20), fruitG: 700, bottles: 1 }),
      paperBatch({ startAt: dayAt(30), fruitG: 1000, bottles: 2 }),
    ]
    const told = compareSeasons({
      ...looking,
      now: paperPlan({
        kinds: [paperKind('damson'), paperKind('sour_cherry')],
        batches: [paperBatch({ fruitG: 900, bottles: 3 })],
        totals: paperTotals({ moneyMinor: 4000, isWholeMoney: false }),
      }),
      earlier: keptPlan({
        kinds: [paperKind('sour_cherry'), paperKind('quince')],
        batches,
        totals: paperTotals({ moneyMinor: 7000 }),
      }),
    })
    expect(told.kinds.map(({ kindId }) => kindId)).toEqual([
      'damson',
      'sour_cherry',
      'quince',
      'plum',
    ])
    const [damson, cherry, quince] = told.kinds
    expect(damson).toEqual({
      kindId: 'damson',
      now: { fruitG: 0, volumeMl: 0, bottles: 0 },
      earlier: { fruitG: 0, volumeMl: 0, bottles: 0 },
    })
    expect(cherry!.now).toEqual({ fruitG: 900, volumeMl: 3200, bottles: 3 })
    // The earliest start of the two batches, though it is written later.
    expect(cherry!.earlier).toEqual({
      fruitG: 2500,
      volumeMl: 6400,
      bottles: 6,
      startAt: dayAt(30),
    })
    expect(quince!.earlier).toEqual({
      fruitG: 700,
      volumeMl: 3200,
      bottles: 1,
      startAt: dayAt(20),
    })
    expect(quince).not.toHaveProperty('happened')
    expect(told.money.now).toEqual({ minor: 4000, isComplete: false })
    expect(told.money.earlier).toEqual({ minor: 7000, isComplete: true })
  })

  it('has no sum where goods have prices in no case', () => {
    const { steps, cellar } = folded([
      [0, buyFruit('plums', 'plum', 1000)],
      [0, charge('plain', 'j', 'plums', 1000)],
    ])
    const nowMs = Date.parse(dayAt(10))
    const told = compareSeasons({ now: undefined, earlier: undefined, steps, cellar, nowMs })
    expect(told.money).toEqual({})
    expect(told.kinds[0]!.happened).not.toHaveProperty('spent')
  })
})

describe('seasonBefore', () => {
  const startAt = '2027-01-04T00:00:00.000Z'
  const before = (days: number): KeptSeasonPlan => ({
    id: `${days}`,
    keptAt: startAt,
    plan: paperPlan({ startAt: new Date(Date.parse(startAt) - days * day).toISOString() }),
  })

  it('is the first of those that start at least half a year before', () => {
    expect(seasonBefore([before(10), before(181), before(182), before(365)], startAt)?.id).toBe(
      '182',
    )
    expect(seasonBefore([before(181)], startAt)).toBeUndefined()
    expect(seasonBefore([], startAt)).toBeUndefined()
  })
})
