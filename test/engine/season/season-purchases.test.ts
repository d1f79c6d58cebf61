import { describe, expect, it } from 'vitest'
import { fruitOf } from '../../../main/engine/fruit/fruit-library.ts'
import { pricesOf } from '../../../main/engine/season/season-prices.ts'
import { seasonPurchases, type Buying } from '../../../main/engine/season/season-purchases.ts'
import { seasonTotals } from '../../../main/engine/season/season-totals.ts'
import type { SeasonPrices, SeasonPurchase } from '../../../shared/schemas/season.ts'
import { paperBatch, paperSpec } from './paper-plan.ts'

const none: SeasonPrices = { fruits: [], spirits: [] }
const prices: SeasonPrices = {
  fruits: [{ fruitId: 'sour_cherry', minorPerKg: 450 }],
  spirits: [{ strengthPctVol: 70, minorPerL: 2000 }],
  sugarMinorPerKg: 120,
  bottleMinor: 90,
  corkMinor: 20,
  labelMinor: 10,
}

const startMs = Date.parse('2027-07-05T00:00:00Z')
const buying = (change: Partial<Buying>): Buying => ({
  startMs,
  batches: [paperBatch()],
  fruitOf,
  prices: pricesOf(prices, none),
  spirits: [{ strengthPctVol: 70, atHandMl: 0 }],
  sweeteners: [{ id: 'sugar', atHandG: 0 }],
  ...change,
})

