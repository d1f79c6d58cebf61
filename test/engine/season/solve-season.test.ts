import { beforeAll, describe, expect, it } from 'vitest'
import { valueOf } from '../../../main/engine/marrying/linear-program.ts'
import { assignJars, type JarLoad } from '../../../main/engine/season/assign-jars.ts'
import { jarProgram } from '../../../main/engine/season/jar-program.ts'
import { PlanSketch } from '../../../main/engine/season/plan-sketch.ts'
import { searchLoads } from '../../../main/engine/season/search-loads.ts'
import { mostL, type SeasonQuestion } from '../../../main/engine/season/season-program.ts'
import { solveSeason, type SolveInteger } from '../../../main/engine/season/solve-season.ts'
import { integerSolver } from '../../../main/service/integer-solver.ts'
import { brokenBy } from './broken-by.ts'
import { bestByTrying } from './brute-force.ts'
import { fullYear, limited, madeQuestion, seeded, type Made } from './season-questions.ts'

let solve: SolveInteger
beforeAll(async () => {
  solve = await integerSolver()
})

const free = (question: SeasonQuestion): SeasonQuestion => ({
  ...question,
  ways: question.ways.map((way) => ({ ...way, fruitMinorPerKg: 0 })),
  spirits: question.spirits.map((supply) => ({ ...supply, minorPerUnit: 0 })),
  sweeteners: question.sweeteners.map((supply) => ({ ...supply, minorPerUnit: 0 })),
  minorPerBottle: 0,
})

const tiny: Made = {
  kinds: 2,
  jars: [
    [2000, 1],
    [3000, 1],
    [4000, 1],
  ],
  weeks: 8,
  litres: [1, 5],
  seasonWeeks: [2, 2],
  steepWeeks: [2, 4],
}

describe('solveSeason', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])(
    'finds what trying everything finds, in tiny season %i',
    (seed) => {
      const question = free(madeQuestion(seed, tiny))
      const most = question.kinds.map((_, index) => mostL(question, index))
      const solved = solveSeason(question, { solve, secondsLeft: () => 60, nearEnough: 0 })
      const best = bestByTrying(question, most)
      expect(solved.isProven).toBe(true)
      expect(Math.abs(solved.sum - best)).toBeLessThan(1e-3)
    },
  )

  it.each([1, 2, 3, 4, 5, 6])(
    'brings as much with one more jar, and with more money, as trying everything does, in tiny season %i',
    (seed) => {
      const made = madeQuestion(seed, tiny)
      const most = made.kinds.map((_, index) => mostL(made, index))
      const wantedL = made.kinds.reduce((sum, kind) => sum + kind.wantedL, 0)
      const question: SeasonQuestion = {
        ...made,
        spirits: made.spirits.map((supply) => ({ ...supply, atHand: 0 })),
        sweeteners: made.sweeteners.map((supply) => ({ ...supply, atHand: 0 })),
        moneyMinor: Math.round(700 * wantedL),
      }
      const exactly = { solve, secondsLeft: () => 60, nearEnough: 0 }
      const plan = solveSeason(question, exactly)
      expect(Math.abs(plan.sum - bestByTrying(question, most))).toBeLessThan(1e-3)

      const richer = { ...question, moneyMinor: question.moneyMinor! + 1500 }
      const withMoney = solveSeason(richer, { ...exactly, known: plan, isCoverOnly: true })
      expect(Math.abs(withMoney.sum - bestByTrying(richer, most))).toBeLessThan(1e-3)
      expect(withMoney.sum).toBeLessThanOrEqual(plan.sum)

      const fuller = {
        ...question,
        moneyMinor: 4000 * wantedL,
        classes: question.classes.map((one, index) =>
          index === 1 ? { ...one, jarIds: [...one.jarIds, 'one-more'] } : one,
        ),
      }
      const mostNow = fuller.kinds.map((_, index) => mostL(fuller, index))
      const withJar = solveSeason(fuller, { ...exactly, known: plan, isCoverOnly: true })
      expect(Math.abs(withJar.sum - bestByTrying(fuller, mostNow))).toBeLessThan(1e-3)
    },
  )

  it('is told a plan that fits even when the solver gives nothing', () => {
    const question = madeQuestion(21, fullYear([4, 20]))
    const solved = solveSeason(question, { solve: () => undefined, secondsLeft: () => 0 })
    expect(solved.loads.length).toBeGreaterThan(10)
    expect(solved.isProven).toBe(false)
    expect(solved.gapShare).toBeGreaterThan(0)
  })
})

