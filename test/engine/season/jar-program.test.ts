import { describe, expect, it } from 'vitest'
import { valueOf } from '../../../main/engine/marrying/linear-program.ts'
import { jarProgram } from '../../../main/engine/season/jar-program.ts'
import type { Load, Loading, SeasonQuestion } from '../../../main/engine/season/season-program.ts'
import { PlanSketch } from '../../../main/engine/season/plan-sketch.ts'
import { brokenBy } from './broken-by.ts'
import { freshWay, handQuestion, pantryWay } from './hand-question.ts'

const fresh = (change: Partial<Load> = {}): Load => ({
  wayIndex: 0,
  week: 2,
  kg: 0.8,
  steep: [1, 0],
  settle: [1, 0],
  ...change,
})
const pantry = (change: Partial<Load> = {}) => fresh({ wayIndex: 1, week: 20, ...change })
const dear = (change: Partial<Load> = {}) => fresh({ wayIndex: 2, week: 30, kg: 1, ...change })

const fits = (question: SeasonQuestion, loads: Load[], settled: Loading['settled'] = []) => {
  const { program, valuesOf } = jarProgram(question)
  return brokenBy(program, valuesOf({ loads, settled })).length === 0
}
const sumOf = (question: SeasonQuestion, loads: Load[], settled: Loading['settled'] = []) => {
  const { program, valuesOf } = jarProgram(question)
  return valueOf(program.minimise, valuesOf({ loads, settled }))
}

