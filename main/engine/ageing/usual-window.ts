/**
 * When is a liqueur of these fruits usually ready, and when does it fade?
 *
 * Method: resting months and drink-by years of each fruit, mixed by share as logarithms; a fruit of
 * the maker's own without them takes those of its type, honey and plain sweetened spirit theirs
 * (craft reference, practice). A range is read as the 90 % band of a log-normal. In the usual
 * storage, counted from bottling. Out: natural logarithms of days, with standard deviations.
 * Leaves out: rest in the jar before bottling. Published aroma data are thin: this is taste advice.
 * @example Math.exp(usualWindow({ fruits: [], honeyShare: 0 }).ready.ln) // 182.625
 */
import type { Range } from '../../../shared/schemas/fruits.ts'
import type { AgeingLot } from './ageing-lot.ts'
import { sigmasOf90Pct } from '../steeping/beliefs.ts'
import { daysPerMonth } from './storage.ts'

export interface LogNormal {
  readonly ln: number
  readonly sigma: number
}

export interface UsualWindow {
  readonly ready: LogNormal
  readonly fading: LogNormal
}

interface Ranges {
  readonly restMonths: Range
  readonly drinkByYears: Range
}

const ranges = (
  rest: readonly [number, number, number],
  keep: readonly [number, number, number],
): Ranges => ({ restMonths: rangeOf(rest), drinkByYears: rangeOf(keep) })
const rangeOf = ([typical, low, high]: readonly [number, number, number]): Range => ({
  typical,
  low,
  high,
})

/** By the kind that the fruit library and own fruits carry. */
const byKind: ReadonlyMap<string, Ranges> = new Map([
  ['citrus', ranges([1, 0.5, 3], [1, 0.5, 1.5])],
  ['flower', ranges([1, 0.5, 3], [1, 0.5, 1.5])],
  ['berry', ranges([3, 1, 6], [1.5, 1, 3])],
  ['stoneFruit', ranges([6, 3, 12], [5, 2, 12])],
  ['drupe', ranges([9, 6, 18], [5, 2, 12])],
  ['pome', ranges([6, 3, 12], [5, 2, 12])],
  ['hip', ranges([9, 6, 18], [5, 2, 12])],
  ['nut', ranges([12, 6, 24], [10, 5, 20])],
  ['dry', ranges([1, 0.5, 3], [2, 1, 4])],
  ['spice', ranges([1, 0.5, 3], [5, 3, 10])],
])
/** As wide as the table goes in the middle: what nothing is known of. */
const unknownKind = ranges([5, 1, 12], [3, 1, 10])
export const honeyRanges = ranges([6, 3, 12], [5, 2, 10])
/** Spirit with sugar only ages as honey and spirit do. */
const noFruit = honeyRanges

/** Below a week, a range has no logarithm worth having. */
const leastDays = 7
const leastSigma = 0.1
/** A lot is ready before it fades: at the latest after this share of its time. */
const readyAtLatest = 2 / 3

export function usualWindow({
  fruits,
  honeyShare = 0,
}: Pick<AgeingLot, 'fruits' | 'honeyShare'>): UsualWindow {
  const parts = [
    ...fruits.map(({ fruit, share }) => ({ share, ...rangesOf(fruit) })),
    { share: honeyShare, ...honeyRanges },
  ].filter(({ share }) => share > 0)
  const all = parts.length > 0 ? parts : [{ share: 1, ...noFruit }]
  const ready = mixed(all.map((p) => ({ share: p.share, range: inDays(p.restMonths, 1) })))
  const fading = mixed(all.map((p) => ({ share: p.share, range: inDays(p.drinkByYears, 12) })))
  const latest = fading.ln + Math.log(readyAtLatest)
  return { ready: { ...ready, ln: Math.min(ready.ln, latest) }, fading }
}

function rangesOf({
  kind,
  restMonths,
  drinkByYears,
}: AgeingLot['fruits'][number]['fruit']): Ranges {
  const usual = byKind.get(kind) ?? unknownKind
  return {
    restMonths: restMonths ?? usual.restMonths,
    drinkByYears: drinkByYears ?? usual.drinkByYears,
  }
}

function inDays({ typical, low, high }: Range, months: number): Range {
  const days = (value: number) => Math.max(leastDays, value * months * daysPerMonth)
  return { typical: days(typical), low: days(low), high: days(high) }
}

function mixed(parts: readonly { readonly share: number; readonly range: Range }[]): LogNormal {
  const whole = parts.reduce((sum, { share }) => sum + share, 0)
  const mean = (of: (range: Range) => number) =>
    parts.reduce((sum, { share, range }) => sum + share * Math.log(of(range)), 0) / whole
  const width = mean(({ high }) => high) - mean(({ low }) => low)
  return {
    ln: mean(({ typical }) => typical),
    sigma: Math.max(leastSigma, width / (2 * sigmasOf90Pct)),
  }
}
