import { describe, expect, it } from 'vitest'
import { fruitOf } from '../../../main/engine/fruit/fruit-library.ts'
import type { DraftFacts } from '../../../main/engine/drafting/buying.ts'
import { placed, shareOf } from '../../../main/engine/season/placed-loads.ts'
import { seasonBatch } from '../../../main/engine/season/season-batches.ts'
import { startWeeks } from '../../../main/engine/season/season-kinds.ts'
import type { Load } from '../../../main/engine/season/season-program.ts'
import { jarClasses, seasonQuestion } from '../../../main/engine/season/season-question.ts'
import { spiritSupplies, sweetenerSupplies } from '../../../main/engine/season/season-supplies.ts'
import { pricesOf } from '../../../main/engine/season/season-prices.ts'
import type { Supply } from '../../../shared/schemas/season.ts'
import { handQuestion } from './hand-question.ts'
import { kind, recipe, supplyIn } from './paper-kind.ts'
import { cellar, jar, plainWishes } from './season-cellar.ts'

/** The facts of a season begin on a Wednesday; its week 0 on Monday, 2026-11-23. */
const mondayMs = Date.parse('2026-11-23T00:00:00Z')
const weekMs = 7 * 86_400_000
const everyFourth = Array.from({ length: 13 }, (_, index) => ({
  week: 4 * index,
  weeksFromPlenty: 0,
}))

describe('startWeeks', () => {
  const cherry = fruitOf('sour_cherry')
  const starts = (weeks: readonly Supply[], seasonWeeks?: number) =>
    startWeeks({ fruit: cherry, supply: weeks }, seasonWeeks).map(
      ({ week, weeksFromPlenty }) => [week, weeksFromPlenty] as const,
    )

  it('starts in likely weeks and weeks of plenty, and tells how far off plenty they lie', () => {
    const weeks: Supply[] = [
      'none',
      'maybe',
      'likely',
      'likely',
      'plenty',
      'likely',
      'maybe',
      'none',
    ]
    expect(starts(weeks)).toEqual([
      [2, 2],
      [3, 1],
      [4, 0],
      [5, 1],
    ])
    // A season without plenty is as good in each week.
    expect(starts(['none', 'likely', 'likely'])).toEqual([
      [1, 0],
      [2, 0],
    ])
    expect(starts(['none', 'maybe'])).toEqual([])
  })

  it('is longer or shorter at either end of each stretch when asked so', () => {
    const weeks: Supply[] = ['none', 'none', 'plenty', 'plenty', 'plenty', 'none', 'none', 'none']
    const only = (by: number) => starts(weeks, by).map(([week]) => week)
    expect([only(0), only(1), only(-1), only(2), only(-2)]).toEqual([
      [2, 3, 4],
      [1, 2, 3, 4, 5],
      [3],
      [0, 1, 2, 3, 4, 5, 6],
      [],
    ])
  })

  it('takes nine weeks of a long season at most, the first among them', () => {
    const long = (count: number) =>
      starts(Array.from({ length: 52 }, (_, week) => (week < count ? 'plenty' : 'none')))
    expect(long(9).map(([week]) => week)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8])
    expect(long(10).map(([week]) => week)).toEqual([0, 2, 4, 6, 8])
    expect(long(27).map(([week]) => week)).toEqual([0, 3, 6, 9, 12, 15, 18, 21, 24])
  })

  it('starts every fourth week where it is sold all year', () => {
    expect(startWeeks({ fruit: fruitOf('ginger'), supply: [] })).toEqual(everyFourth)
  })
})

