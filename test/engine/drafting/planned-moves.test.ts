import { describe, expect, it } from 'vitest'
import type { DraftSpec, Purchase } from '../../../shared/schemas/drafts.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import { fold, fruitOf, sweetenerComposition } from '../../../main/engine/index.ts'
import {
  bottlingMove,
  plannedMoves,
  type PlannedMoves,
} from '../../../main/engine/drafting/planned-moves.ts'
import { costOf, purchasesOf } from '../../../main/engine/drafting/purchases.ts'
import { facts, plainDraft } from './seeded-drafts.ts'

const at = (day: number) =>
  new Date(Date.parse('2026-07-01T08:00:00Z') + day * 86_400_000).toISOString()
const batchId = 'draft'

/** Two steeping jars of one and three litres, two fruits, everything that a draft may have. */
const full = (change: Partial<DraftSpec> = {}): DraftSpec => ({
  ...plainDraft('sour_cherry'),
  fruits: [
    { fruitId: 'sour_cherry', massG: 1200, refuseShare: 0.1, cut: 'whole', priceMinorPerKg: 401 },
    { fruitId: 'quince', massG: 400, refuseShare: 0, cut: 'cut' },
  ],
  layeringSugarG: 300,
  layeringDays: 2,
  spirits: [
    { strengthPctVol: 96, volumeMl: 800, priceMinorPerL: 3000 },
    { strengthPctVol: 40, volumeMl: 400 },
  ],
  steepWaterMl: 200,
  steepWeeks: 4,
  temperatureC: 18,
  turned: 'daily',
  sugarDraws: [{ sugarG: 240, days: 10 }],
  isPressed: true,
  finishWaterMl: 150,
  finishSugarG: 60,
  finishSpiritMl: 50,
  sweetenerPriceMinorPerKg: 100,
  bottlePriceMinor: 55,
  settleDays: 14,
  filters: ['cloth', 'paper'],
  vessels: {
    steep: [
      { shape: 'jar', capacityMl: 1000, jarId: 'small' },
      { shape: 'jar', capacityMl: 3000, jarId: 'large' },
    ],
    extracts: [],
  },
  ...change,
})

const sugar = {
  kind: 'sweetener',
  sweetenerId: 'sugar',
  composition: sweetenerComposition('sugar'),
}
const fruit = (fruitId: string) => ({
  kind: 'fruit',
  fruitId,
  composition: fruitOf(fruitId).composition,
})
const spirit = (strengthPctVol: number) => ({ kind: 'spirit', strengthPctVol })

