import { beforeAll, describe, expect, it } from 'vitest'
import { fruitOf } from '../../../main/engine/fruit/fruit-library.ts'
import { planSeason, type Progress } from '../../../main/engine/season/plan-season.ts'
import type { SeasonFacts } from '../../../main/engine/season/season-facts.ts'
import type { SolveInteger } from '../../../main/engine/season/solve-season.ts'
import { integerSolver } from '../../../main/service/integer-solver.ts'
import type { Jar } from '../../../shared/schemas/cellar.ts'
import type { DraftVessel } from '../../../shared/schemas/drafts.ts'
import { SeasonPlan } from '../../../shared/schemas/season.ts'
import { faultsOf } from './checked-plan.ts'
import { seeded } from './season-questions.ts'
import { cellar, jar, plainWishes, stock, wish } from './season-cellar.ts'

let solve: SolveInteger
beforeAll(async () => {
  solve = await integerSolver()
})

const largeJars = [jar('large', 10_000), jar('larger', 10_000), jar('largest', 15_000)]

/** Time never runs out for the plan, only for one question of the solver. */
const stopped = () => 0

const plan = (facts: SeasonFacts, isExplained = false, timeLimitSeconds = 10) =>
  planSeason(facts, { solve, isExplained, timeLimitSeconds, clock: stopped })

const ofPantry = ({ pantry, standing }: SeasonFacts) => ({
  fruitOf,
  spiritMl: pantry.spirits.reduce((sum, { volumeMl }) => sum + volumeMl, 0),
  sweetenerG: (id: 'sugar' | 'honey') =>
    pantry.sweeteners.filter((lot) => lot.id === id).reduce((sum, { massG }) => sum + massG, 0),
  pantryFruitG: (id: string) =>
    pantry.fruits
      .filter(({ fruitId }) => fruitId === id)
      .reduce((sum, { massG }) => sum + massG, 0),
  batchIn: (id: string) => standing.jars.find(({ jarId }) => jarId === id)?.batchId,
})

const kindOf = ({ kinds }: SeasonPlan, id: string) => kinds.find(({ kindId }) => kindId === id)!

/** Jars, stocks, pantry, limits and standing batches at random, the same for the same seed. */
function madeUp(seed: number): SeasonFacts {
  const random = seeded(seed)
  const upTo = (most: number) => Math.floor(random() * (most + 1))
  const kindIds = ['sour_cherry', 'raspberry', 'damson', 'quince', 'sloe', 'blackcurrant']
  const jars = Array.from({ length: 4 + upTo(6) }, (_, index) =>
    jar(
      `jar-${index}`,
      [2000, 3000, 4000, 5000, 10_000][upTo(4)]!,
      index % 4 === 3 ? 'demijohn' : 'jar',
    ),
  )
  const base = cellar()
  return {
    ...base,
    jars,
    stocks: kindIds.map((id) => stock(id, upTo(2), 1 + upTo(8))),
    wishes: {
      ...plainWishes,
      cleaningWeeks: upTo(2),
      limits: {
        isSpiritAtHandOnly: random() < 0.3,
        ...(random() < 0.4 && { moneyMinor: 4000 + upTo(20_000) }),
        ...(random() < 0.4 && { shelfBottles: 8 + upTo(30) }),
      },
    },
    standing: {
      jars: jars.slice(0, upTo(2)).map(({ id, capacityMl }) => ({
        jarId: id,
        batchId: `old-${id}`,
        untilMs: base.nowMs + (10 + upTo(200)) * 24 * 3_600_000,
        fillMl: capacityMl / 2,
      })),
      settles: [],
      toCome: [],
    },
    pantry: {
      fruits: [{ fruitId: 'raspberry', massG: upTo(3000) }],
      spirits: [{ strengthPctVol: 96, volumeMl: 3000 + upTo(4000) }],
      sweeteners: [{ id: 'sugar', massG: upTo(2000) }],
    },
  }
}

