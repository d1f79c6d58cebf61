import { describe, expect, it } from 'vitest'
import { fruitOf } from '../../../main/engine/fruit/fruit-library.ts'
import {
  coverSeason,
  reckonSeason,
  type Reckoning,
} from '../../../main/engine/season/reckon-season.ts'
import type { Otherwise, SeasonFacts } from '../../../main/engine/season/season-facts.ts'
import { reliefOf } from '../../../main/engine/season/season-reliefs.ts'
import { harvests, variantOf } from '../../../main/engine/season/season-variants.ts'
import { solveSeason, type IntegerAsked } from '../../../main/engine/season/solve-season.ts'
import { timeLeft } from '../../../main/engine/season/time-left.ts'
import { dearWay, freshWay, handQuestion } from './hand-question.ts'
import { kind, supplyIn } from './paper-kind.ts'
import { cellar, jar, plainWishes } from './season-cellar.ts'

/** 3 L of sour cherry wanted, in two jars of 2 L that give about 1.5 at a time in week 10 alone. */
const wanted = (wantedMl: number) =>
  kind({
    demand: {
      ...kind().demand,
      wantedMl,
      tiers: [{ priority: 'should', isSure: true, volumeMl: wantedMl }],
    },
  })
const two = [jar('a', 2000), jar('b', 2000)]
const reckoning = (change: Partial<Reckoning> = {}): Reckoning => ({
  facts: cellar({ jars: two }),
  kinds: [wanted(3000)],
  draftFacts: { fruitOf },
  // The search alone: what it finds it finds without a solver.
  solve: () => undefined,
  secondsLeft: () => 60,
  ...change,
})
/** 0.95 of 2 L holds 0.95 kg at 2 L/kg to steep, of which 1.6 L are made. */
const mostMl = 0.95 * 1600

describe('coverSeason', () => {
  it('tells what is planned of each kind and what is short, a glass or less forgiven', () => {
    const { plannedMl, shortMl, solved } = coverSeason(reckoning())
    expect(solved.loads).toHaveLength(1)
    expect(plannedMl[0]).toBeCloseTo(mostMl, 6)
    expect(shortMl[0]).toBeCloseTo(3000 - mostMl, 6)
    const short = (wantedMl: number) =>
      coverSeason(reckoning({ kinds: [wanted(wantedMl)] })).shortMl[0]
    expect(short(mostMl + 9.9)).toBe(0)
    expect(short(mostMl + 10.1)).toBeCloseTo(10.1, 6)
    expect(short(1000)).toBe(0)
  })

  it('asks no solver where there are no jars, or nothing to put in them', () => {
    const refuse = () => {
      throw new Error('asked')
    }
    const none = coverSeason(reckoning({ facts: cellar({ jars: [] }), solve: refuse }))
    expect(none.solved).toEqual({
      loads: [],
      settled: [],
      sum: 0,
      bound: 0,
      gapShare: 0,
      isProven: true,
    })
    expect(none.shortMl).toEqual([3000])
    const noWays = coverSeason(reckoning({ kinds: [kind({ recipe: undefined })], solve: refuse }))
    expect(noWays.plannedMl).toEqual([0])
    // But a batch of today must settle, though nothing new is made.
    const untilMs = Date.parse('2027-01-20T00:00:00Z')
    const settles = [{ batchId: 'old', fromMs: untilMs - 1e9, untilMs, volumeMl: 900 }]
    const facts = cellar({ jars: two, standing: { jars: [], settles, toCome: [] } })
    const settling = coverSeason(reckoning({ facts, kinds: [kind({ recipe: undefined })] }))
    expect(settling.solved.settled).toEqual([{ jars: [1], homelessMl: 0 }])
  })
})

describe('reckonSeason', () => {
  it('writes the loads out as batches, purchases and totals that add up', () => {
    const { batches, purchases, totals, placed } = reckonSeason(reckoning())
    expect(batches).toHaveLength(1)
    expect(batches[0]).toMatchObject({
      key: 'sour_cherry-w10',
      // 1.52 L.
      bottles: 3,
      startAt: '2027-02-01T00:00:00.000Z',
    })
    expect(batches[0]!.fruitG).toBeCloseTo(950, 6)
    expect(placed.spans.map(({ use }) => use)).toEqual(['steep', 'cleaning', 'settle', 'cleaning'])
    expect(totals).toMatchObject({ batches: 1, bottles: 3 })
    expect(totals.shortMl).toBeCloseTo(3000 - mostMl, 6)
    expect(purchases[0]).toMatchObject({ what: 'fruit', from: '2027-02-01T00:00:00.000Z' })
    const paid = purchases.reduce((sum, { priceMinor }) => sum + priceMinor!, 0)
    expect(totals.moneyMinor).toBe(paid)
  })

  it('tells batches in the order of their weeks, and of their keys', () => {
    const later = { ...wanted(1000), fruit: fruitOf('raspberry') }
    const facts = cellar({ jars: [...two, jar('c', 2000), jar('d', 2000)] })
    const supply = supplyIn([3])
    const keys = (kinds: Reckoning['kinds']) =>
      reckonSeason(reckoning({ facts, kinds })).batches.map(({ key }) => key)
    expect(keys([wanted(1000), later])).toEqual(['raspberry-w10', 'sour_cherry-w10'])
    expect(keys([{ ...later, supply }, wanted(1000)])).toEqual(['raspberry-w3', 'sour_cherry-w10'])
    expect(keys([later, { ...wanted(1000), supply }])).toEqual(['sour_cherry-w3', 'raspberry-w10'])
  })
})