describe('plannedMoves', () => {
  it('buys, layers, steeps, draws and presses in the jars chosen, each by its share', () => {
    const inJar = (jarId: string) => ({ batchId, jarId })
    const charging = (jarId: string, share: number) => [
      {
        kind: 'charge',
        at: at(0),
        ...inJar(jarId),
        lotId: 'draft-fruit-1',
        massG: 1200 * share,
        refuseG: 120 * share,
        cut: 'whole',
      },
      {
        kind: 'charge',
        at: at(0),
        ...inJar(jarId),
        lotId: 'draft-fruit-2',
        massG: 400 * share,
        cut: 'cut',
      },
      { kind: 'sugar', at: at(0), ...inJar(jarId), lotId: 'draft-sugar', massG: 300 * share },
    ]
    const pouring = (jarId: string, share: number) => [
      {
        kind: 'pourSpirit',
        at: at(2),
        ...inJar(jarId),
        lotId: 'draft-spirit-1',
        volumeMl: 800 * share,
      },
      {
        kind: 'pourSpirit',
        at: at(2),
        ...inJar(jarId),
        lotId: 'draft-spirit-2',
        volumeMl: 400 * share,
      },
      { kind: 'pourWater', at: at(2), ...inJar(jarId), volumeMl: 200 * share },
      { kind: 'keep', at: at(2), ...inJar(jarId), temperatureC: 18, turned: 'daily' },
    ]
    // Two days under sugar and four weeks under spirit; ten more days under sugar.
    const off = (kind: 'drawOff' | 'press', day: number, toJarId: string) =>
      ['small', 'large'].map((fromJarId) => ({ kind, at: at(day), batchId, fromJarId, toJarId }))
    const covering = [
      ['small', 0.25],
      ['large', 0.75],
    ].map(([jarId, share]) => ({
      kind: 'coverWithSugar',
      at: at(30),
      batchId,
      jarId,
      lotId: 'draft-sugar',
      massG: 240 * (share as number),
    }))
    expect(plannedMoves(full(), facts).toExtracts).toStrictEqual([
      {
        kind: 'buy',
        at: at(0),
        lotId: 'draft-fruit-1',
        goods: fruit('sour_cherry'),
        massG: 1200,
        priceMinor: 481,
      },
      { kind: 'buy', at: at(0), lotId: 'draft-fruit-2', goods: fruit('quince'), massG: 400 },
      {
        kind: 'buy',
        at: at(0),
        lotId: 'draft-spirit-1',
        goods: spirit(96),
        volumeMl: 800,
        priceMinor: 2400,
      },
      { kind: 'buy', at: at(0), lotId: 'draft-spirit-2', goods: spirit(40), volumeMl: 400 },
      { kind: 'buy', at: at(0), lotId: 'draft-sugar', goods: sugar, massG: 540, priceMinor: 54 },
      ...charging('small', 0.25),
      ...charging('large', 0.75),
      ...pouring('small', 0.25),
      ...pouring('large', 0.75),
      ...off('drawOff', 30, 'draft-extract-1'),
      ...covering,
      ...off('drawOff', 40, 'draft-extract-2'),
      ...off('press', 40, 'draft-extract-3'),
      { kind: 'discard', at: at(40), from: { jarId: 'small', part: 'all' } },
      { kind: 'discard', at: at(40), from: { jarId: 'large', part: 'all' } },
    ])
  })

  it('marries the day after, finishes, lets it settle, filters, and bottles a day later', () => {
    const inMarried = { batchId, jarId: 'draft-married' }
    const { toFinish, bottlingAtMs, lastJar } = plannedMoves(full(), facts)
    expect(toFinish).toStrictEqual([
      {
        kind: 'buy',
        at: at(0),
        lotId: 'draft-finish-spirit',
        goods: spirit(96),
        volumeMl: 50,
        priceMinor: 150,
      },
      {
        kind: 'buy',
        at: at(0),
        lotId: 'draft-finish-sugar',
        goods: sugar,
        massG: 60,
        priceMinor: 6,
      },
      {
        kind: 'marry',
        at: at(41),
        batchId,
        parts: [1, 2, 3].map((nth) => ({ jarId: `draft-extract-${nth}` })),
        toJarId: 'draft-married',
      },
      { kind: 'pourSpirit', at: at(41), ...inMarried, lotId: 'draft-finish-spirit', volumeMl: 50 },
      { kind: 'pourWater', at: at(41), ...inMarried, volumeMl: 150 },
      { kind: 'sugar', at: at(41), ...inMarried, lotId: 'draft-finish-sugar', massG: 60 },
      { kind: 'keep', at: at(41), ...inMarried, turned: 'daily' },
      ...(['cloth', 'paper'] as const).map((medium) => ({
        kind: 'filter',
        at: at(55),
        batchId,
        fromJarId: 'draft-married',
        toJarId: 'draft-married',
        medium,
      })),
    ])
    expect(bottlingAtMs).toBe(Date.parse(at(56)))
    expect(lastJar).toEqual({ jarId: 'draft-married', role: 'married', chosen: undefined })
  })

  it('asks for no move of nothing', () => {
    const plain = full({
      layeringSugarG: 0,
      layeringDays: 0,
      steepWaterMl: 0,
      sugarDraws: [],
      isPressed: false,
      finishWaterMl: 0,
      finishSugarG: 0,
      finishSpiritMl: 0,
      filters: [],
    })
    const { toExtracts, toFinish, lastJar, bottlingAtMs } = plannedMoves(plain, facts)
    const kinds = (moves: readonly Move[]) => [...new Set(moves.map(({ kind }) => kind))]
    expect(kinds(toExtracts)).toEqual(['buy', 'charge', 'pourSpirit', 'keep', 'drawOff', 'discard'])
    // A single extract stays where it is, and needs no day to be married.
    expect(toFinish).toEqual([])
    expect(lastJar.jarId).toBe('draft-extract-1')
    expect(bottlingAtMs).toBe(Date.parse(at(28 + 14 + 1)))
  })

  it('marries a single extract into the jar chosen for it', () => {
    const chosen = { shape: 'demijohn', capacityMl: 5000, jarId: 'glass' } as const
    const spec = full({ sugarDraws: [], isPressed: false })
    const { toFinish, lastJar } = plannedMoves(
      { ...spec, vessels: { ...spec.vessels, married: chosen } },
      facts,
    )
    expect(toFinish.find(({ kind }) => kind === 'marry')).toMatchObject({
      parts: [{ jarId: 'draft-extract-1' }],
      toJarId: 'glass',
    })
    expect(lastJar.jarId).toBe('glass')
  })

  it('buys a few grams to spare where the ledger would round a lot away', () => {
    const sugarBought = (massG: number) =>
      plannedMoves(full({ layeringSugarG: massG, sugarDraws: [] }), facts).toExtracts.find(
        (move) => move.kind === 'buy' && move.lotId === 'draft-sugar',
      )
    expect(sugarBought(0.9)).toMatchObject({ massG: 2 })
    expect(sugarBought(1)).toMatchObject({ massG: 1 })
    expect(sugarBought(0)).toBeUndefined()
  })
})