describe('jarClasses', () => {
  it('puts jars of one size and width together, the smallest first, the wide before the narrow', () => {
    const jars = [
      jar('a', 5000, 'demijohn'),
      jar('b', 5000),
      jar('c', 2000),
      jar('d', 5000, 'crock'),
      jar('e', 5000, 'flask'),
    ]
    expect(jarClasses({ jars })).toEqual([
      { capacityMl: 2000, isWide: true, jarIds: ['c'] },
      { capacityMl: 5000, isWide: true, jarIds: ['b', 'd'] },
      { capacityMl: 5000, isWide: false, jarIds: ['a', 'e'] },
    ])
    expect(jarClasses({ jars: [] })).toEqual([])
  })

  it('adds one more jar to the first class of its size alone', () => {
    const jars = [jar('a', 5000, 'demijohn'), jar('b', 5000), jar('c', 2000)]
    expect(jarClasses({ jars }, 5000).map(({ jarIds }) => jarIds)).toEqual([
      ['c'],
      ['b', 'one-more'],
      ['a'],
    ])
    expect(jarClasses({ jars }, 3000).flatMap(({ jarIds }) => jarIds)).not.toContain('one-more')
  })
})

describe('season supplies', () => {
  const pouring = (...strengths: number[]) => ({
    ...recipe,
    spirits: strengths.map((strengthPctVol) => ({ strengthPctVol, mlPerKg: 100 })),
  })

  it('gives a lot to the strongest recipe that it can be cut down to, by its ethanol', () => {
    const supplies = spiritSupplies([pouring(40), pouring(96, 70.4), pouring(70)], {
      fruits: [],
      sweeteners: [],
      spirits: [
        { strengthPctVol: 96, volumeMl: 1000 },
        { strengthPctVol: 95.4, volumeMl: 704 },
        { strengthPctVol: 69.9, volumeMl: 500 },
        { strengthPctVol: 55, volumeMl: 800 },
        { strengthPctVol: 30, volumeMl: 999 },
      ],
    })
    expect(supplies.map(({ strengthPctVol }) => strengthPctVol)).toEqual([96, 70.4, 40])
    expect(supplies[0]!.atHandMl).toBe(1000)
    // 95.4 is more than half a degree short of 96; 69.9 is just half a degree short of 70.4.
    expect(supplies[1]!.atHandMl).toBeCloseTo((704 * 95.4 + 500 * 69.9) / 70.4, 9)
    expect(supplies[2]!.atHandMl).toBeCloseTo((800 * 55) / 40, 9)
  })

  it('tells sugar and honey apart, and only those that a recipe takes', () => {
    const honeyed = { ...recipe, sweetener: { id: 'honey' as const, gPerKg: 1 } }
    const pantry = {
      fruits: [],
      spirits: [],
      sweeteners: [
        { id: 'honey' as const, massG: 300 },
        { id: 'sugar' as const, massG: 1000 },
        { id: 'honey' as const, massG: 50 },
      ],
    }
    expect(sweetenerSupplies([honeyed, recipe], pantry)).toEqual([
      { id: 'sugar', atHandG: 1000 },
      { id: 'honey', atHandG: 350 },
    ])
    expect(sweetenerSupplies([honeyed], pantry)).toEqual([{ id: 'honey', atHandG: 350 }])
    expect(sweetenerSupplies([], pantry)).toEqual([])
  })
})

