import { describe, expect, it } from 'vitest'
import { fruitOf } from '../../../main/engine/fruit/fruit-library.ts'
import { bindingLimits, cutBy, reasonsBehind } from '../../../main/engine/season/binding-limits.ts'
import type { Reckoned } from '../../../main/engine/season/reckon-season.ts'
import { seasonNotices } from '../../../main/engine/season/season-notices.ts'
import type { SeasonQuestion } from '../../../main/engine/season/season-program.ts'
import { pricesOf } from '../../../main/engine/season/season-prices.ts'
import { easings, mostUseful } from '../../../main/engine/season/season-reliefs.ts'
import { told } from '../../../main/engine/season/told-kind.ts'
import type { SeasonPurchase, SeasonRelief } from '../../../shared/schemas/season.ts'
import { kind, supplyIn } from './paper-kind.ts'
import { paperBatch, paperSpec, paperTotals } from './paper-plan.ts'
import { cellar, jar, plainWishes, stock } from './season-cellar.ts'

describe('told', () => {
  const covered = { batches: [], shortMl: 0, cutBy: [], minorPerL: undefined }

  it('tells a kind whole, with what its own batches come to', () => {
    const batches = [paperBatch(), paperBatch({ kindId: 'quince' }), paperBatch({ bottles: 5 })]
    expect(told(kind(), { ...covered, batches, shortMl: 120, cutBy: ['jars'] })).toEqual({
      kindId: 'sour_cherry',
      stock: {
        bottledMl: 2000,
        inJarsMl: 300,
        perYearMl: { value: 5000, low: 4000, high: 6000 },
        givenShare: 0.25,
        isOwnHistory: true,
      },
      readyAt: '2028-01-01T00:00:00.000Z',
      leftThenMl: { value: 1, low: 0, high: 2 },
      needs: [{ because: 'drinking', priority: 'should', volumeMl: 5000 }],
      wantedMl: 4500,
      yield: { lPerKg: { value: 1.6, low: 1.2, high: 2 }, basis: 'recipe', batchIds: [] },
      bottleSizeMl: 500,
      plannedMl: { value: 6400, low: 4800, high: 8000 },
      bottles: 11,
      shortMl: 120,
      cutBy: ['jars'],
      // 2 L for six weeks and 1.7 L for three, on a kg that gives 1.6 L.
      jarLWeeksPerL: (2 * 6 + 1.7 * 3) / 1.6,
    })
  })

  it('adds what it knows beyond: when stock runs dry, at most, price, and where the yield is from', () => {
    const { demand } = kind()
    const one = kind({
      demand: { ...demand, runsDryMs: Date.parse('2027-05-01T00:00:00Z'), atMostMl: 4500 },
      yieldBatchIds: ['x', 'y'],
      known: { kindId: 'sour_cherry', spec: paperSpec(), recipeId: 'house', batchId: 'last' },
    })
    expect(told(one, { ...covered, minorPerL: 900 })).toMatchObject({
      runsDryAt: '2027-05-01T00:00:00.000Z',
      atMostMl: 4500,
      yield: { basis: 'own', batchIds: ['x', 'y'], recipeId: 'house', likeBatchId: 'last' },
      minorPerL: 900,
    })
    const known = { kindId: 'sour_cherry', spec: paperSpec() }
    const { yield: bare } = told(kind({ known }), covered)
    expect(Object.keys(bare)).toEqual(['lPerKg', 'basis', 'batchIds'])
  })

  it('takes no room where there is no recipe or no yield', () => {
    expect(told(kind({ recipe: undefined }), covered).jarLWeeksPerL).toBe(0)
    const none = { value: 0, low: 0, high: 0 }
    expect(told(kind({ lPerKg: none }), covered).jarLWeeksPerL).toBe(0)
  })
})

