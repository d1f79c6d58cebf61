/**
 * What is believed about a batch's fruit, as three unknowns on scales of their own: before any
 * reading each is 0 ± 1. Pace and hold-up are told as logarithms, for both are factors.
 */
import type { Banded } from '../../../shared/schemas/steeping.ts'
import type { FruitTissue, Range } from '../../../shared/schemas/fruits.ts'
import type { Cut } from '../../../shared/schemas/moves.ts'
import { halfTimeRowOf } from '../fruit/half-times.ts'
import type { Tuning } from '../ledger/moves/context.ts'

/** Standard deviations from a 90 % band. */
export const sigmasOf90Pct = 1.6449

/** What one standard deviation of each unknown is. */
export interface Spread {
  readonly lnPace: number
  readonly lnHold: number
  readonly juice: number
}

export type Unknowns = readonly [pace: number, hold: number, juice: number]
export const noNews: Unknowns = [0, 0, 0]

/** Where no range is known litres retained differ by a quarter either way; craft reference. */
const holdWithin = 1.25

/**
 * Of the fruit's own juice. One and a half per cent by volume, two standard deviations, is what a
 * weighed batch's resting strength is good for (craft reference, section 0); five per cent of the
 * juice is what moves a usual jar by half of that.
 */
const juiceSpread = 0.05

/**
 * The library's spread for a fruit: the ranges of its class's half-times and of what it holds when
 * drained (L/kg) are read as 90 % bands.
 */
export function spreadOf(facts: FruitTissue, cut: Cut, drained?: Range): Spread {
  const { low, high } = halfTimeRowOf(facts.kineticClass, cut).ethanol
  return {
    lnPace: Math.log(high / low) / (2 * sigmasOf90Pct),
    lnHold:
      drained && drained.low > 0
        ? Math.log(drained.high / drained.low) / (2 * sigmasOf90Pct)
        : Math.log(holdWithin) / sigmasOf90Pct,
    juice: juiceSpread,
  }
}

export const tuningOf = (spread: Spread, [pace, hold, juice]: Unknowns): Tuning => ({
  pace: Math.exp(spread.lnPace * pace),
  hold: Math.exp(spread.lnHold * hold),
  juice: spread.juice * juice,
})

/** Median and 90 % band of each, from a mean and its standard deviations. */
export function bandsOf(spread: Spread, mean: Unknowns, deviations: Unknowns) {
  const factor = (scale: number, index: 0 | 1): Banded => {
    const [at, by] = [scale * mean[index], scale * sigmasOf90Pct * deviations[index]]
    return { value: Math.exp(at), low: Math.exp(at - by), high: Math.exp(at + by) }
  }
  const [at, by] = [spread.juice * mean[2], spread.juice * sigmasOf90Pct * deviations[2]]
  return {
    pace: factor(spread.lnPace, 0),
    hold: factor(spread.lnHold, 1),
    juice: { value: at, low: at - by, high: at + by },
  }
}
