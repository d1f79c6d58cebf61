import { describe, expect, it } from 'vitest'
import { JarRoom } from '../../../main/engine/season/jar-room.ts'
import { loadShapes } from '../../../main/engine/season/load-shapes.ts'
import { PlanSketch } from '../../../main/engine/season/plan-sketch.ts'
import {
  leastL,
  mostL,
  type JarClass,
  type Load,
  type SeasonQuestion,
} from '../../../main/engine/season/season-program.ts'
import { shortReasons } from '../../../main/engine/season/short-reasons.ts'
import {
  minorPerL,
  weightOfMinor,
  weightOfTier,
  wholeWeight,
} from '../../../main/engine/season/weights.ts'
import { dearWay, freshWay, handQuestion, pantryWay } from './hand-question.ts'

const fresh = (change: Partial<Load> = {}): Load => ({
  wayIndex: 0,
  week: 2,
  kg: 0.8,
  steep: [1, 0],
  settle: [1, 0],
  ...change,
})
const { classes } = handQuestion()
const jars = (capacityMl: number, count: number): JarClass => ({
  capacityMl,
  isWide: true,
  jarIds: Array.from({ length: count }, (_, index) => `${capacityMl}-${index}`),
})

describe('weights', () => {
  it('weighs a litre short by its urgency, twice where it is sure to be drunk', () => {
    const of = (priority: 'must' | 'should' | 'could', isSure: boolean) =>
      weightOfTier({ priority, isSure, volumeMl: 1 })
    expect([of('must', true), of('must', false)]).toEqual([2000, 1000])
    expect([of('should', true), of('should', false)]).toEqual([200, 100])
    expect([of('could', true), of('could', false)]).toEqual([20, 10])
    expect(wholeWeight(handQuestion())).toBeCloseTo(2000 + 300 + 40, 9)
  })

  it('reckons a litre bought new, glass and all; the dearest is the unit', () => {
    const question = handQuestion()
    expect(question.ways.map((way) => minorPerL(way, question))).toEqual([700, 650, 3000])
    expect(weightOfMinor(question)).toBe(1 / 3000)
    expect(weightOfMinor({ ...question, ways: [] })).toBe(0)
    const free = { ...freshWay, fruitMinorPerKg: 0, spiritMlPerKg: [], sweetenerGPerKg: [] }
    expect(weightOfMinor({ ...question, ways: [free], minorPerBottle: 0 })).toBe(0)
  })
})

describe('mostL', () => {
  it('is what is wanted, or what fills the second and third smallest jars, but never twice as much', () => {
    const wanting = (wantedL: number, change: Partial<SeasonQuestion> = {}) => {
      const [kind, other] = handQuestion().kinds
      return mostL(handQuestion({ kinds: [{ ...kind!, wantedL }, other!], ...change }), 0)
    }
    // Jars of 2 and 4 L: 0.8 kg either way round, 1.6 L.
    expect([wanting(4), wanting(1.6), wanting(1.5), wanting(0.8), wanting(0.7)]).toEqual([
      4, 1.6, 1.6, 1.6, 1.4,
    ])
    // Only two jars: 2 L to steep and 4 L to settle, or the other way round.
    expect(wanting(1.2, { classes: [jars(2000, 1), jars(4000, 1)] })).toBe(1.6)
    // Only one: nothing fills two.
    expect(wanting(1.2, { classes: [jars(2000, 1)] })).toBe(2.4)
    // What the second kind would fill is no matter to the first.
    expect(wanting(1.5, { ways: [freshWay, { ...dearWay, lPerKg: 0.1 }] })).toBe(1.6)
  })

  it('knows the least that fills the two smallest jars', () => {
    // Both of 2 L: 0.4 × 1.25 kg.
    expect(leastL(freshWay, classes)).toBe(1)
    expect(leastL(dearWay, classes)).toBe(0.8)
    // The larger one to steep in: 0.4 × max(1.5, 1.25) kg against 0.4 × max(1, 1.875).
    expect(leastL(freshWay, [jars(3000, 1), jars(2000, 1)])).toBeCloseTo(1.2, 12)
    expect(leastL(freshWay, [jars(2000, 1)])).toBe(Infinity)
    expect(leastL(freshWay, [])).toBe(Infinity)
  })
})