/** A question that asks for nothing, in the jars of the made up cellar. */
const emptyQuestion: SeasonQuestion = {
  kinds: [],
  ways: [],
  classes: [],
  taken: [],
  mustSettle: [],
  cleaningWeeks: 1,
  spirits: [],
  sweeteners: [],
  minorPerBottle: 0,
  moneyMinor: undefined,
  shelfBottles: undefined,
}
const solved = { loads: [], settled: [], sum: 0, bound: 0, gapShare: 0, isProven: true }
const reckoned = (change: Partial<Reckoned> = {}): Reckoned => ({
  asked: {
    question: emptyQuestion,
    prices: pricesOf(plainWishes.prices, plainWishes.prices),
    spirits: [],
    sweeteners: [],
    tooLittle: new Set(),
  },
  solved,
  plannedMl: [],
  shortMl: [],
  placed: { loads: [], spans: [] },
  batches: [],
  purchases: [],
  totals: paperTotals(),
  ...change,
})

describe('seasonNotices', () => {
  const codes = (change: Partial<Reckoned>, facts = cellar(), kinds = [kind()]) =>
    seasonNotices(facts, kinds, reckoned(change), []).map(({ code }) => code)
  const line: SeasonPurchase = {
    key: 'k',
    week: 0,
    from: '2027-07-05T00:00:00.000Z',
    shop: 'market',
    what: 'fruit',
    batchKeys: [],
  }

  it('is silent on a plan that lacks nothing', () => {
    const priced = { purchases: [{ ...line, priceMinor: 1 }] }
    expect(codes(priced)).toEqual([])
    expect(codes({})).toEqual([])
  })

  it('says that jars, history, wishes, prices or time were lacking', () => {
    const unknown = { ...stock('plum', 0, 0), isOwnHistory: false }
    expect(codes({}, cellar({ jars: [] }))).toEqual(['noJars'])
    expect(codes({}, cellar({ stocks: [unknown] }))).toEqual(['noHistory'])
    expect(codes({}, cellar({ stocks: [unknown, stock('quince', 0, 1)] }))).toEqual([])
    const sated = kind({ demand: { ...kind().demand, wantedMl: 0 } })
    expect(codes({}, cellar(), [sated])).toEqual(['nothingWanted'])
    expect(codes({}, cellar(), [sated, kind()])).toEqual([])
    expect(codes({ purchases: [line] })).toEqual(['noPrices'])
    const some = {
      purchases: [line, { ...line, priceMinor: 5 }],
      totals: paperTotals({ isWholeMoney: false }),
    }
    expect(codes(some)).toEqual(['somePricesMissing'])
    expect(codes({ solved: { ...solved, isProven: false } })).toEqual(['timeUp'])
  })

  it('names the batches without a jar, and kinds too small for any, after what it was told of kinds', () => {
    const must = (batchId: string) => ({ batchId, fromWeek: 0, toWeek: 2, volumeMl: 900 })
    const made = reckoned({
      asked: {
        ...reckoned().asked,
        question: { ...emptyQuestion, mustSettle: [must('a'), must('b'), must('c')] },
        tooLittle: new Set(['quince']),
      },
      solved: {
        ...solved,
        settled: [
          { jars: [], homelessMl: 900 },
          { jars: [], homelessMl: 1 },
          { jars: [], homelessMl: 1.1 },
        ],
      },
    })
    const refused = { code: 'recipeRefused', kindId: 'plum' } as const
    expect(seasonNotices(cellar(), [kind()], made, [refused])).toEqual([
      { code: 'standingWithoutJar', batchId: 'a' },
      { code: 'standingWithoutJar', batchId: 'c' },
      refused,
      { code: 'tooLittleForAnyJar', kindId: 'quince' },
    ])
  })
})