describe('seasonQuestion', () => {
  const facts = cellar({
    jars: [jar('a', 2000), jar('b', 2000), jar('c', 4000, 'demijohn')],
    pantry: {
      fruits: [
        { fruitId: 'sour_cherry', massG: 150 },
        { fruitId: 'sour_cherry', massG: 100 },
        { fruitId: 'quince', massG: 5000 },
      ],
      spirits: [{ strengthPctVol: 70, volumeMl: 900 }],
      sweeteners: [{ id: 'sugar', massG: 400 }],
    },
  })
  const tiers = [{ priority: 'should', isSure: true, volumeMl: 4500 }] as const
  const cherry = kind({ demand: { ...kind().demand, tiers } })

  it('puts a kind as its ways: bought fresh in its weeks, or from the pantry in any', () => {
    const { question, tooLittle } = seasonQuestion(facts, [cherry])
    const way = {
      kindIndex: 0,
      lPerKg: 1.6,
      steepMlPerKg: 2000,
      settleMlPerKg: 1700,
      emptiedWeek: 6,
      settleFromWeek: 5,
      settleToWeek: 8,
      spiritMlPerKg: [800],
      sweetenerGPerKg: [200],
    }
    expect(question.ways).toEqual([
      {
        ...way,
        source: 'fresh',
        starts: [{ week: 10, weeksFromPlenty: 0 }],
        mostKg: Infinity,
        fruitMinorPerKg: 450,
      },
      { ...way, source: 'pantry', starts: everyFourth, mostKg: 0.25, fruitMinorPerKg: 0 },
    ])
    expect(question.kinds).toEqual([
      { kindId: 'sour_cherry', tiers, wantedL: 4.5, bottleSizeMl: 500 },
    ])
    expect(question).toMatchObject({
      taken: [],
      mustSettle: [],
      cleaningWeeks: 1,
      sweeteners: [{ atHand: 400, minorPerUnit: 0.12, mayBuy: true }],
      minorPerBottle: 120,
      moneyMinor: undefined,
      shelfBottles: undefined,
    })
    expect(question.spirits).toHaveLength(1)
    expect(question.spirits[0]).toMatchObject({ atHand: 900, mayBuy: true })
    expect(question.spirits[0]!.minorPerUnit).toBeCloseTo((1.8 * 70) / 96, 12)
    expect([...tooLittle]).toEqual([])
  })

  it('rounds weeks so that no jar is promised too soon', () => {
    const odd = { ...recipe, drawnDay: 36, emptiedDay: 43, bottledDay: 57 }
    expect(seasonQuestion(facts, [kind({ recipe: odd })]).question.ways[0]).toMatchObject({
      settleFromWeek: 5,
      emptiedWeek: 7,
      settleToWeek: 9,
    })
  })

  it('begins no batch with less than 200 g from the pantry, nor a mixed one', () => {
    const sources = (massG: number, fruits = recipe.fruits) =>
      seasonQuestion(
        { ...facts, pantry: { ...facts.pantry, fruits: [{ fruitId: 'sour_cherry', massG }] } },
        [kind({ recipe: { ...recipe, fruits } })],
      ).question.ways.map(({ source }) => source)
    expect(sources(199)).toEqual(['fresh'])
    expect(sources(200)).toEqual(['fresh', 'pantry'])
    const mixed = [
      { fruitId: 'sour_cherry', share: 0.75 },
      { fruitId: 'raspberry', share: 0.25 },
    ]
    expect(sources(5000, mixed)).toEqual(['fresh'])
    // Three quarters at 450 and one at 900; what has no price costs nothing.
    const priceOf = (fruits: typeof mixed) =>
      seasonQuestion(facts, [kind({ recipe: { ...recipe, fruits } })]).question.ways[0]!
        .fruitMinorPerKg
    expect(priceOf(mixed)).toBe(562.5)
    expect(priceOf([mixed[0]!, { fruitId: 'sloe', share: 0.25 }])).toBe(337.5)
  })

  it('has no way for a kind without a recipe', () => {
    const { question } = seasonQuestion(facts, [kind({ recipe: undefined }), cherry])
    expect(question.ways.map(({ kindIndex }) => kindIndex)).toEqual([1, 1])
    expect(question.kinds).toHaveLength(2)
  })

  it('pours for each spirit what a recipe wants of it, and sweetens with its own', () => {
    const other = {
      ...recipe,
      spirits: [
        { strengthPctVol: 96, mlPerKg: 300 },
        { strengthPctVol: 70.3, mlPerKg: 50 },
        { strengthPctVol: 69.8, mlPerKg: 5 },
      ],
      sweetener: { id: 'honey' as const, gPerKg: 80 },
    }
    const { question, spirits, sweeteners } = seasonQuestion(facts, [
      cherry,
      kind({ fruit: fruitOf('quince'), recipe: other, supply: supplyIn([40]) }),
    ])
    expect(spirits.map(({ strengthPctVol }) => strengthPctVol)).toEqual(
      [96, 70.3, 69.8].slice(0, 2),
    )
    expect(sweeteners.map(({ id }) => id)).toEqual(['sugar', 'honey'])
    const [first, , second] = question.ways
    expect([first!.spiritMlPerKg, first!.sweetenerGPerKg]).toEqual([
      [0, 800],
      [200, 0],
    ])
    expect([second!.spiritMlPerKg, second!.sweetenerGPerKg]).toEqual([
      [300, 55],
      [0, 80],
    ])
  })

  it('asks nothing of a kind that would fill no two jars even twice over, and says so', () => {
    // Two jars of 2 L: 0.4 kg to steep, 0.4 × 2000/1700 to settle: 0.753 L.
    const leastMl = (0.4 * 2000 * 1.6) / 1.7
    const wanting = (wantedMl: number, jars = facts.jars) => {
      const one = kind({ demand: { ...cherry.demand, wantedMl } })
      const { question, tooLittle } = seasonQuestion({ ...facts, jars }, [one])
      return [[...tooLittle], question.kinds[0]!.wantedL, question.kinds[0]!.tiers.length] as const
    }
    expect(wanting(leastMl / 2 - 1)).toEqual([['sour_cherry'], 0, 0])
    expect(wanting(leastMl / 2 + 1)).toEqual([[], (leastMl / 2 + 1) / 1000, 1])
    expect(wanting(0)).toEqual([[], 0, 1])
    // Without two jars it is jars that lack.
    expect(wanting(100, [jar('a', 2000)])).toEqual([[], 0.1, 1])
  })

  it('eases a limit when asked otherwise, and none that is not set', () => {
    const limits = { isSpiritAtHandOnly: true, moneyMinor: 5000, shelfBottles: 20 }
    const limited = { ...facts, wishes: { ...plainWishes, limits } }
    const otherwise = {
      moreMoneyMinor: 100,
      moreBottles: 12,
      moreSpiritMl: 1000,
      moreJarMl: 2000,
      seasonWeeks: 1,
      fruitPrice: 2,
    }
    const { question, prices } = seasonQuestion(limited, [cherry], otherwise)
    expect(question).toMatchObject({ moneyMinor: 5100, shelfBottles: 32 })
    expect(question.spirits[0]).toMatchObject({ atHand: 1900, mayBuy: false })
    expect(question.classes[0]!.jarIds).toEqual(['a', 'b', 'one-more'])
    expect(question.ways[0]!.starts.map(({ week }) => week)).toEqual([9, 10, 11])
    expect(question.ways[0]!.fruitMinorPerKg).toBe(900)
    expect(prices.fruitMinorPerKg('sour_cherry')).toBe(900)
    const same = seasonQuestion(limited, [cherry]).question
    expect(same).toMatchObject({ moneyMinor: 5000, shelfBottles: 20 })
    expect(same.spirits[0]!.atHand).toBe(900)
    const free = seasonQuestion(facts, [cherry], otherwise).question
    expect([free.moneyMinor, free.shelfBottles]).toEqual([undefined, undefined])
    const bare = { ...plainWishes, prices: { fruits: [], spirits: [] } }
    const unpriced = seasonQuestion({ ...facts, wishes: bare }, [cherry]).question
    expect([unpriced.minorPerBottle, unpriced.ways[0]!.fruitMinorPerKg]).toEqual([0, 0])
    expect([unpriced.spirits[0]!.minorPerUnit, unpriced.sweeteners[0]!.minorPerUnit]).toEqual([
      0, 0,
    ])
  })

  it('counts the weeks of today’s batches from Monday, whole ones, and forgets what is over', () => {
    const at = (weeks: number) => mondayMs + weeks * weekMs
    const standing = (jarId: string, weeks: number) => ({
      jarId,
      batchId: 'old',
      untilMs: at(weeks),
      fillMl: 1,
    })
    const settle = (batchId: string, from: number, until: number) => ({
      batchId,
      fromMs: at(from),
      untilMs: at(until),
      volumeMl: 700,
    })
    const { question } = seasonQuestion(
      {
        ...facts,
        standing: {
          jars: [
            standing('c', 2.1),
            standing('a', 3),
            standing('b', 0),
            standing('gone', 5),
            standing('b', -1),
          ],
          settles: [settle('x', 1.9, 3.1), settle('y', -2, 1), settle('z', -3, -1)],
          toCome: [],
        },
      },
      [cherry],
    )
    expect(question.taken).toEqual([
      { classIndex: 1, untilWeek: 3 },
      { classIndex: 0, untilWeek: 3 },
    ])
    expect(question.mustSettle).toEqual([
      { batchId: 'x', fromWeek: 1, toWeek: 4, volumeMl: 700 },
      { batchId: 'y', fromWeek: 0, toWeek: 1, volumeMl: 700 },
    ])
  })
})