describe('loadShapes', () => {
  it('has every one or two jars that one load can fill, the thriftiest first', () => {
    const shapes = loadShapes(freshWay, classes, 1)
    const told = shapes.map(({ steep, settle }) => `${steep.join()}/${settle.join()}`)
    // Of 16 pairs of sets those whose fills overlap: 0.4 of the one is no more than 0.95 of the other.
    expect([...told].sort()).toEqual(
      [
        ['1,0/1,0'],
        ['0,1/1,0', '0,1/0,1', '0,1/2,0', '0,1/1,1'],
        ['2,0/1,0', '2,0/0,1', '2,0/2,0', '2,0/1,1'],
        ['1,1/0,1', '1,1/2,0', '1,1/1,1'],
      ]
        .flat()
        .sort(),
    )
    const room = shapes.map(({ jarWeeks }) => jarWeeks)
    expect(room).toEqual([...room].sort((a, b) => a - b))
    // 4 L for five weeks to steep and 2 L for four to settle, on 1.1875 kg at most.
    const one = shapes[told.indexOf('0,1/1,0')]!
    expect(one).toMatchObject({
      wants: [
        { classIndex: 0, steep: 0, settle: 1 },
        { classIndex: 1, steep: 1, settle: 0 },
      ],
      leastKg: 0.8,
      jarLWeeks: 28,
    })
    expect(one.mostKg).toBeCloseTo(0.95 * 1.25, 12)
    expect(one.jarWeeks).toBeCloseTo(28 / (0.95 * 1.25 * 2), 12)
    expect(shapes[told.indexOf('1,0/1,0')]!.wants).toEqual([{ classIndex: 0, steep: 1, settle: 1 }])
  })

  it('takes no more jars of a size than there are', () => {
    const single = loadShapes(freshWay, [jars(2000, 1)], 0)
    expect(single.map(({ steep, settle }) => [steep, settle])).toEqual([[[1], [1]]])
    expect(loadShapes(freshWay, [jars(2000, 0)], 0)).toEqual([])
  })

  it('keeps every single pair of many sizes, and else the thriftiest 150', () => {
    const many = Array.from({ length: 12 }, (_, index) => jars(4000 + 200 * index, 2))
    const shapes = loadShapes(freshWay, many, 1)
    const count = (set: readonly number[]) => set.reduce((sum, one) => sum + one, 0)
    const isPair = ({ steep, settle }: (typeof shapes)[number]) =>
      count(steep) === 1 && count(settle) === 1
    expect(shapes.filter(isPair)).toHaveLength(144)
    expect(shapes.length).toBeGreaterThan(150)
    expect(shapes.slice(150).every(isPair)).toBe(true)
    expect(shapes.slice(0, 150).every(isPair)).toBe(false)
  })
})