describe('reliefOf', () => {
  const easing = (
    eases: 'jars' | 'money',
    by: number,
    otherwise: Otherwise,
  ): Parameters<typeof reliefOf>[0] => ({
    eases,
    unit: eases === 'jars' ? 'jarMl' : 'minor',
    by,
    otherwise,
  })
  const oneMore = easing('jars', 2000, { moreJarMl: 2000 })
  /** With a fourth jar a second load as large as the first can stand beside it. */
  const three = [...two, jar('c', 2000)]
  const inThree = (change: Partial<SeasonFacts> = {}, wantedMl = 4000) =>
    reckoning({ facts: cellar({ jars: three, ...change }), kinds: [wanted(wantedMl)] })

  it('tells what one more jar brings, to which kind, and what that costs', () => {
    const plan = reckonSeason(inThree())
    expect(plan.plannedMl[0]).toBeCloseTo(mostMl, 6)
    const relief = reliefOf(oneMore, plan, inThree())!
    expect(relief).toMatchObject({ eases: 'jars', unit: 'jarMl', by: 2000, isProven: false })
    expect(relief.gainsMl).toBeCloseTo(mostMl, 3)
    expect(relief.kinds).toHaveLength(1)
    expect(relief.kinds[0]!.kindId).toBe('sour_cherry')
    expect(relief.kinds[0]!.gainsMl).toBeCloseTo(mostMl, 3)
    // A kg: fruit 450, 800 mL at 1.8 × 70/96, 200 g at 0.12, 3.2 bottles at 120; nothing is at hand.
    const perKg = 450 + 800 * 1.8 * (70 / 96) + 200 * 0.12 + 3.2 * 120
    expect(relief.costsMinor).toBeCloseTo(0.95 * perKg, 3)
  })

  it('costs no more than what the pantry lacks', () => {
    const pantry = {
      fruits: [],
      spirits: [{ strengthPctVol: 70, volumeMl: 800 }],
      sweeteners: [{ id: 'sugar' as const, massG: 5000 }],
    }
    const plan = reckonSeason(inThree({ pantry }))
    const relief = reliefOf(oneMore, plan, inThree({ pantry }))!
    // 760 mL were poured of 800; of 1520 there are 720 to buy. Sugar is there for all.
    expect(relief.costsMinor).toBeCloseTo(0.95 * (450 + 3.2 * 120) + 720 * 1.8 * (70 / 96), 3)
  })

  it('is none where it brings less than half a small glass', () => {
    // A litre costs 1192.5, so that the money leaves so much of one uncovered.
    const gainsMl = (shortMl: number) => {
      const limits = { isSpiritAtHandOnly: false, moneyMinor: 1.1925 * (1000 - shortMl) }
      const asked = inThree({ wishes: { ...plainWishes, limits } }, 1000)
      const richer = easing('money', 10_000, { moreMoneyMinor: 10_000 })
      return reliefOf(richer, reckonSeason(asked), asked)?.gainsMl
    }
    expect(gainsMl(15)).toBeUndefined()
    expect(gainsMl(25)).toBeCloseTo(25, 3)
    expect(
      reliefOf(easing('money', 1, { moreMoneyMinor: 1 }), reckonSeason(inThree()), inThree()),
    ).toBeUndefined()
  })
})