describe('placed', () => {
  const load = (change: Partial<Load> = {}): Load => ({
    wayIndex: 0,
    week: 2,
    kg: 0.8,
    steep: [1, 0],
    settle: [1, 0],
    ...change,
  })
  const solved = (loads: Load[], settled: { jars: number[]; homelessMl: number }[] = []) => ({
    loads,
    settled,
    sum: 0,
    bound: 0,
    gapShare: 0,
    isProven: true,
  })
  const facts = cellar({ jars: [jar('a', 2000), jar('b', 2000), jar('c', 4000, 'demijohn')] })

  it('hands out jars week by week, each washed after it', () => {
    const question = handQuestion({
      mustSettle: [{ batchId: 'old', fromWeek: 40, toWeek: 42, volumeMl: 3000 }],
    })
    const made = placed(
      question,
      solved(
        [load(), load({ wayIndex: 1, week: 20, kg: 1.5, steep: [0, 1], settle: [2, 0] })],
        [{ jars: [1, 1], homelessMl: 0 }],
      ),
      facts,
    )
    expect(
      made.loads.map(({ key, steepJarIds, settleJarIds }) => [key, steepJarIds, settleJarIds]),
    ).toEqual([
      ['cheap-w2', ['a'], ['b']],
      // The one left last first.
      ['cheap-w20-pantry', ['c'], ['b', 'a']],
    ])
    const span = (jarId: string, fromWeek: number, toWeek: number, more: object) => [
      { jarId, fromWeek, toWeek, ...more },
      { jarId, fromWeek: toWeek, toWeek: toWeek + 1, use: 'cleaning', fillMl: 0 },
    ]
    const [first, second] = ['cheap-w2', 'cheap-w20-pantry']
    const bySpan = (one: { jarId: string; fromWeek: number }) => `${one.jarId} ${one.fromWeek}`
    const inOrder = <T extends { jarId: string; fromWeek: number }>(all: readonly T[]) =>
      [...all].sort((a, b) => (bySpan(a) < bySpan(b) ? -1 : 1))
    expect(inOrder(made.spans)).toEqual(
      inOrder(
        [
          // 3 L of today's, by the size of the two jars.
          span('a', 40, 42, { use: 'standingSettle', batchId: 'old', fillMl: 1000 }),
          span('c', 40, 42, { use: 'standingSettle', batchId: 'old', fillMl: 2000 }),
          span('a', 2, 6, { use: 'steep', batchKey: first, fillMl: 1600 }),
          span('b', 5, 8, { use: 'settle', batchKey: first, fillMl: 1280 }),
          span('c', 20, 24, { use: 'steep', batchKey: second, fillMl: 2400 }),
          span('a', 23, 26, { use: 'settle', batchKey: second, fillMl: 1500 }),
          span('b', 23, 26, { use: 'settle', batchKey: second, fillMl: 1500 }),
        ].flat(),
      ),
    )
    const unwashed = placed({ ...question, cleaningWeeks: 0 }, solved([load()]), facts)
    expect(unwashed.spans.map(({ use }) => use)).toEqual(['steep', 'settle'])
  })

  it('leaves the jars of today’s batches to them, and tells what stands there', () => {
    const standing = (jarId: string, weeks: number) => ({
      jarId,
      batchId: `old-${jarId}`,
      untilMs: mondayMs + weeks * weekMs,
      fillMl: 1800,
    })
    const taken = {
      ...facts,
      standing: {
        jars: [standing('a', 3.5), standing('b', 0), standing('gone', 9)],
        settles: [],
        toCome: [],
      },
    }
    const made = placed(handQuestion(), solved([load({ settle: [0, 1] })]), taken)
    expect(made.spans[0]).toEqual({
      jarId: 'a',
      fromWeek: 0,
      toWeek: 4,
      use: 'standing',
      batchId: 'old-a',
      fillMl: 1800,
    })
    expect(made.spans.filter(({ use }) => use === 'standing')).toHaveLength(1)
    expect(made.loads[0]!.steepJarIds).toEqual(['b'])
  })

  it('shares by size, and gives nothing where no jar is known', () => {
    const capacityOf = new Map([
      ['a', 2000],
      ['c', 4000],
    ])
    expect(shareOf(3000, 'a', ['a', 'c'], capacityOf)).toBe(1000)
    expect(shareOf(3000, 'x', ['a', 'c'], capacityOf)).toBe(0)
    expect(shareOf(3000, 'a', [], capacityOf)).toBe(0)
    expect(shareOf(3000, 'x', ['x'], capacityOf)).toBe(0)
  })
})