describe('searchLoads', () => {
  it.each(Array.from({ length: 12 }, (_, index) => 11 + index))(
    'lays only loads that fit jars, money, shelf, spirit and pantry, in limited year %i',
    (seed) => {
      const question = limited(seed, madeQuestion(seed, fullYear([4, 20])))
      let rounds = 0
      const loading = searchLoads(question, {
        near: 0,
        enough: 0,
        isTimeUp: () => (rounds += 1) > 300,
      })
      const { program, valuesOf } = jarProgram(question)
      expect(brokenBy(program, valuesOf(loading))).toEqual([])
      const sketch = new PlanSketch(question, loading)
      expect(loading.loads.length).toBeGreaterThan(3)
      // What it has settled on leaves no room for any more of what is wanted.
      expect(sketch.cover()).toEqual([])
    },
  )

  it('reckons a plan by the weights of the program, where all is bought', () => {
    const question = madeQuestion(5, fullYear([4, 12]))
    const bare = {
      ...question,
      spirits: question.spirits.map((supply) => ({ ...supply, atHand: 0 })),
      sweeteners: question.sweeteners.map((supply) => ({ ...supply, atHand: 0 })),
    }
    const loading = searchLoads(bare, { near: 0, enough: 0, isTimeUp: () => true })
    const { program, valuesOf } = jarProgram(bare)
    const ofProgram = valueOf(program.minimise, valuesOf(loading))
    expect(new PlanSketch(bare, loading).sum()).toBeCloseTo(ofProgram, 6)
  })

  it('finds the same again, and less than the first attempt', () => {
    const question = madeQuestion(8, fullYear([10, 20]))
    const sumAfter = (most: number) => {
      let rounds = 0
      const loading = searchLoads(question, {
        near: 0,
        enough: 0,
        isTimeUp: () => (rounds += 1) > most,
      })
      return new PlanSketch(question, loading).sum()
    }
    expect(sumAfter(400)).toBe(sumAfter(400))
    expect(sumAfter(400)).toBeLessThan(0.9 * sumAfter(0))
  })
})

describe('assignJars', () => {
  it('never runs out of jars where no week has more loads than there are, in 200 made up years', () => {
    const random = seeded(7)
    const clashes: string[] = []
    let count = 0
    for (let year = 0; year < 200; year += 1) {
      const jarIds = ['a', 'b', 'c', 'd']
      const untilWeek = Math.floor(random() * 8) + 1
      const busy = Array.from({ length: 80 }, (_, week) => (week <= untilWeek ? 1 : 0))
      const loads: JarLoad[] = []
      for (let tried = 0; tried < 60; tried += 1) {
        const fromWeek = Math.floor(random() * 52)
        const toWeek = fromWeek + 1 + Math.floor(random() * 12)
        const weeks = Array.from({ length: toWeek + 1 - fromWeek }, (_, at) => fromWeek + at)
        if (weeks.some((week) => busy[week]! >= jarIds.length)) continue
        for (const week of weeks) busy[week]! += 1
        loads.push({ classIndex: 0, fromWeek, toWeek })
      }
      const classes = [{ capacityMl: 3000, isWide: true, jarIds }]
      const found = assignJars(loads, classes, [{ jarId: 'c', untilWeek }], 1)
      count += found.length
      const taken = { jarId: 'c', fromWeek: 0, toWeek: untilWeek }
      const spans = [taken, ...loads.map((load, at) => ({ ...load, jarId: found[at]! }))]
      const isClash = (one: (typeof spans)[number], other: (typeof spans)[number]) =>
        one.jarId === other.jarId && one.fromWeek <= other.toWeek && other.fromWeek <= one.toWeek
      spans.forEach((one, at) => {
        const other = spans.slice(at + 1).find((later) => isClash(one, later))
        if (other) clashes.push(`year ${year}: ${one.jarId} in week ${other.fromWeek}`)
      })
    }
    expect(count).toBeGreaterThan(2000)
    expect(clashes).toEqual([])
  })

  it('throws rather than put two loads into one jar', () => {
    const classes = [{ capacityMl: 3000, isWide: true, jarIds: ['a'] }]
    const load = { classIndex: 0, fromWeek: 0, toWeek: 3 }
    expect(() => assignJars([load, load], classes, [], 0)).toThrow('no jar is free')
  })
})