describe('planSeason', () => {
  it('lays down what is drunk in a year less what is left by then, and the checker finds no fault', () => {
    const facts = cellar()
    const made = plan(facts)
    expect(SeasonPlan.parse(made)).toEqual(made)
    expect(faultsOf(made, ofPantry(facts))).toEqual([])
    expect(made.proof.isProven).toBe(true)
    expect(made.totals.shortMl).toBe(0)
    // Raspberries are three times as dear as damsons, spirit and bottles the same.
    const perL = (id: string) => kindOf(made, id).minorPerL ?? 0
    expect(perL('raspberry')).toBeGreaterThan(perL('damson') + 100)
    // 2 L are there, 5 L a year are drunk, and the new ones are ready after 1.2 years: none is left.
    const cherry = kindOf(made, 'sour_cherry')
    expect(cherry.leftThenMl.value).toBe(0)
    expect(cherry.wantedMl).toBeCloseTo(5000)
    expect(Math.abs(cherry.plannedMl.value - 5000)).toBeLessThan(10)
    expect(cherry.bottles).toBeGreaterThanOrEqual(9)
  })

  it('keeps what it promises when its drafts run through the engine', () => {
    const made = plan(cellar())
    expect(made.batches.length).toBeGreaterThanOrEqual(4)
    for (const { replay, bottles, volumeMl, bottleSizeMl } of made.batches) {
      expect(replay.isWithinBand).toBe(true)
      expect(replay.volumeMl).toBeGreaterThan(volumeMl.low)
      expect(replay.volumeMl).toBeLessThan(volumeMl.high)
      expect(replay.bottles).toBeGreaterThanOrEqual(Math.floor(volumeMl.low / bottleSizeMl))
      expect(Math.abs(replay.bottles - bottles)).toBeLessThanOrEqual(1)
    }
  })

  it('gives the same plan to the same facts', () => {
    const facts = cellar()
    const { proof: first, ...one } = plan(facts)
    const { proof: second, ...two } = plan(facts)
    expect(two).toEqual(one)
    expect(second.gapShare).toBe(first.gapShare)
  })

  it('takes what the pantry has first: spirit by its ethanol, sugar, frozen fruit out of season', () => {
    const facts = cellar({
      stocks: [stock('raspberry', 0, 4)],
      pantry: {
        fruits: [{ fruitId: 'raspberry', massG: 1500 }],
        spirits: [{ strengthPctVol: 96, volumeMl: 600 }],
        sweeteners: [{ id: 'sugar', massG: 400 }],
      },
    })
    const made = plan(facts)
    expect(faultsOf(made, ofPantry(facts))).toEqual([])
    const frozen = made.batches.filter(({ source }) => source === 'pantry')
    expect(frozen.length).toBeGreaterThan(0)
    expect(frozen.every(({ spec }) => spec.fruits[0]?.cut === 'frozen')).toBe(true)
    const boughtG = made.purchases.reduce((sum, line) => sum + (line.fruitId ? line.massG! : 0), 0)
    expect(boughtG).toBeLessThan(made.totals.fruitG - 1000)
  })

  it('says that there are no jars, and plans nothing', () => {
    const made = plan(cellar({ jars: [] }))
    expect(made.batches).toEqual([])
    expect(made.notices.map(({ code }) => code)).toContain('noJars')
    expect(kindOf(made, 'sour_cherry')).toMatchObject({ bottles: 0, cutBy: ['jars'] })
  })

  it('says that one jar is none to settle in', () => {
    const made = plan(cellar({ jars: [jar('only', 5000)], stocks: [stock('damson', 0, 3)] }))
    expect(made.batches).toEqual([])
    expect(made.notices.map(({ code }) => code)).not.toContain('tooLittleForAnyJar')
    expect(kindOf(made, 'damson').cutBy).toEqual(['jars'])
    expect(made.binding).toEqual([
      { limit: 'jars', used: 1, of: 1, unit: 'jars', weeks: [], kindIds: ['damson'] },
    ])
  })

  it('tells a rest that is too little for any jar from jars that are taken', () => {
    // Two jars of 4 L give about 3.3 L of damson; 0.4 L more would not fill another load's jars.
    const facts = cellar({
      jars: [jar('a', 4000), jar('b', 4000)],
      stocks: [stock('damson', 0, 3.7)],
      wishes: { ...plainWishes, wishes: [wish('damson', { atMostMl: 3700 })] },
    })
    const made = plan(facts)
    expect(kindOf(made, 'damson').shortMl).toBeGreaterThan(0)
    expect(kindOf(made, 'damson').cutBy).toEqual(['tooLittle'])
    expect(made.binding).toEqual([])
  })

  it.each([
    { limits: { moneyMinor: 5000 }, eases: 'money', more: { moneyMinor: 15_000 }, jars: [] },
    { limits: {}, eases: 'jars', more: {}, jars: [jar('one-more', 3000)] },
  ] as const)(
    'brings by easing $eases what the eased cellar itself plans',
    ({ limits, eases, more, jars }) => {
      const facts = (limit: object, extra: readonly Jar[]) =>
        cellar({
          stocks: [stock('sour_cherry', 0, 6), stock('quince', 0, 5)],
          jars: [jar('a', 3000), jar('b', 3000), ...extra],
          wishes: { ...plainWishes, limits: { isSpiritAtHandOnly: false, ...limit } },
        })
      const made = plan(facts(limits, []), true)
      const relief = made.reliefs.find((one) => one.eases === eases)!
      const really = plan(facts({ ...limits, ...more }, jars))
      expect(relief.isProven && really.proof.isProven).toBe(true)
      expect(relief.gainsMl).toBeGreaterThan(500)
      const gainsMl = made.totals.shortMl - really.totals.shortMl
      expect(Math.abs(relief.gainsMl - gainsMl)).toBeLessThan(30)
      const costsMinor = really.totals.moneyMinor - made.totals.moneyMinor
      // Purchases are rounded up to whole coins, bottles and corks to whole ones.
      expect(Math.abs(relief.costsMinor - costsMinor)).toBeLessThan(300)
    },
  )

  it('plans from wishes alone where nothing was ever drunk, by the library, and says so', () => {
    const facts = cellar({
      stocks: [],
      wishes: { ...plainWishes, wishes: [wish('damson', { atLeastMl: 3000, priority: 'must' })] },
    })
    const made = plan(facts)
    expect(faultsOf(made, ofPantry(facts))).toEqual([])
    expect(made.notices.map(({ code }) => code)).toContain('noHistory')
    const damson = kindOf(made, 'damson')
    expect(damson.yield.basis).toBe('recipe')
    expect(damson.needs).toEqual([{ because: 'wish', priority: 'must', volumeMl: 3000 }])
    expect(Math.abs(damson.plannedMl.value - 3000)).toBeLessThan(10)
  })

  it('comes as near as it can to a wish that no jars can hold, the more urgent kind first', () => {
    const facts = cellar({
      stocks: [],
      jars: [jar('a', 3000), jar('b', 3000), jar('c', 3000)],
      wishes: {
        ...plainWishes,
        wishes: [
          wish('sour_cherry', { atLeastMl: 30_000, priority: 'could' }),
          wish('raspberry', { atLeastMl: 2000, priority: 'must' }),
        ],
      },
    })
    const made = plan(facts, true)
    expect(faultsOf(made, ofPantry(facts))).toEqual([])
    expect(kindOf(made, 'raspberry').shortMl).toBe(0)
    const cherry = kindOf(made, 'sour_cherry')
    expect(cherry.shortMl).toBeGreaterThan(20_000)
    expect(cherry.cutBy).toContain('jars')
    expect(made.binding.some(({ limit, weeks }) => limit === 'jars' && weeks.length > 0)).toBe(true)
    const oneMore = made.reliefs.find(({ eases }) => eases === 'jars')
    expect(oneMore).toMatchObject({ unit: 'jarMl', by: 3000 })
    expect(oneMore!.gainsMl).toBeGreaterThan(1000)
  })

  it('stays within money and tells what 100 more would bring', () => {
    const wishes = { ...plainWishes, limits: { isSpiritAtHandOnly: false, moneyMinor: 4000 } }
    const facts = cellar({ wishes })
    const made = plan(facts, true)
    expect(faultsOf(made, ofPantry(facts))).toEqual([])
    expect(made.totals.moneyMinor).toBeGreaterThan(3500)
    expect(made.totals.shortMl).toBeGreaterThan(1000)
    expect(made.binding.map(({ limit }) => limit)).toContain('money')
    const more = made.reliefs.find(({ eases }) => eases === 'money')!
    expect(more.by).toBe(10_000)
    expect(more.gainsMl).toBeGreaterThan(1000)
    expect(more.costsMinor).toBeGreaterThan(0)
    expect(more.costsMinor).toBeLessThanOrEqual(10_000 + 100)
  })

  it('names money where what is left of it makes no further batch', () => {
    // A little below what the first batch of sour cherries wants: nine tenths are never spent.
    const wishes = { ...plainWishes, limits: { isSpiritAtHandOnly: false, moneyMinor: 4000 } }
    const facts = cellar({ wishes, stocks: [stock('sour_cherry', 0, 9)], jars: largeJars })
    const made = plan(facts)
    expect(made.totals.moneyMinor).toBeLessThan(0.9 * 4000)
    expect(made.binding.map(({ limit }) => limit)).toEqual(['money'])
    expect(kindOf(made, 'sour_cherry').cutBy).toEqual(['money'])
  })

  it('stays within the shelf, and pours only the spirit at hand when told so', () => {
    const facts = cellar({
      wishes: { ...plainWishes, limits: { isSpiritAtHandOnly: true, shelfBottles: 15 } },
      pantry: {
        fruits: [],
        spirits: [{ strengthPctVol: 96, volumeMl: 3000 }],
        sweeteners: [],
      },
    })
    const made = plan(facts)
    expect(faultsOf(made, ofPantry(facts))).toEqual([])
    expect(made.totals.bottles).toBeLessThanOrEqual(15)
    expect(made.purchases.filter(({ what }) => what === 'spirit')).toEqual([])
    expect(made.totals.spirits[0]!.volumeMl).toBeLessThanOrEqual(3000 + 1)
  })

  it('leaves jars to the batches that stand in them, and finds one for what these are drawn off into', () => {
    const day = 24 * 3_600_000
    const base = cellar()
    const facts = cellar({
      standing: {
        jars: base.jars.slice(0, 5).map(({ id }) => ({
          jarId: id,
          batchId: `old-${id}`,
          untilMs: base.nowMs + 80 * day,
          fillMl: 1800,
        })),
        settles: [
          {
            batchId: 'old-a',
            fromMs: base.nowMs + 60 * day,
            untilMs: base.nowMs + 90 * day,
            volumeMl: 1700,
          },
        ],
        toCome: [],
      },
    })
    const made = plan(facts)
    expect(faultsOf(made, ofPantry(facts))).toEqual([])
    const settling = made.spans.find(({ use }) => use === 'standingSettle')
    expect(settling).toMatchObject({ jarId: 'f', batchId: 'old-a', fillMl: 1700 })
    expect(made.notices.map(({ code }) => code)).not.toContain('standingWithoutJar')

    const full = plan({ ...facts, jars: facts.jars.slice(0, 5) })
    expect(full.notices).toContainEqual({ code: 'standingWithoutJar', batchId: 'old-a' })
  })

  it('lays down less when the harvest is poor, dearer, and more when it is good', () => {
    const wishes = { ...plainWishes, limits: { isSpiritAtHandOnly: false, moneyMinor: 6000 } }
    const made = plan(cellar({ wishes }), true)
    const [poor, good] = made.variants
    expect(poor).toMatchObject({ harvest: 'poor', factors: { fruitPrice: 1.5, yield: 0.9 } })
    expect(poor!.totals.volumeMl.value).toBeLessThan(made.totals.volumeMl.value)
    expect(good!.totals.volumeMl.value).toBeGreaterThan(made.totals.volumeMl.value)
  })

  it('tells how far it is, with the plan before its explanations', () => {
    const told: Progress[] = []
    planSeason(cellar(), {
      solve,
      isExplained: true,
      timeLimitSeconds: 10,
      clock: stopped,
      onProgress: (progress) => told.push(progress),
    })
    const steps = [...new Set(told.map(({ step }) => step))]
    expect(steps).toEqual(['recipes', 'covering', 'placing', 'variants'])
    expect(told.find(({ step }) => step === 'placing')!.plan!.variants).toEqual([])
    const progress = told.map((one) => one.progress)
    expect(progress).toEqual([...progress].sort((a, b) => a - b))
  })

  it('tells each step with how much of all is done, and asks each limit in turn', () => {
    const facts = cellar({
      stocks: [stock('damson', 0, 12)],
      jars: [jar('a', 3000), jar('b', 3000), jar('old', 3000)],
      standing: {
        jars: [
          {
            jarId: 'old',
            batchId: 'old',
            untilMs: Date.parse('2028-06-01T00:00:00Z'),
            fillMl: 2000,
          },
        ],
        settles: [],
        toCome: [],
      },
    })
    const told: Progress[] = []
    const made = planSeason(facts, {
      // The search alone.
      solve: () => undefined,
      isExplained: true,
      timeLimitSeconds: 10,
      clock: stopped,
      onProgress: (progress) => told.push(progress),
    })
    const steps = told
      .filter(({ gapShare }) => gapShare === undefined)
      .map(({ step, progress }) => [step, Number(progress.toFixed(6))])
    // One more jar of 3 L, and two weeks more.
    expect(steps).toEqual([
      ['recipes', 0],
      ['covering', 0.05],
      ['placing', 0.4],
      ['explaining', 0.45],
      ['explaining', 0.625],
      ['variants', 0.8],
      ['variants', 0.9],
    ])
    expect(told.some(({ step, gapShare }) => step === 'covering' && gapShare! > 0)).toBe(true)
    expect(told.at(-1)!.plan!.reliefs).toEqual(made.reliefs)
    expect(made.variants.map(({ harvest }) => harvest)).toEqual(['poor', 'good'])
    expect(made.reliefs.find(({ eases }) => eases === 'jars')).toMatchObject({ by: 3000 })
    expect(kindOf(made, 'damson').cutBy).toContain('jars')
    expect(made).toMatchObject({
      madeAt: '2026-11-25T18:00:00.000Z',
      startAt: '2026-11-23T00:00:00.000Z',
      weekCount: 52,
    })
    // A jar that today's batch keeps for longer than the year is used for all of it.
    const usedOf = (id: string) => made.jars.find(({ jarId }) => jarId === id)!.usedWeeks
    expect(usedOf('old')).toBe(52)
    for (const id of ['a', 'b']) {
      const stands = made.spans.filter(({ jarId, use }) => jarId === id && use !== 'cleaning')
      const weeks = Array.from({ length: 52 }, (_, week) => week).filter((week) =>
        stands.some(({ fromWeek, toWeek }) => fromWeek <= week && week < toWeek),
      )
      expect(usedOf(id), id).toBe(weeks.length)
    }
    // One to steep; what settles after it belongs to the year after.
    expect(usedOf('a') + usedOf('b')).toBeGreaterThan(3)
    // 300 a kg, spirit, sugar and two bottles at 120: by the recipe's own litres.
    expect(kindOf(made, 'damson').minorPerL).toBeGreaterThan(240)
    const free = plan({
      ...facts,
      wishes: { ...plainWishes, prices: { fruits: [], spirits: [] } },
    })
    expect(kindOf(free, 'damson')).not.toHaveProperty('minorPerL')
  })

  it('gives the best found with its gap when there is no time', () => {
    const facts = cellar({
      stocks: ['sour_cherry', 'raspberry', 'damson', 'quince', 'plum', 'sloe', 'blackcurrant'].map(
        (id) => stock(id, 0, 12),
      ),
    })
    const made = plan(facts, false, 0.1)
    expect(faultsOf(made, ofPantry(facts))).toEqual([])
    expect(made.totals.bottles).toBeGreaterThan(10)
    expect(made.proof.isProven).toBe(false)
    expect(made.proof.gapShare).toBeGreaterThan(0)
    expect(made.notices.map(({ code }) => code)).toContain('timeUp')
  })

  it.each([1, 2, 3, 4, 5, 6, 7, 8])(
    'makes a plan without faults, in which all that is short has its reasons, in made up cellar %i',
    (seed) => {
      const facts = madeUp(seed)
      const made = plan(facts, false, 1)
      expect(faultsOf(made, ofPantry(facts))).toEqual([])
      expect(made.batches.length).toBeGreaterThan(0)
      for (const { kindId, shortMl, cutBy } of made.kinds)
        expect(shortMl === 0 || cutBy.length > 0, kindId).toBe(true)
      const bound = new Set(made.binding.map(({ limit }) => limit))
      for (const limit of ['jars', 'money', 'shelf', 'spirit'] as const)
        expect(bound.has(limit)).toBe(made.kinds.some(({ cutBy }) => cutBy.includes(limit)))
      const sizeMl = (all: readonly { jarId: string }[]) =>
        facts.jars
          .filter(({ id }) => all.some(({ jarId }) => jarId === id))
          .reduce((sum, { capacityMl }) => sum + capacityMl, 0)
      for (const { spec, steepJars, settleJars, replay } of made.batches) {
        const capacityMl = (vessels: readonly DraftVessel[]) =>
          vessels.reduce((sum, vessel) => sum + vessel.capacityMl, 0)
        expect(spec.vessels.extracts).toHaveLength(1)
        expect(capacityMl(spec.vessels.extracts)).toBe(sizeMl(settleJars))
        expect(capacityMl(spec.vessels.steep)).toBe(sizeMl(steepJars))
        expect(replay.isWithinBand).toBe(true)
      }
    },
  )

  it('leaves out what would not half fill the smallest jars, and says so', () => {
    const made = plan(cellar({ stocks: [stock('quince', 0, 0.1)] }))
    expect(made.batches).toEqual([])
    expect(made.notices).toContainEqual({ code: 'tooLittleForAnyJar', kindId: 'quince' })
  })
})