describe('seasonBatch', () => {
  const draftFacts: DraftFacts = { fruitOf }
  const jars = [
    jar('a', 2000),
    jar('b', 2000),
    jar('c', 4000, 'demijohn'),
    jar('d', 1000),
    jar('e', 1000),
    jar('f', 1000),
    jar('g', 1000),
  ]
  const facts = cellar({ jars })
  const [way] = seasonQuestion(facts, [kind()]).question.ways
  const made = (
    change: { source?: 'pantry'; steepJarIds?: string[]; settleJarIds?: string[] } = {},
    bottleSizeMl = 500,
    priced = plainWishes.prices,
  ) =>
    seasonBatch(
      {
        load: { wayIndex: 0, week: 10, kg: 1.5, steep: [], settle: [] },
        way: { ...way!, source: change.source ?? 'fresh' },
        key: 'sour_cherry-w10',
        steepJarIds: change.steepJarIds ?? ['a', 'c'],
        settleJarIds: change.settleJarIds ?? ['b', 'c'],
      },
      {
        facts,
        kinds: [kind({ bottleSizeMl })],
        prices: pricesOf(priced, { fruits: [], spirits: [] }),
        draftFacts,
      },
    )

  it('fills its jars by their size and promises by its yield', () => {
    const batch = made()
    expect(batch).toMatchObject({
      key: 'sour_cherry-w10',
      kindId: 'sour_cherry',
      source: 'fresh',
      week: 10,
      fruitG: 1500,
      bottleSizeMl: 500,
      // 2.4 L in bottles of half a litre.
      bottles: 4,
      startAt: '2027-02-01T00:00:00.000Z',
      // Day 35.
      drawnAt: '2027-03-08T00:00:00.000Z',
    })
    expect(batch.volumeMl.value).toBeCloseTo(2400, 9)
    expect(batch.volumeMl.low).toBeCloseTo(1800, 9)
    expect(batch.volumeMl.high).toBeCloseTo(3000, 9)
    // 3 L to steep in 2 and 4 L, 2.55 L to settle in 2 and 4 L.
    expect(batch.steepJars).toEqual([
      { jarId: 'a', fillMl: 1000, fillShare: 0.5, fruitG: 500 },
      { jarId: 'c', fillMl: 2000, fillShare: 0.5, fruitG: 1000 },
    ])
    expect(batch.settleJars).toEqual([
      { jarId: 'b', fillMl: 850, fillShare: 0.425 },
      { jarId: 'c', fillMl: 1700, fillShare: 0.425 },
    ])
    // Sour cherry rests half a year.
    const restDays = (Date.parse(batch.readyAt) - Date.parse(batch.bottledAt)) / 86_400_000
    expect(restDays).toBeCloseTo(6 * 30.44, 5)
    expect(batch.bottledAt > batch.drawnAt).toBe(true)
    expect(made({}, 240).bottles).toBe(10)
  })

  it('writes the draft out: its fruit, prices, bottles and day', () => {
    const { spec } = made()
    expect(spec.startAt).toBe('2027-02-01T00:00:00.000Z')
    expect(spec.fruits).toEqual([
      {
        fruitId: 'sour_cherry',
        massG: 1500,
        refuseShare: 0.1,
        cut: 'pricked',
        priceMinorPerKg: 450,
      },
    ])
    // 1.5 L to 2 kg, as the recipe has it.
    expect(spec.spirits[0]!.volumeMl).toBeCloseTo(1125, 0)
    expect(spec.spirits[0]!.priceMinorPerL).toBeCloseTo((1800 * 70) / 96, 9)
    expect(spec).toMatchObject({ sweetenerPriceMinorPerKg: 120, bottlePriceMinor: 90 })
    expect(made({}, 250).spec.bottleSizeMl).toBe(250)
    const pantry = made({ source: 'pantry' }).spec.fruits[0]!
    expect(pantry.cut).toBe('frozen')
    expect(pantry).not.toHaveProperty('priceMinorPerKg')
    const bare = made({}, 500, { fruits: [], spirits: [] }).spec
    expect(bare.fruits[0]).not.toHaveProperty('priceMinorPerKg')
    expect(bare.spirits[0]).not.toHaveProperty('priceMinorPerL')
    expect(bare).not.toHaveProperty('sweetenerPriceMinorPerKg')
    expect(bare).not.toHaveProperty('bottlePriceMinor')
  })

  it('stands in its own jars, several extracts’ as one, and more than six to steep in too', () => {
    const { vessels } = made().spec
    expect(vessels.steep).toEqual([
      { jarId: 'a', name: 'a', shape: 'jar', capacityMl: 2000 },
      { jarId: 'c', name: 'c', shape: 'demijohn', capacityMl: 4000 },
    ])
    expect(vessels.extracts).toEqual([{ name: 'b + c', shape: 'jar', capacityMl: 6000 }])
    const one = made({ settleJarIds: ['c'] }).spec.vessels.extracts
    expect(one).toEqual([{ jarId: 'c', name: 'c', shape: 'demijohn', capacityMl: 4000 }])
    const seven = made({ steepJarIds: jars.map(({ id }) => id) }).spec.vessels.steep
    expect(seven).toHaveLength(6)
    expect(seven[4]).toMatchObject({ jarId: 'e' })
    expect(seven[5]).toEqual({ name: 'f + g', shape: 'jar', capacityMl: 2000 })
    const six = made({ steepJarIds: jars.slice(0, 6).map(({ id }) => id) }).spec.vessels.steep
    expect(six[5]).toMatchObject({ jarId: 'f' })
  })

  it('says whether the draft run through the engine keeps the promise', () => {
    const fits = { steepJarIds: ['c'], settleJarIds: ['a', 'b'] }
    const { replay, volumeMl } = made(fits)
    expect(replay.isWithinBand).toBe(true)
    expect(replay.volumeMl).toBeGreaterThan(volumeMl.low)
    expect(replay.volumeMl).toBeLessThan(volumeMl.high)
    // A jar of a litre runs over.
    expect(made({ steepJarIds: ['d'], settleJarIds: ['a', 'b'] }).replay.isWithinBand).toBe(false)
  })
})