describe('JarRoom', () => {
  it('allows as much fruit as money, shelf, spirit and pantry each leave', () => {
    const room = new JarRoom(
      handQuestion({
        moneyMinor: 7000,
        shelfBottles: 20,
        spirits: [{ atHand: 1000, minorPerUnit: 2, mayBuy: false }],
      }),
    )
    // 10 L at 700, 10 L in bottles of half a litre, 500 mL of spirit to a kg.
    expect(room.allowedKg(0)).toEqual({ money: 5, shelf: 5, spirit: 2, pantry: Infinity })
    expect(room.allowedKg(1).pantry).toBe(1.5)
    const load = fresh({ wayIndex: 1, kg: 1, steep: [1, 0], settle: [0, 1], week: 20 })
    room.lay(load)
    // 2 L more: 1300 of money, 4 bottles, 500 mL and 1 kg less.
    const after = room.allowedKg(1)
    expect(after.money).toBeCloseTo((7000 - 1300) / 1300, 9)
    expect(after).toMatchObject({ shelf: 4, spirit: 1, pantry: 0.5 })
    // 16 bottles of a quarter litre, 1000 mL of spirit to a kg.
    expect(room.allowedKg(2)).toMatchObject({ shelf: 4, spirit: 0.5, pantry: Infinity })
    room.takeBack(load)
    expect(room.allowedKg(0)).toEqual({ money: 5, shelf: 5, spirit: 2, pantry: Infinity })
    expect(room.allowedKg(1).pantry).toBe(1.5)
  })

  it('has no limit where none is set, and none of spirit where none is poured', () => {
    const room = new JarRoom(handQuestion())
    const { money, shelf, spirit } = room.allowedKg(0)
    expect([money, shelf, spirit]).toEqual([Infinity, Infinity, Infinity])
    const dry = { ...freshWay, spiritMlPerKg: [0] }
    const spirits = [{ atHand: 0, minorPerUnit: 2, mayBuy: false }]
    expect(new JarRoom(handQuestion({ ways: [dry], spirits })).allowedKg(0).spirit).toBe(Infinity)
    const free = { ...dry, fruitMinorPerKg: 0, sweetenerGPerKg: [0] }
    const gratis = handQuestion({ ways: [free], minorPerBottle: 0, moneyMinor: 0 })
    expect(new JarRoom(gratis).allowedKg(0).money).toBe(Infinity)
  })

  it('tells the fewest jars free while a load steeps, while it settles, and while it does both', () => {
    const room = new JarRoom(handQuestion({ taken: [{ classIndex: 0, untilWeek: 2 }] }))
    // Steeps in weeks 2 to 6, settles in 5 to 8, both in 5 and 6; the jar taken is washed in week 2.
    expect(room.freeFor(freshWay, 2)).toEqual({ steep: [1, 1], settle: [2, 1], both: [2, 1] })
    const load = fresh({ steep: [1, 0], settle: [0, 1] })
    room.lay(load)
    expect(room.freeFor(freshWay, 2)).toEqual({ steep: [0, 0], settle: [1, 0], both: [1, 0] })
    expect(room.freeFor(freshWay, 9)).toEqual({ steep: [2, 1], settle: [2, 1], both: [2, 1] })
    expect([1, 2, 3, 6, 7].map((week) => room.least(0, [week, week + 1]))).toEqual([1, 0, 1, 1, 2])
    expect([4, 5, 8, 9].map((week) => room.least(1, [week, week + 1]))).toEqual([1, 0, 0, 1])
    room.takeBack(load)
    expect(room.freeFor(freshWay, 2)).toEqual({ steep: [1, 1], settle: [2, 1], both: [2, 1] })
  })

  it('knows every week that anything asked for could last until', () => {
    const until = (change: Partial<SeasonQuestion>) => {
      const room = new JarRoom(handQuestion({ ways: [], ...change }))
      return Array.from({ length: 60 }, (_, week) => room.least(0, [week, week + 1])).findIndex(
        (free) => free === Infinity,
      )
    }
    expect(until({})).toBe(0)
    expect(until({ taken: [{ classIndex: 1, untilWeek: 4 }] })).toBe(5)
    const must = { batchId: 'old', fromWeek: 1, toWeek: 6, volumeMl: 1 }
    expect(until({ mustSettle: [must] })).toBe(7)
    // Week 9 begun: empty in 13, settled in 15, washed until 16.
    expect(until({ ways: [freshWay] })).toBe(16)
    expect(until({ ways: [{ ...freshWay, emptiedWeek: 20 }] })).toBe(30)
  })
})

