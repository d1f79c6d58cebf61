/** How many days the trade leaves between one move and the next, and how long a fruit steeps and rests. */
import type { Fruit, Range } from '../../../shared/schemas/fruits.ts'

/** Early, due, late. */
export type Days = readonly [early: number, due: number, late: number]

/**
 * Days after the stage began. Common practice, no source, but for the sugar night (raw fruit under
 * sugar begins to ferment after a day; craft reference, section 5) and the sugar draw (7, from 3 to
 * 21 days; section 6, common practice too).
 */
export const usualDays = {
  addSpirit: [8 / 24, 16 / 24, 1],
  coverWithSugar: [0, 1, 3],
  pourOffSugarDraw: [3, 7, 21],
  /** What still runs together in two days is taken with the second draw. */
  press: [0, 2, 7],
  /** Spent fruit in the air moulds, and the jar is wanted. */
  clearJar: [0, 3, 14],
  marry: [0, 1, 14],
  /** Settles first: 2 to 14 days, and a month where nobody is in a hurry. */
  rack: [2, 7, 30],
  filter: [2, 7, 30],
  /** Racked off its sediment it is ready for the paper. */
  filterRacked: [0, 2, 30],
  bottle: [0, 2, 30],
} as const satisfies Record<string, Days>

/** Weeks that fruit steeps where nothing is known of it: 6, from 2 to 12; craft reference, section 6. */
const usualSteepingDays: Days = [14, 42, 84]

/** Months that a liqueur rests where nothing is known of its fruit; common practice, no source. */
const usualRestDays: Days = [90, 180, 365]

const daysPerMonth = 30.44

/** The fruit that needs longest decides for the jar. */
export const steepingDays = (fruits: readonly Fruit[]): Days =>
  daysOf(
    fruits.flatMap(({ steepingWeeks }) => steepingWeeks ?? []),
    7,
  ) ?? usualSteepingDays

export const restDays = (fruits: readonly Fruit[]): Days =>
  daysOf(
    fruits.flatMap(({ restMonths }) => restMonths ?? []),
    daysPerMonth,
  ) ?? usualRestDays

function daysOf(ranges: readonly Range[], daysEach: number): Days | undefined {
  const [first, ...others] = ranges
  if (!first) return undefined
  const { low, typical, high } = others.reduce((a, b) => (b.typical > a.typical ? b : a), first)
  return [low * daysEach, typical * daysEach, high * daysEach]
}