describe('seasonPurchases', () => {
  it('buys what a batch takes: its goods when it starts, its glass when it is bottled', () => {
    const cherries = {
      key: 'fruit:sour_cherry@2027-07-05',
      week: 0,
      from: '2027-07-05T00:00:00.000Z',
      batchKeys: ['sour_cherry-w0'],
    }
    // Bottled on a Wednesday nine weeks later.
    const glass = { week: 9, from: '2027-09-06T00:00:00.000Z', batchKeys: ['sour_cherry-w0'] }
    expect(seasonPurchases(buying({}))).toEqual([
      {
        ...cherries,
        key: 'fruit:sour_cherry@2027-07-05',
        shop: 'market',
        what: 'fruit',
        fruitId: 'sour_cherry',
        massG: 2000,
        priceMinor: 900,
      },
      {
        ...cherries,
        key: 'spirit:70@2027-07-05',
        shop: 'spirits',
        what: 'spirit',
        strengthPctVol: 70,
        // Poured, and the finish.
        volumeMl: 1750,
        priceMinor: 3500,
      },
      {
        ...cherries,
        key: 'sweetener:sugar@2027-07-05',
        shop: 'grocer',
        what: 'sweetener',
        sweetenerId: 'sugar',
        // Layered 100, drawn 300, finished 50.
        massG: 450,
        priceMinor: 54,
      },
      {
        ...glass,
        key: 'bottle:500@2027-09-06',
        shop: 'supplies',
        what: 'bottle',
        count: 6,
        bottleSizeMl: 500,
        priceMinor: 540,
      },
      {
        ...glass,
        key: 'cork@2027-09-06',
        shop: 'supplies',
        what: 'cork',
        count: 6,
        priceMinor: 120,
      },
      {
        ...glass,
        key: 'label@2027-09-06',
        shop: 'supplies',
        what: 'label',
        count: 6,
        priceMinor: 60,
      },
    ])
  })

  it('puts the same goods of the same week on one line, and keeps other weeks apart', () => {
    const again = paperBatch({ key: 'again' })
    const later = paperBatch({ key: 'later', week: 2, bottles: 4 })
    const lines = seasonPurchases(buying({ batches: [later, paperBatch(), again] }))
    const of = (what: string) =>
      lines.filter((line) => line.what === what).map((line) => ({ ...line }))
    expect(of('fruit')).toMatchObject([
      { week: 0, massG: 4000, priceMinor: 1800, batchKeys: ['sour_cherry-w0', 'again'] },
      { week: 2, massG: 2000, priceMinor: 900, batchKeys: ['later'] },
    ])
    expect(of('fruit')[1]!.from).toBe('2027-07-19T00:00:00.000Z')
    expect(of('spirit').map(({ volumeMl }) => volumeMl)).toEqual([3500, 1750])
    expect(of('sweetener').map(({ massG }) => massG)).toEqual([900, 450])
    expect(of('bottle')).toMatchObject([{ count: 16, priceMinor: 1440 }])
    // By weeks, and by their goods within one.
    expect(lines.map(({ key }) => key)).toEqual([
      'fruit:sour_cherry@2027-07-05',
      'spirit:70@2027-07-05',
      'sweetener:sugar@2027-07-05',
      'fruit:sour_cherry@2027-07-19',
      'spirit:70@2027-07-19',
      'sweetener:sugar@2027-07-19',
      'bottle:500@2027-09-06',
      'cork@2027-09-06',
      'label@2027-09-06',
    ])
  })

  it('uses up what the pantry has in the order of the weeks, and pays for the rest alone', () => {
    const lines = seasonPurchases(
      buying({
        batches: [
          paperBatch(),
          paperBatch({ key: 'w1', week: 1 }),
          paperBatch({ key: 'w2', week: 2 }),
        ],
        spirits: [{ strengthPctVol: 70, atHandMl: 2250 }],
        sweeteners: [{ id: 'sugar', atHandG: 600 }],
      }),
    )
    const of = (what: string) => lines.filter((line) => line.what === what)
    // 2250 mL at hand: all 1750 of the first week, which then is no line, 500 of the second.
    expect(of('spirit')).toMatchObject([
      { week: 1, volumeMl: 1250, atHandMl: 500, priceMinor: 2500 },
      { week: 2, volumeMl: 1750, priceMinor: 3500 },
    ])
    expect(of('spirit')[1]).not.toHaveProperty('atHandMl')
    expect(of('sweetener')).toMatchObject([
      { week: 1, massG: 300, atHandG: 150, priceMinor: 36 },
      { week: 2, massG: 450, priceMinor: 54 },
    ])
    expect(of('sweetener')[1]).not.toHaveProperty('atHandG')
  })

  it('leaves a price out where there is none, and fruit of the pantry altogether', () => {
    const lines = seasonPurchases(
      buying({ batches: [paperBatch({ source: 'pantry' })], prices: pricesOf(none, none) }),
    )
    expect(lines.map(({ what }) => what)).toEqual([
      'spirit',
      'sweetener',
      'bottle',
      'cork',
      'label',
    ])
    for (const line of lines) expect(line).not.toHaveProperty('priceMinor')
  })

  it('leaves out what is less than half a gram, a millilitre or a piece', () => {
    const spec = paperSpec({ layeringSugarG: 0, finishSugarG: 0, sugarDraws: [] })
    const whats = (sugarG: number) =>
      seasonPurchases(
        buying({ batches: [paperBatch({ spec: { ...spec, finishSugarG: sugarG }, bottles: 0 })] }),
      ).map(({ what }) => what)
    expect(whats(0.5)).toEqual(['fruit', 'spirit'])
    expect(whats(0.6)).toEqual(['fruit', 'spirit', 'sweetener'])
  })

  it('calls a spirit by the season’s strength, and adds the finish to the first of several', () => {
    const spec = paperSpec({
      spirits: [
        { strengthPctVol: 70.4, volumeMl: 1000 },
        { strengthPctVol: 40, volumeMl: 500 },
      ],
    })
    const lines = seasonPurchases(
      buying({
        batches: [paperBatch({ spec })],
        spirits: [
          { strengthPctVol: 96, atHandMl: 5000 },
          { strengthPctVol: 70, atHandMl: 250 },
        ],
      }),
    )
    expect(lines.filter(({ what }) => what === 'spirit')).toMatchObject([
      // 40 % vol is paid for by its ethanol: 2000 × 40/70 a litre.
      { strengthPctVol: 40, volumeMl: 500, priceMinor: Math.round((500 * 2 * 40) / 70) },
      { strengthPctVol: 70, volumeMl: 1000, atHandMl: 250, priceMinor: 2000 },
    ])
  })

  it('sends to the hedges for sloes, to the grocer for what is dry, to the market for the rest', () => {
    const shops = (fruitId: string) => {
      const fruits = [{ fruitId, massG: 100, refuseShare: 0, cut: 'whole' as const }]
      const spec = paperSpec({ fruits })
      return seasonPurchases(buying({ batches: [paperBatch({ spec })] }))[0]!.shop
    }
    for (const id of ['sloe', 'rowan', 'hawthorn', 'elderberry', 'elderflower', 'rosehip'])
      expect(shops(id), id).toBe('hedgerow')
    const dryAllYear = (['dry', 'driedFruit'] as const).map((kineticClass) => ({
      kineticClass,
      season: undefined,
    }))
    for (const change of dryAllYear) {
      const lines = seasonPurchases(buying({ fruitOf: (id) => ({ ...fruitOf(id), ...change }) }))
      expect(lines[0]!.shop).toBe('grocer')
    }
    // Dry, but with a season of its own.
    expect(shops('lemon_peel')).toBe('market')
    const juicyAllYear = (id: string) => ({ ...fruitOf(id), season: undefined })
    expect(seasonPurchases(buying({ fruitOf: juicyAllYear }))[0]!.shop).toBe('market')
  })
})