describe('bindingLimits', () => {
  const other = kind({ fruit: fruitOf('quince'), supply: supplyIn([30]) })
  const facts = cellar({
    jars: [jar('a', 3000), jar('b', 3000), jar('c', 5000)],
    wishes: {
      ...plainWishes,
      limits: { isSpiritAtHandOnly: true, moneyMinor: 5000, shelfBottles: 20 },
    },
  })
  const spans = (jarIds: readonly string[], fromWeek: number, toWeek: number) =>
    jarIds.map((jarId) => ({ jarId, fromWeek, toWeek, use: 'steep' as const, fillMl: 1 }))

  it('tells how much of money, shelf and spirit is used, and whom each keeps short', () => {
    const made = reckoned({
      asked: {
        ...reckoned().asked,
        spirits: [
          { strengthPctVol: 96, atHandMl: 1000 },
          { strengthPctVol: 70, atHandMl: 500 },
        ],
      },
      totals: paperTotals({
        moneyMinor: 4900,
        bottles: 19,
        spirits: [
          { strengthPctVol: 96, volumeMl: 990 },
          { strengthPctVol: 70, volumeMl: 480 },
        ],
      }),
    })
    const reasons = [['money', 'spirit'], ['shelf', 'money', 'fruitWeeks'], []] as const
    expect(bindingLimits(facts, [kind(), other, kind()], made, reasons)).toEqual([
      {
        limit: 'money',
        used: 4900,
        of: 5000,
        unit: 'minor',
        weeks: [],
        kindIds: ['sour_cherry', 'quince'],
      },
      { limit: 'shelf', used: 19, of: 20, unit: 'bottles', weeks: [], kindIds: ['quince'] },
      { limit: 'spirit', used: 1470, of: 1500, unit: 'ml', weeks: [], kindIds: ['sour_cherry'] },
      { limit: 'fruitWeeks', used: 0, of: 0, unit: 'weeks', weeks: [], kindIds: ['quince'] },
    ])
    expect(bindingLimits(facts, [kind()], made, [[]])).toEqual([])
  })

  it('names the size of which every jar is taken while a batch of the kind could stand there', () => {
    // Both jars of 3 L in weeks 16 and 17; a batch begun in week 10 stands until week 18.
    const made = reckoned({
      placed: { loads: [], spans: [...spans(['a'], 12, 18), ...spans(['b'], 16, 30)] },
    })
    const reasons = [['jars'], ['jars']] as const
    expect(bindingLimits(facts, [kind(), other], made, reasons)).toEqual([
      {
        limit: 'jars',
        used: 2,
        of: 2,
        unit: 'jars',
        capacityMl: 3000,
        weeks: [16, 17],
        kindIds: ['sour_cherry'],
      },
      // Quince, from week 30 on, finds no size full: no two jars at once.
      { limit: 'jars', used: 3, of: 3, unit: 'jars', weeks: [], kindIds: ['quince'] },
    ])
    expect(bindingLimits(facts, [kind(), other], made, [['jars'], []])).toHaveLength(1)
    expect(bindingLimits({ ...facts, jars: [] }, [kind()], made, [['jars']])).toEqual([])
  })

  it('counts the weeks of a batch from its first to the one before it is bottled', () => {
    const isNamed = (fromWeek: number, toWeek: number) => {
      const made = reckoned({ placed: { loads: [], spans: spans(['c'], fromWeek, toWeek) } })
      const [first] = bindingLimits(facts, [kind()], made, [['jars']])
      return first?.capacityMl === 5000
    }
    // Eight weeks, from week 10 to week 17.
    expect([isNamed(9, 10), isNamed(10, 11), isNamed(17, 18), isNamed(18, 19)]).toEqual([
      false,
      true,
      true,
      false,
    ])
    // The same jar twice is still one of two.
    const twice = reckoned({
      placed: { loads: [], spans: [...spans(['a'], 10, 14), ...spans(['a'], 10, 14)] },
    })
    expect(bindingLimits(facts, [kind()], twice, [['jars']])).toMatchObject([{ weeks: [] }])
    const unmade = bindingLimits(
      facts,
      [kind({ recipe: undefined })],
      reckoned({ placed: { loads: [], spans: spans(['c'], 0, 52) } }),
      [['jars']],
    )
    expect(unmade).toEqual([
      { limit: 'jars', used: 3, of: 3, unit: 'jars', weeks: [], kindIds: ['sour_cherry'] },
    ])
  })
})