describe('bottlingMove', () => {
  const bottling = (waterMl: number, change: Partial<PlannedMoves> = {}) => {
    const spec = full()
    const planned = { ...plannedMoves(spec, facts), bottlingAtMs: Date.parse(at(9)), ...change }
    const moves: Move[] =
      waterMl > 0
        ? [{ kind: 'pourWater', at: at(1), batchId, jarId: 'draft-married', volumeMl: waterMl }]
        : []
    const recorded = moves.map((move) => ({
      id: 'm',
      seq: 1,
      groupId: 'g',
      recordedAt: move.at,
      version: 1,
      move,
    }))
    return bottlingMove(spec, planned, fold(recorded, facts).cellar)
  }

  it('fills as many bottles as there is liquid for', () => {
    expect(bottling(1700)).toEqual({
      kind: 'bottle',
      at: at(9),
      batchId,
      fromJarId: 'draft-married',
      bottleLotId: 'draft-bottles',
      bottleSizeMl: 500,
      count: 3,
    })
  })

  it('calls a bottle full that lacks what clings to the glass', () => {
    expect(bottling(500)).toMatchObject({ count: 1 })
    expect(bottling(499.6)).toMatchObject({ count: 1 })
    expect(bottling(499.4)).toBeUndefined()
  })

  it('fills none from a jar that is not there', () => {
    expect(bottling(0)).toBeUndefined()
  })
})

describe('purchasesOf', () => {
  const moves = () => {
    const { toExtracts, toFinish } = plannedMoves(full(), facts)
    return [...toExtracts, ...toFinish]
  }

  it('puts together what is alike, and adds the bottles', () => {
    expect(purchasesOf(full(), moves(), 4)).toStrictEqual([
      { what: 'fruit', fruitId: 'sour_cherry', massG: 1200, priceMinor: 481 },
      { what: 'fruit', fruitId: 'quince', massG: 400 },
      // 800 ml for the fruit and 50 ml for the finish.
      { what: 'spirit', strengthPctVol: 96, volumeMl: 850, priceMinor: 2550 },
      { what: 'spirit', strengthPctVol: 40, volumeMl: 400 },
      { what: 'sweetener', sweetenerId: 'sugar', massG: 600, priceMinor: 60 },
      { what: 'bottle', count: 4, volumeMl: 500, priceMinor: 220 },
    ])
  })

  it('asks for no bottles where none is filled, and for no price where none is known', () => {
    const whats = (purchases: readonly Purchase[]) => purchases.map(({ what }) => what)
    expect(whats(purchasesOf(full(), moves(), 0))).not.toContain('bottle')
    const { bottlePriceMinor: _, ...unpriced } = full()
    expect(purchasesOf(unpriced, [], 2)).toStrictEqual([
      { what: 'bottle', count: 2, volumeMl: 500 },
    ])
  })

  it('leaves acid to the tasting', () => {
    const acid: Move = { kind: 'buy', at: at(0), lotId: 'acid', goods: { kind: 'acid' }, massG: 50 }
    expect(purchasesOf(full(), [acid], 0)).toEqual([])
  })
})

describe('costOf', () => {
  const priced = (priceMinor?: number): Purchase => ({
    what: 'bottle',
    count: 1,
    ...(priceMinor !== undefined && { priceMinor }),
  })

  it('adds up the prices there are, and says whether that is all', () => {
    expect(costOf([priced(3), priced(4)])).toEqual({ costMinor: 7, isWholeCost: true })
    expect(costOf([priced(3), priced()])).toEqual({ costMinor: 3, isWholeCost: false })
    expect(costOf([priced()])).toStrictEqual({ isWholeCost: false })
    expect(costOf([])).toStrictEqual({ isWholeCost: false })
  })
})
