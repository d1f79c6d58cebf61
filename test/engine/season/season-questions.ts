/** Questions of a season made up at random, the same for the same seed. */
import type { SeasonQuestion, Way } from '../../../main/engine/season/season-program.ts'
import type { Tier } from '../../../main/engine/season/demand.ts'
import type { WishPriority } from '../../../shared/schemas/season.ts'

export function seeded(seed: number): () => number {
  let state = (seed * 2_654_435_761) % 4_294_967_296
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 4_294_967_296
    return state / 4_294_967_296
  }
}

export interface Made {
  readonly kinds: number
  /** Capacity in mL and count. */
  readonly jars: readonly (readonly [capacityMl: number, count: number])[]
  readonly weeks: number
  readonly litres: readonly [low: number, high: number]
  readonly seasonWeeks: readonly [low: number, high: number]
  readonly steepWeeks: readonly [low: number, high: number]
}

export function madeQuestion(seed: number, made: Made): SeasonQuestion {
  const random = seeded(seed)
  const between = ([low, high]: readonly [number, number]) => low + random() * (high - low)
  const whole = (range: readonly [number, number]) => Math.round(between(range))
  const kinds = Array.from({ length: made.kinds }, (_, index) => {
    const wantedL = between(made.litres)
    const priority: WishPriority = (['must', 'should', 'should', 'could'] as const)[
      Math.floor(random() * 4)
    ] as WishPriority
    const tiers: Tier[] = [
      { priority, isSure: true, volumeMl: 600 * wantedL },
      { priority, isSure: false, volumeMl: 400 * wantedL },
    ]
    return { kindId: `kind-${index}`, tiers, wantedL, bottleSizeMl: 500 }
  })
  const ways = kinds.map((_, kindIndex): Way => {
    const length = whole(made.seasonWeeks)
    const first = Math.floor(random() * Math.max(1, made.weeks - length))
    const steep = whole(made.steepWeeks)
    return {
      kindIndex,
      source: 'fresh',
      starts: Array.from({ length }, (_unused, week) => ({
        week: first + week,
        weeksFromPlenty: Math.max(0, Math.abs(week - length / 2) - 2),
      })),
      mostKg: Infinity,
      lPerKg: between([1.5, 2.2]),
      steepMlPerKg: between([1900, 2500]),
      settleMlPerKg: between([1600, 2300]),
      emptiedWeek: steep + 2,
      settleFromWeek: steep,
      settleToWeek: steep + 4,
      fruitMinorPerKg: Math.round(between([200, 900])),
      spiritMlPerKg: [700],
      sweetenerGPerKg: [500],
    }
  })
  return {
    kinds,
    ways,
    classes: made.jars.map(([capacityMl, count], index) => ({
      capacityMl,
      isWide: capacityMl <= 5000,
      jarIds: Array.from({ length: count }, (_, jar) => `jar-${index}-${jar}`),
    })),
    taken: [],
    mustSettle: [],
    cleaningWeeks: 1,
    spirits: [{ atHand: 2000, minorPerUnit: 2.5, mayBuy: true }],
    sweeteners: [{ atHand: 1000, minorPerUnit: 0.12, mayBuy: true }],
    minorPerBottle: 150,
    moneyMinor: undefined,
    shelfBottles: undefined,
  }
}

/** The same with jars taken, batches that must settle, fruit in the pantry, and limits that bind. */
export function limited(seed: number, question: SeasonQuestion): SeasonQuestion {
  const random = seeded(seed + 1000)
  const some = <T>(made: () => T, most: number): T[] =>
    Array.from({ length: Math.floor(random() * (most + 1)) }, made)
  const wantedL = question.kinds.reduce((sum, kind) => sum + kind.wantedL, 0)
  const frozen = question.ways.slice(0, 3).map((way): Way => ({
    ...way,
    source: 'pantry',
    starts: [0, 8, 16, 24].map((week) => ({ week, weeksFromPlenty: 0 })),
    mostKg: 1 + 4 * random(),
    fruitMinorPerKg: 0,
  }))
  return {
    ...question,
    ways: [...question.ways, ...frozen],
    taken: some(
      () => ({
        // Classes from the third on have at least two jars, and one of each is taken at most.
        classIndex: 2 + Math.floor(random() * 2),
        untilWeek: 1 + Math.floor(random() * 20),
      }),
      2,
    ),
    mustSettle: some(() => {
      const fromWeek = Math.floor(random() * 10)
      return { batchId: 'old', fromWeek, toWeek: fromWeek + 4, volumeMl: 1000 + 9000 * random() }
    }, 3),
    spirits: question.spirits.map((supply) => ({
      ...supply,
      atHand: 300 * wantedL * (0.2 + 0.8 * random()),
      mayBuy: random() < 0.7,
    })),
    moneyMinor: random() < 0.5 ? Math.round(600 * wantedL * (0.2 + 0.8 * random())) : undefined,
    shelfBottles: random() < 0.5 ? Math.round(3 * wantedL * (0.2 + 0.8 * random())) : undefined,
  }
}

/** Twenty jars of six sizes, fifteen kinds: about sixty batches, more or less than the jars can do. */
export const fullYear = (litres: readonly [number, number]): Made => ({
  kinds: 15,
  jars: [
    [2000, 4],
    [3000, 4],
    [4000, 6],
    [5000, 3],
    [10_000, 2],
    [15_000, 1],
  ],
  weeks: 52,
  litres,
  seasonWeeks: [4, 12],
  steepWeeks: [2, 10],
})