describe('PlanSketch', () => {
  it('lays the most urgent first, in as little room as covers it', () => {
    const sketch = new PlanSketch(handQuestion())
    const laid = sketch.cover()
    expect(sketch.loading).toEqual({ loads: laid, settled: [] })
    expect(laid[0]!.wayIndex).not.toBe(2)
    expect(sketch.madeL[0]).toBeCloseTo(4, 2)
    // 1.2 L, to leave as much as fills two jars; the large one alone is left for it.
    expect(sketch.madeL[1]).toBeCloseTo(1.2, 2)
    expect(sketch.cover()).toEqual([])
    const byKind = [0, 1].map((kindIndex) =>
      laid
        .filter(({ wayIndex }) => (wayIndex === 2 ? 1 : 0) === kindIndex)
        .reduce((sum, { kg }) => sum + kg * (kindIndex === 1 ? 1 : 2), 0),
    )
    expect(byKind[0]).toBeCloseTo(sketch.madeL[0]!, 9)
    expect(byKind[1]).toBeCloseTo(sketch.madeL[1]!, 9)
  })

  it('leaves for a further load as much as fills its jars', () => {
    // 2.2 L in two jars of 2 L that hold 1.9 L of it: 0.3 L more would fill no two, so 1.2 and 1 L.
    const [kind, other] = handQuestion().kinds
    const tiers = [{ priority: 'should' as const, isSure: true, volumeMl: 2200 }]
    const sketch = new PlanSketch(
      handQuestion({
        kinds: [
          { ...kind!, tiers, wantedL: 2.2 },
          { ...other!, tiers: [], wantedL: 0 },
        ],
        classes: [jars(2000, 2)],
        ways: [freshWay],
      }),
    )
    const laid = sketch.cover()
    expect(laid.map(({ week }) => week)).toEqual([2, 9])
    expect(laid[0]!.kg).toBeCloseTo(0.6, 9)
    expect(laid[1]!.kg).toBeCloseTo(0.5, 9)
    expect(laid.every(({ steep, settle }) => steep[0] === 1 && settle[0] === 1)).toBe(true)
  })

  it('reckons room, rest and least fruit by what is laid', () => {
    const sketch = new PlanSketch(handQuestion())
    expect(sketch.leftL(0)).toBe(4)
    expect(sketch.leastKg(0, 2)).toBe(0.5)
    sketch.lay(fresh())
    expect(sketch.leftL(0)).toBeCloseTo(2.4, 12)
    expect(sketch.roomKg(fresh())).toBeCloseTo(0.15, 12)
    // Settling is the narrower: 1.9 L of 1.6 L to a kg.
    expect(sketch.roomKg(fresh({ steep: [0, 1] }))).toBeCloseTo(1.1875 - 0.8, 12)
    // While both small ones are in use no two jars are left.
    expect(sketch.leastKg(0, 2)).toBe(Infinity)
    expect(sketch.leastKg(0, 9)).toBe(0.5)
    // With one of them free, it settles what steeps in the large one.
    const other = new PlanSketch(handQuestion())
    other.lay(fresh({ settle: [0, 0] }))
    expect(other.leastKg(0, 2)).toBe(0.8)
  })

  it('takes a load back as if it had never been', () => {
    const sketch = new PlanSketch(handQuestion())
    const before = sketch.sum()
    const load = fresh()
    sketch.lay(load)
    expect(sketch.sum()).toBeLessThan(before)
    sketch.takeBack(load)
    expect(sketch.sum()).toBeCloseTo(before, 9)
    expect(sketch.loads.size).toBe(0)
    expect(sketch.madeL[0]).toBeCloseTo(0, 12)
  })

  it('fills up the jars in use before it takes others, by what is still allowed', () => {
    const begun = { loads: [fresh({ kg: 0.5 })], settled: [] }
    const [kind, other] = handQuestion().kinds
    const none = { ...other!, tiers: [], wantedL: 0 }
    const filled = (wantedL: number, change: Partial<SeasonQuestion> = {}) => {
      const tiers = [{ priority: 'should' as const, isSure: true, volumeMl: 1000 * wantedL }]
      const question = handQuestion({ kinds: [{ ...kind!, tiers, wantedL }, none], ...change })
      const sketch = new PlanSketch(question, begun)
      sketch.complete()
      return [...sketch.loads].map(({ kg }) => Number(kg.toFixed(6)))
    }
    // To what is wanted; to the brim of the jars; to the pantry's spirit; to the money; to the shelf.
    expect(filled(1.5)).toEqual([0.75])
    expect(filled(1.9)).toEqual([0.95])
    const spirits = [{ atHand: 300, minorPerUnit: 2, mayBuy: false }]
    expect(filled(1.5, { spirits })).toEqual([0.6])
    expect(filled(1.5, { moneyMinor: 770 })).toEqual([0.55])
    expect(filled(1.5, { shelfBottles: 2.8 })).toEqual([0.7])
    expect(filled(1)).toEqual([0.5])
  })

  it('finds what must settle the smallest jar that holds it, or the largest until it is in', () => {
    const settled = (volumeMl: number, change: Partial<SeasonQuestion> = {}) => {
      const mustSettle = [{ batchId: 'old', fromWeek: 3, toWeek: 5, volumeMl }]
      return new PlanSketch(handQuestion({ mustSettle, ...change })).loading.settled
    }
    expect(settled(1900)).toEqual([{ jars: [1, 0], homelessMl: 0 }])
    expect(settled(1901)).toEqual([{ jars: [0, 1], homelessMl: 0 }])
    expect(settled(5000)).toEqual([{ jars: [1, 1], homelessMl: 0 }])
    // 3.8 and twice 1.9 L.
    const [whole] = settled(8000)
    expect(whole!.jars).toEqual([2, 1])
    expect(whole!.homelessMl).toBeCloseTo(400, 9)
    // A jar that is taken, or being washed, is none.
    const taken = (untilWeek: number) =>
      settled(1900, { taken: [1, 0].map(() => ({ classIndex: 0, untilWeek })) })
    expect(taken(2)).toEqual([{ jars: [1, 0], homelessMl: 0 }])
    expect(taken(3)).toEqual([{ jars: [0, 1], homelessMl: 0 }])
    expect(settled(100, { classes: [] })).toEqual([{ jars: [], homelessMl: 100 }])
  })

  it('keeps jars for what must settle, found or given', () => {
    const mustSettle = [{ batchId: 'old', fromWeek: 3, toWeek: 5, volumeMl: 1900 }]
    const question = handQuestion({ mustSettle })
    const found = new PlanSketch(question)
    expect([2, 3, 5, 6].map((week) => found.room.least(0, [week, week + 1]))).toEqual([2, 1, 1, 2])
    const given = new PlanSketch(question, {
      loads: [],
      settled: [{ jars: [0, 1], homelessMl: 0 }],
    })
    expect(given.loading.settled).toEqual([{ jars: [0, 1], homelessMl: 0 }])
    expect([2, 3, 5, 6].map((week) => given.room.least(1, [week, week + 1]))).toEqual([1, 0, 0, 1])
    expect(given.room.least(0, [3, 5])).toBe(2)
  })

  it('begins where it is told among the weeks, and goes round', () => {
    const first = (index: number) =>
      new PlanSketch(handQuestion({ ways: [freshWay] })).cover({
        order: () => 0,
        choice: () => 0,
        start: () => index,
      })[0]!.week
    expect([first(0), first(1)]).toEqual([2, 9])
    // Nobody could start in week 9 when a batch of today stands in every jar then.
    const taken = [0, 0, 1].map((classIndex) => ({ classIndex, untilWeek: 8 }))
    const late = new PlanSketch(handQuestion({ ways: [freshWay], taken })).cover()
    expect(late.every(({ week }) => week === 9)).toBe(true)
    expect(late.length).toBeGreaterThan(0)
  })
})