describe('jarProgram', () => {
  it('reckons what a plan leaves uncovered and what it costs', () => {
    const question = handQuestion()
    // 1 L at 2000, 3 L at 100; 2 L at 20.
    expect(sumOf(question, [])).toBeCloseTo(2000 + 300 + 40, 9)
    // 1.6 L leave 2.4 L; a wide jar 0.2, one to settle 0.1; fruit 80 and 3.2 bottles at 50, of 3000.
    expect(sumOf(question, [fresh()])).toBeCloseTo(240 + 40 + 0.3 + (80 + 160) / 3000, 9)
    // Three weeks off plenty, narrow; 1.8 kg take 900 of spirit, 400 bought at 2, 180 of sugar, 80 bought.
    const late = fresh({ week: 9, kg: 1.8, steep: [0, 1], settle: [2, 0] })
    const minor = 180 + 2 * 400 + 80 + 7.2 * 50
    expect(sumOf(question, [late])).toBeCloseTo(
      40 + 40 + (0.2 + 0.06 + 0.05) + 0.2 + minor / 3000,
      9,
    )
  })

  it('counts what is made beyond what is wanted as room on the shelf', () => {
    const question = handQuestion({
      kinds: handQuestion().kinds.map((kind) => ({
        ...kind,
        tiers: [{ priority: 'must' as const, isSure: false, volumeMl: 500 }],
        wantedL: 0.5,
      })),
    })
    // Two jars of 2 and 4 L want 0.8 kg, so at most 1 L, twice what is wanted, is made.
    const made = fresh({ kg: 0.5 })
    expect(sumOf(question, [made])).toBeCloseTo(500 + 0.05 + 0.3 + (50 + 2 * 50) / 3000, 9)
    expect(fits(question, [made])).toBe(true)
    expect(fits(question, [fresh({ kg: 0.51 })])).toBe(false)
  })

  it('adds up the uncovered alone, without money and trouble', () => {
    const { uncoveredOf, valuesOf, saving, program } = jarProgram(handQuestion())
    const values = valuesOf({ loads: [fresh()], settled: [] })
    expect(uncoveredOf(values)).toBeCloseTo(280, 9)
    const least = saving(280)
    expect(valueOf(least.minimise, values)).toBeCloseTo(0.3 + 240 / 3000, 9)
    expect(least.variables).toEqual(program.variables)
    expect(least.rows).toHaveLength(program.rows.length + 1)
    expect(brokenBy(least, values)).toEqual([])
    expect(brokenBy(saving(279.9), values)).toHaveLength(1)
  })

  it('gives back what it was given', () => {
    const question = handQuestion({
      mustSettle: [{ batchId: 'old', fromWeek: 40, toWeek: 42, volumeMl: 3000 }],
    })
    const { loadingOf, valuesOf } = jarProgram(question)
    const loading: Loading = {
      loads: [
        fresh(),
        fresh({ week: 9, kg: 1.8, steep: [0, 1], settle: [2, 0] }),
        pantry(),
        dear(),
      ],
      settled: [{ jars: [1, 0], homelessMl: 1100 }],
    }
    expect(loadingOf(valuesOf(loading))).toEqual(loading)
    // What the solver leaves as a trace is no load, and a jar is a whole one.
    const traces = valuesOf({ ...loading, loads: [fresh({ kg: 9e-4 }), pantry({ kg: 1e-3 })] })
    expect(loadingOf(traces).loads).toEqual([pantry({ kg: 1e-3 })])
    const near = valuesOf(loading).map((value) => value + 1e-7)
    expect(loadingOf(near).loads[0]).toMatchObject({ steep: [1, 0], settle: [1, 0] })
    // A load of no way there is stays out.
    expect(loadingOf(valuesOf({ loads: [fresh({ week: 3 })], settled: [] })).loads).toEqual([])
  })

  it('fills jars to steep and to settle from two fifths to nineteen twentieths', () => {
    const question = handQuestion()
    const isFull = (load: (kg: number) => Load, leastKg: number, mostKg: number) => {
      expect(fits(question, [load(leastKg)])).toBe(true)
      expect(fits(question, [load(leastKg - 0.001)])).toBe(false)
      expect(fits(question, [load(mostKg)])).toBe(true)
      expect(fits(question, [load(mostKg + 0.001)])).toBe(false)
    }
    // 2 L to a kg steeping, 1.6 L settling: the one is full first, the other too empty.
    isFull((kg) => fresh({ kg }), 0.4 * 1.25, 0.95)
    isFull((kg) => pantry({ kg }), 0.4 * 1.25, 0.95)
    // One large jar and two small ones, either way.
    isFull((kg) => fresh({ kg, steep: [0, 1], settle: [2, 0] }), 1, 1.9)
    isFull((kg) => fresh({ kg, steep: [2, 0], settle: [0, 1] }), 1, 1.9)
    // No jars, no fruit; no fruit, no jars.
    expect(fits(question, [fresh({ steep: [0, 0] })])).toBe(false)
    expect(fits(question, [fresh({ settle: [0, 0] })])).toBe(false)
    expect(fits(question, [fresh({ kg: 0 })])).toBe(false)
  })

  it('takes no jar that all the fruit there may be would leave too empty', () => {
    const little = { ...pantryWay, mostKg: 0.7 }
    const question = handQuestion({ ways: [freshWay, little] })
    // 4 L to settle want 0.8 kg, to steep 1 kg.
    const values = jarProgram(question).valuesOf({ loads: [], settled: [] })
    const highs = (loads: Load[]) => {
      const { program, valuesOf } = jarProgram(question)
      const set = valuesOf({ loads, settled: [] })
      return program.variables.filter((_, index) => set[index] !== values[index])
    }
    const large = highs([pantry({ kg: 0, steep: [0, 1], settle: [0, 0] })])
    expect(large.some(({ high }) => high === 0)).toBe(true)
    const small = highs([pantry({ kg: 0, steep: [1, 0], settle: [0, 0] })])
    expect(small.some(({ high }) => high === 0)).toBe(false)
  })

  it('has each jar but once, from the start of a load until it is washed', () => {
    const question = handQuestion()
    // Week 2: steeps until 6, settles from 5 to 8, washed until 7 and 9.
    const first = fresh()
    const at = (week: number): SeasonQuestion => ({
      ...question,
      ways: [freshWay, { ...pantryWay, starts: [{ week, weeksFromPlenty: 0 }] }],
    })
    const other = (week: number) => fresh({ wayIndex: 1, week })
    // Both small jars are taken in weeks 5 and 6, so that a load of one more starts at 7 at the soonest,
    // while the other still settles until 9; it settles from 10 on.
    expect(fits(at(7), [first, other(7)])).toBe(true)
    expect(fits(at(6), [first, other(6)])).toBe(false)
    expect(fits(handQuestion(), [first, fresh({ week: 9 })])).toBe(true)
    // Without washing a week is won.
    expect(fits({ ...at(6), cleaningWeeks: 0 }, [first, other(6)])).toBe(true)
    expect(fits({ ...at(5), cleaningWeeks: 0 }, [first, other(5)])).toBe(false)
    // Three in the two small ones, each of another load.
    expect(fits(question, [fresh({ steep: [3, 0], kg: 1.5, settle: [0, 1] })])).toBe(false)
  })

  it('leaves the jars that are taken until they are washed', () => {
    const load = fresh({ steep: [2, 0], settle: [0, 1], kg: 1.5 })
    const until = (untilWeek: number, classIndex = 0) =>
      fits(handQuestion({ taken: [{ classIndex, untilWeek }] }), [load])
    expect(until(1)).toBe(true)
    expect(until(2)).toBe(false)
    // The large one is wanted from week 5 on.
    expect([until(4, 1), until(5, 1)]).toEqual([true, false])
    expect(
      fits(handQuestion({ taken: [{ classIndex: 0, untilWeek: 2 }], cleaningWeeks: 0 }), [load]),
    ).toBe(true)
  })

  it('keeps to the money, with what the pantry has for nothing', () => {
    // 0.8 kg: fruit 80, bottles 160; spirit 400 and sugar 80 are there.
    const paid = (moneyMinor: number, loads: Load[]) => fits(handQuestion({ moneyMinor }), loads)
    expect([paid(240, [fresh()]), paid(239, [fresh()])]).toEqual([true, false])
    // With the dear kind: 1300 more of spirit needed in all than there is of 500: 900 bought at 2.
    const both = 240 + 800 + 200 + 900 * 2
    const loads = [fresh(), dear()]
    expect([paid(both, loads), paid(both - 1, loads)]).toEqual([true, false])
    expect(paid(0, [])).toBe(true)
    // Fruit of the pantry is paid for already.
    expect([paid(160, [pantry()]), paid(159, [pantry()])]).toEqual([true, false])
  })

  it('keeps to the shelf, by each kind’s own bottles', () => {
    // 1.6 L in bottles of half a litre, 1 L in those of a quarter.
    const room = (shelfBottles: number) => fits(handQuestion({ shelfBottles }), [fresh(), dear()])
    expect([room(7.2), room(7.1)]).toEqual([true, false])
  })

  it('buys no spirit where none may be bought, and no more than the pantry’s fruit', () => {
    const own = (atHand: number) =>
      fits(handQuestion({ spirits: [{ atHand, minorPerUnit: 2, mayBuy: false }] }), [fresh()])
    expect([own(400), own(399)]).toEqual([true, false])
    const kg = (mostKg: number) =>
      fits(handQuestion({ ways: [freshWay, { ...pantryWay, mostKg }] }), [pantry()])
    expect([kg(0.8), kg(0.799)]).toEqual([true, false])
  })

  it('finds jars for what must settle, or counts it as homeless', () => {
    const mustSettle = [{ batchId: 'old', fromWeek: 4, toWeek: 6, volumeMl: 3000 }]
    const question = handQuestion({ mustSettle })
    const settled = (jars: number[], homelessMl: number) => [{ jars, homelessMl }]
    expect(fits(question, [], settled([0, 1], 0))).toBe(true)
    expect(fits(question, [], settled([2, 0], 0))).toBe(true)
    // A jar of 2 L holds 1.9 L of it.
    expect(fits(question, [], settled([1, 0], 1100))).toBe(true)
    expect(fits(question, [], settled([1, 0], 1099))).toBe(false)
    expect(fits(question, [], settled([0, 0], 3000))).toBe(true)
    // Nobody asked: all of it is homeless.
    expect(fits(question, [], [])).toBe(true)
    expect(sumOf(question, [], [])).toBeCloseTo(2340 + 3 * 5000, 6)
    expect(sumOf(question, [], settled([1, 0], 1100))).toBeCloseTo(2340 + 0.1 + 5500, 6)
    // It has its jar from week 4 to 6, washed until 7, beside the two that the load takes.
    expect(fits(question, [fresh()], settled([0, 1], 0))).toBe(true)
    expect(fits(question, [fresh()], settled([1, 0], 1100))).toBe(false)
    // A jar may count for no more than all there is of it.
    const half = [{ ...mustSettle[0]!, volumeMl: 500 }]
    expect(fits(handQuestion({ mustSettle: half }), [], settled([0, 1], 0))).toBe(true)
  })

  it('weighs as the sketch does, where nothing is at hand', () => {
    const bare = handQuestion({
      spirits: [{ atHand: 0, minorPerUnit: 2, mayBuy: true }],
      sweeteners: [{ atHand: 0, minorPerUnit: 1, mayBuy: true }],
    })
    const loads = [fresh({ week: 9, steep: [0, 1], settle: [2, 0], kg: 1.7 }), pantry(), dear()]
    const sketch = new PlanSketch(bare, { loads, settled: [] })
    expect(sketch.sum()).toBeCloseTo(sumOf(bare, loads), 9)
  })
})