describe('variantOf', () => {
  it('makes less of the fruit, and dearer, when the harvest is poor, more and cheaper when good', () => {
    const [poor, good] = harvests.map((harvest) => variantOf(harvest, reckoning()))
    expect(poor).toMatchObject({
      harvest: 'poor',
      factors: { fruitPrice: 1.5, yield: 0.9, seasonWeeks: -1 },
    })
    // One week of season, a week shorter at either end: there is none left.
    expect(poor!.kinds).toEqual([{ kindId: 'sour_cherry', plannedMl: 0, shortMl: 3000 }])
    expect(poor!.totals.batches).toBe(0)
    expect(good).toMatchObject({
      harvest: 'good',
      factors: { fruitPrice: 0.75, yield: 1.05, seasonWeeks: 1 },
    })
    expect(good!.kinds[0]!.plannedMl).toBeCloseTo(1.05 * mostMl, 6)
    expect(good!.kinds[0]!.shortMl).toBeCloseTo(3000 - 1.05 * mostMl, 6)
    expect(good!.totals.volumeMl.low).toBeCloseTo(1.05 * 0.95 * 1200, 6)
    expect(good!.totals.volumeMl.high).toBeCloseTo(1.05 * 0.95 * 2000, 6)
    const supply = supplyIn([9, 10, 11])
    const long = variantOf(harvests[0]!, reckoning({ kinds: [{ ...wanted(3000), supply }] }))
    expect(long.kinds[0]!.plannedMl).toBeCloseTo(0.9 * mostMl, 6)
    const priceOf = ({ totals }: typeof long) => totals.moneyMinor
    expect(priceOf(long) - priceOf(good!)).toBeGreaterThan(0.95 * 450 * 0.75 - 200)
  })
})

describe('solveSeason', () => {
  /** Two jars twice a year: 3.8 of 4 L of the cheap kind, and nothing is known of what could be. */
  const scarce = handQuestion({
    ways: [freshWay, dearWay],
    classes: [{ capacityMl: 2000, isWide: true, jarIds: ['a', 'b'] }],
  })

  it('asks first without whole numbers for a bound, then with them, and last for money and trouble', () => {
    const asked: IntegerAsked[] = []
    const solved = solveSeason(scarce, {
      solve: (one) => {
        asked.push(one)
        return undefined
      },
      secondsLeft: () => 100,
    })
    expect(asked).toHaveLength(3)
    const [parts, whole, saving] = asked
    expect(parts!.program.variables.some(({ isWhole }) => isWhole)).toBe(false)
    expect(whole!.program.variables.some(({ isWhole }) => isWhole)).toBe(true)
    expect(saving!.program.rows).toHaveLength(whole!.program.rows.length + 1)
    // 15 of 100 seconds are kept back for the last; near enough is two thousandths of 2340.
    expect(asked.map(({ timeLimitSeconds }) => timeLimitSeconds)).toEqual([85, 85, 15])
    expect(whole!.absoluteGap).toBeCloseTo(0.002 * 2340, 9)
    expect(solved.bound).toBe(0)
    expect(solved.isProven).toBe(false)
    expect(solved.gapShare).toBeCloseTo(solved.sum / 2340, 9)
  })

  it('stops as soon as its plan is near enough to the bound, and never asks for trouble when told so', () => {
    const first = solveSeason(scarce, { solve: () => undefined, secondsLeft: () => 100 })
    const tried = (bound: number, isCoverOnly = false) => {
      let count = 0
      const solved = solveSeason(scarce, {
        solve: ({ start }) => {
          count += 1
          return { values: start, bound }
        },
        secondsLeft: () => 100,
        known: first,
        isCoverOnly,
      })
      return { count, isProven: solved.isProven, bound: solved.bound, gap: solved.gapShare }
    }
    expect(tried(first.sum)).toEqual({ count: 1, isProven: true, bound: first.sum, gap: 0 })
    const near = tried(first.sum - 0.001 * 2340)
    // Proven, but a tenth of the trouble could be saved.
    expect(near).toMatchObject({ count: 2, isProven: true })
    expect(near.gap).toBeCloseTo(0.001, 6)
    // Told by the glass: five ten-thousandths.
    expect(tried(first.sum - 0.001 * 2340, true)).toMatchObject({ count: 2, isProven: false })
    expect(tried(first.sum - 0.0004 * 2340, true)).toMatchObject({ count: 1, isProven: true })
  })

  it('tells the gap while it is asked', () => {
    const gaps: number[] = []
    solveSeason(scarce, {
      solve: ({ program, onGap }) => {
        if (program.variables.some(({ isWhole }) => isWhole)) onGap(234)
        return undefined
      },
      secondsLeft: () => 100,
      onGap: (gap) => gaps.push(gap),
    })
    expect(gaps).toContain(0.1)
  })

  it('asks nothing when there is no time, and counts down what there is', () => {
    let count = 0
    const solved = solveSeason(scarce, {
      solve: () => {
        count += 1
        return undefined
      },
      secondsLeft: () => 0.05,
    })
    expect(count).toBe(0)
    expect(solved.loads.length).toBeGreaterThan(0)
    let nowSeconds = 5
    const left = timeLeft(() => nowSeconds, 10)
    expect(left()).toBe(10)
    nowSeconds = 9
    expect(left()).toBe(6)
  })
})