describe('shortReasons', () => {
  const reasons = (change: Partial<SeasonQuestion>) =>
    shortReasons(handQuestion(change), { loads: [], settled: [] })

  it('has none for what is covered', () => {
    const kinds = handQuestion().kinds.map((kind) => ({ ...kind, wantedL: 0, tiers: [] }))
    expect(reasons({ kinds })).toEqual([[], []])
  })

  it('says that nobody knows how to make it, or that there is no fruit', () => {
    expect(reasons({ ways: [dearWay] })[0]).toEqual(['recipe'])
    expect(reasons({ ways: [{ ...freshWay, starts: [] }, dearWay] })[0]).toEqual(['fruitWeeks'])
    // Less in the pantry than fills two jars: 0.5 kg.
    const pantry = (mostKg: number) => reasons({ ways: [{ ...pantryWay, mostKg }] })[0]
    expect([pantry(0.49), pantry(0.5)]).toEqual([['fruitWeeks'], []])
  })

  it('says that jars are lacking when none are, when one is, and when they are taken', () => {
    expect(reasons({ classes: [] })[0]).toEqual(['jars'])
    expect(reasons({ classes: [jars(2000, 1)] })[0]).toEqual(['jars'])
    const taken = (untilWeek: number) =>
      reasons({
        ways: [freshWay],
        classes: [jars(2000, 2)],
        taken: [{ classIndex: 0, untilWeek }],
      })[0]
    // Washed by week 9 it is free for the last start.
    expect([taken(8), taken(30)]).toEqual([[], ['jars']])
  })

  it('names each limit that a further load would pass', () => {
    // The smallest load takes 0.5 kg: 1 L, 700 minor, 2 bottles, 250 mL of spirit.
    const one = { ways: [freshWay] }
    const spirits = (atHand: number) => [{ atHand, minorPerUnit: 2, mayBuy: false }]
    expect(reasons({ ...one, moneyMinor: 699 })[0]).toEqual(['money'])
    expect(reasons({ ...one, moneyMinor: 701 })[0]).toEqual([])
    expect(reasons({ ...one, shelfBottles: 1.9 })[0]).toEqual(['shelf'])
    expect(reasons({ ...one, shelfBottles: 2 })[0]).toEqual([])
    expect(reasons({ ...one, spirits: spirits(249) })[0]).toEqual(['spirit'])
    expect(reasons({ ...one, spirits: spirits(250) })[0]).toEqual([])
    const all = { moneyMinor: 0, shelfBottles: 0, spirits: spirits(0), classes: [] }
    expect(reasons({ ...one, ...all })[0]).toEqual(['jars', 'money', 'shelf', 'spirit'])
    // The pantry’s fruit costs less: by the way that lacks least.
    expect(reasons({ ways: [freshWay, pantryWay], moneyMinor: 660 })[0]).toEqual([])
  })

  it('says that a rest is too little for any jars, unless jars in use could still take it', () => {
    const [kind, other] = handQuestion().kinds
    const short = (kg: number) =>
      shortReasons(
        handQuestion({
          kinds: [{ ...kind!, wantedL: 2.2 }, other!],
          ways: [freshWay],
          classes: [jars(2000, 2)],
        }),
        { loads: [fresh({ kg, steep: [1], settle: [1] })], settled: [] },
      )[0]
    // Full with 1.9 L: 0.3 L more would fill no two jars.
    expect(short(0.95)).toEqual(['tooLittle'])
    // There is room in it: nothing lacks.
    expect(short(0.9)).toEqual([])
  })
})
