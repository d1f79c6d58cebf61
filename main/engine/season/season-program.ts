/**
 * Which loads, in which jars, in which weeks, cover the most that is wanted? The question as data.
 *
 * Amounts come ready for reckoning: a kind is what is wanted of it and the ways it may be made; a
 * way is a recipe, a source of fruit, and the weeks it may start in.
 */
import type { Tier } from './demand.ts'

/** Jars of one size; which of them a load stands in is settled afterwards. */
export interface JarClass {
  readonly capacityMl: number
  /** Wide enough to get fruit out of easily. */
  readonly isWide: boolean
  readonly jarIds: readonly string[]
}

/** A week in which a way may start, and how far it lies from the weeks of plenty. */
export interface StartWeek {
  readonly week: number
  readonly weeksFromPlenty: number
}

export interface Way {
  readonly kindIndex: number
  readonly source: 'fresh' | 'pantry'
  readonly starts: readonly StartWeek[]
  readonly mostKg: number
  readonly lPerKg: number
  readonly steepMlPerKg: number
  readonly settleMlPerKg: number
  /** Whole weeks from the start: the steeping jar is empty again; the settling jar is taken, and free. */
  readonly emptiedWeek: number
  readonly settleFromWeek: number
  readonly settleToWeek: number
  readonly fruitMinorPerKg: number
  /** By the season's spirits and sweeteners, in their order. */
  readonly spiritMlPerKg: readonly number[]
  readonly sweetenerGPerKg: readonly number[]
}

export interface WantedKind {
  readonly kindId: string
  readonly tiers: readonly Tier[]
  readonly wantedL: number
  readonly bottleSizeMl: number
}

/** Goods poured from the pantry first; more is bought unless it may not be. */
export interface Supply {
  readonly atHand: number
  readonly minorPerUnit: number
  readonly mayBuy: boolean
}

/** One jar taken in a class from the start until a week. */
export interface Taken {
  readonly classIndex: number
  readonly untilWeek: number
}

/** Liquid of today's batches that must find a jar. */
export interface MustSettle {
  readonly batchId: string
  readonly fromWeek: number
  readonly toWeek: number
  readonly volumeMl: number
}

export interface SeasonQuestion {
  readonly kinds: readonly WantedKind[]
  readonly ways: readonly Way[]
  readonly classes: readonly JarClass[]
  readonly taken: readonly Taken[]
  readonly mustSettle: readonly MustSettle[]
  readonly cleaningWeeks: number
  /** Per mL. */
  readonly spirits: readonly Supply[]
  /** Per g. */
  readonly sweeteners: readonly Supply[]
  /** Bottle, cork and label together. */
  readonly minorPerBottle: number
  readonly moneyMinor: number | undefined
  readonly shelfBottles: number | undefined
}

/** So many jars of a class, filled for a way from its start in a week. */
export interface Load {
  readonly wayIndex: number
  readonly week: number
  readonly kg: number
  /** How many jars of each class it steeps in, and settles in. */
  readonly steep: readonly number[]
  readonly settle: readonly number[]
}

/** How many jars of each size one of today's batches settles in, and what found none. */
export interface Settled {
  readonly jars: readonly number[]
  readonly homelessMl: number
}

/** All that a plan puts into jars. */
export interface Loading {
  readonly loads: readonly Load[]
  /** In the order of what must settle. */
  readonly settled: readonly Settled[]
}

/**
 * How full a jar should at least be, for fruit to stay covered and extracts to stand under little
 * air; an estimate.
 */
export const leastFillFraction = 0.4

/**
 * The smallest amount that fills two jars far enough, one to steep and one to settle in. Infinite
 * with fewer than two jars.
 */
export const leastL = (way: Way, classes: readonly JarClass[]): number =>
  fillingL(way, sizesOf(classes).slice(0, 2))

/**
 * What a kind may come to at most: what is wanted, and a little more of what is too little for its
 * jars: as much as fills the next larger ones too, should the smallest be taken, but never more
 * than twice what is wanted.
 */
export function mostL(question: SeasonQuestion, kindIndex: number): number {
  const { wantedL } = question.kinds[kindIndex] as WantedKind
  const sizes = sizesOf(question.classes)
  const filling = question.ways
    .filter((way) => way.kindIndex === kindIndex)
    .map((way) => fillingL(way, sizes.slice(sizes.length > 2 ? 1 : 0).slice(0, 2)))
  return Math.max(wantedL, Math.min(mostShareOfWanted * wantedL, ...filling))
}

export const mostShareOfWanted = 2

const sizesOf = (classes: readonly JarClass[]): number[] =>
  classes.flatMap(({ capacityMl, jarIds }) => jarIds.map(() => capacityMl)).sort((a, b) => a - b)

/** Two jars, either of them to steep in, filled as little as may be. */
function fillingL(way: Way, [oneMl = Infinity, otherMl = Infinity]: readonly number[]): number {
  const leastKg = (steepMl: number, settleMl: number) =>
    leastFillFraction * Math.max(steepMl / way.steepMlPerKg, settleMl / way.settleMlPerKg)
  return way.lPerKg * Math.min(leastKg(oneMl, otherMl), leastKg(otherMl, oneMl))
}