describe('reasonsBehind', () => {
  it('has none for what is not short, and too little where that was found before', () => {
    const question = {
      ...emptyQuestion,
      kinds: ['sour_cherry', 'quince', 'plum'].map((kindId) => ({
        kindId,
        tiers: [],
        wantedL: 2,
        bottleSizeMl: 500,
      })),
    }
    const made = reckoned({
      asked: { ...reckoned().asked, question, tooLittle: new Set(['quince']) },
      shortMl: [0, 800, 900],
    })
    const kinds = [kind(), kind({ fruit: fruitOf('quince') }), kind({ fruit: fruitOf('plum') })]
    // Nobody knows a way to make plum here.
    expect(reasonsBehind(kinds, made)).toEqual([[], ['tooLittle'], ['recipe']])
  })
})

describe('cutBy', () => {
  it('adds the wish where it keeps a kind below what is needed', () => {
    const { demand } = kind()
    const atMost = (atMostMl: number | undefined) => kind({ demand: { ...demand, atMostMl } })
    expect(cutBy(atMost(4999), ['jars'])).toEqual(['jars', 'wish'])
    expect(cutBy(atMost(5000), ['jars'])).toEqual(['jars'])
    expect(cutBy(atMost(undefined), [])).toEqual([])
    const two = kind({
      demand: {
        ...demand,
        needs: [...demand.needs, { because: 'gift', priority: 'must', volumeMl: 500 }],
        atMostMl: 5200,
      },
    })
    expect(cutBy(two, [])).toEqual(['wish'])
  })
})

describe('easings', () => {
  it('asks for one more jar of each size and two weeks, and for each limit in force', () => {
    const jars = [jar('a', 5000), jar('b', 3000), jar('c', 3000), jar('d', 5000, 'demijohn')]
    const jarsAndWeeks = [
      { eases: 'jars', unit: 'jarMl', by: 3000, otherwise: { moreJarMl: 3000 } },
      { eases: 'jars', unit: 'jarMl', by: 5000, otherwise: { moreJarMl: 5000 } },
      { eases: 'fruitWeeks', unit: 'weeks', by: 2, otherwise: { seasonWeeks: 2 } },
    ]
    expect(easings({ facts: cellar({ jars }) })).toEqual(jarsAndWeeks)
    const limits = { isSpiritAtHandOnly: true, moneyMinor: 0, shelfBottles: 0 }
    const wishes = { ...plainWishes, limits }
    expect(easings({ facts: cellar({ jars, wishes }) })).toEqual([
      ...jarsAndWeeks.slice(0, 2),
      { eases: 'money', unit: 'minor', by: 10_000, otherwise: { moreMoneyMinor: 10_000 } },
      { eases: 'shelf', unit: 'bottles', by: 12, otherwise: { moreBottles: 12 } },
      { eases: 'spirit', unit: 'ml', by: 1000, otherwise: { moreSpiritMl: 1000 } },
      jarsAndWeeks[2],
    ])
  })
})

describe('mostUseful', () => {
  it('puts what brings most first, and keeps one size of jar: the smallest of those that bring as much', () => {
    const relief = (eases: SeasonRelief['eases'], by: number, gainsMl: number): SeasonRelief => ({
      eases,
      unit: 'jarMl',
      by,
      gainsMl,
      costsMinor: 0,
      kinds: [],
      isProven: true,
    })
    const given = [
      relief('jars', 2000, 500),
      relief('money', 10_000, 300),
      relief('jars', 5000, 900),
      relief('jars', 3000, 900),
      relief('shelf', 12, 2000),
    ]
    expect(mostUseful(given).map(({ eases, by }) => [eases, by])).toEqual([
      ['shelf', 12],
      ['jars', 3000],
      ['money', 10_000],
    ])
    expect(mostUseful([])).toEqual([])
    expect(given[0]!.by).toBe(2000)
  })
})