describe('seasonTotals', () => {
  it('adds up batches and lines', () => {
    const two = paperSpec({
      spirits: [
        { strengthPctVol: 96, volumeMl: 400 },
        { strengthPctVol: 70, volumeMl: 100 },
      ],
    })
    const batches = [paperBatch(), paperBatch({ spec: two, bottles: 2, fruitG: 500 })]
    const line: SeasonPurchase = {
      key: 'x',
      week: 0,
      from: '2027-07-05T00:00:00.000Z',
      shop: 'market',
      what: 'fruit',
      batchKeys: [],
    }
    const totals = seasonTotals(
      batches,
      [
        { ...line, priceMinor: 30 },
        { ...line, priceMinor: 12 },
      ],
      700,
    )
    expect(totals).toEqual({
      batches: 2,
      volumeMl: { value: 6400, low: 4800, high: 8000 },
      bottles: 8,
      shortMl: 700,
      fruitG: 2500,
      // The strongest first; the finish of 250 mL goes with the first spirit of each.
      spirits: [
        { strengthPctVol: 96, volumeMl: 650 },
        { strengthPctVol: 70, volumeMl: 1850 },
      ],
      sugarG: 900,
      moneyMinor: 42,
      isWholeMoney: true,
    })
    const { moneyMinor, isWholeMoney } = seasonTotals(
      batches,
      [{ ...line, priceMinor: 30 }, line],
      0,
    )
    expect([moneyMinor, isWholeMoney]).toEqual([30, false])
  })
})

describe('pricesOf', () => {
  it('takes what the maker expects before what was paid last, for each of the goods', () => {
    const asked: SeasonPrices = {
      fruits: [{ fruitId: 'plum', minorPerKg: 200 }],
      spirits: [{ strengthPctVol: 96, minorPerL: 1800 }],
      sugarMinorPerKg: 100,
      bottleMinor: 1,
    }
    const paid: SeasonPrices = {
      fruits: [
        { fruitId: 'plum', minorPerKg: 999 },
        { fruitId: 'quince', minorPerKg: 400 },
      ],
      spirits: [
        { strengthPctVol: 96, minorPerL: 9999 },
        { strengthPctVol: 40, minorPerL: 1000 },
      ],
      sugarMinorPerKg: 999,
      honeyMinorPerKg: 3000,
      bottleMinor: 999,
      corkMinor: 2,
      labelMinor: 3,
    }
    const made = pricesOf(asked, paid)
    expect(made.fruitMinorPerKg('plum')).toBe(200)
    expect(made.fruitMinorPerKg('quince')).toBe(400)
    expect(made.fruitMinorPerKg('sloe')).toBeUndefined()
    expect(made.sweetenerMinorPerG('sugar')).toBe(0.1)
    expect(made.sweetenerMinorPerG('honey')).toBe(3)
    expect(made.spiritMinorPerMl(96)).toBe(1.8)
    // Within a degree it is the same spirit, paid for by its strength; beyond, the first by ethanol.
    expect(made.spiritMinorPerMl(41)).toBeCloseTo(41 / 40, 12)
    expect(made.spiritMinorPerMl(41.1)).toBeCloseTo((1.8 * 41.1) / 96, 12)
    expect(made.spiritMinorPerMl(39)).toBeCloseTo(39 / 40, 12)
    expect([made.bottleMinor, made.corkMinor, made.labelMinor]).toEqual([1, 2, 3])
  })

  it('makes fruit alone dearer in a poor year, and knows no price where there is none', () => {
    const poor = pricesOf(prices, none, 1.5)
    expect(poor.fruitMinorPerKg('sour_cherry')).toBe(675)
    expect(poor.sweetenerMinorPerG('sugar')).toBe(0.12)
    const unknown = pricesOf(none, none)
    expect(unknown.spiritMinorPerMl(96)).toBeUndefined()
    expect(unknown.sweetenerMinorPerG('sugar')).toBeUndefined()
    expect(unknown.sweetenerMinorPerG('honey')).toBeUndefined()
    expect(unknown.bottleMinor).toBeUndefined()
    const own = pricesOf({ ...none, honeyMinorPerKg: 5000 }, { ...none, honeyMinorPerKg: 1 })
    expect(own.sweetenerMinorPerG('honey')).toBe(5)
  })
})
