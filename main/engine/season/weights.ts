/**
 * What a plan is judged by, in one sum: first what stays uncovered, then money, then trouble.
 *
 * The unit is the price of the dearest litre that could be made. A litre that could be had and is
 * not weighs ten of those, one that should be a hundred, one that must a thousand, and twice as much
 * where it is sure to be drunk: so money decides only between plans that cover alike, to a tenth of
 * a litre. A jar to fill and wash weighs a fifth of a unit, a week off the weeks of plenty a
 * fiftieth, a litre beyond what is wanted (shelf room) a tenth; these small ones are estimates.
 */
import type { Tier } from './demand.ts'
import type { SeasonQuestion, Way } from './season-program.ts'

const litreShort = { must: 1000, should: 100, could: 10 } as const

export const weightOfTier = ({ priority, isSure }: Tier): number =>
  litreShort[priority] * (isSure ? 2 : 1)

export const weights = {
  steepLoad: 0.2,
  settleLoad: 0.1,
  weekOffPlenty: 0.02,
  narrowSteep: 0.05,
  litreOver: 0.1,
  /** A litre of today's batches that finds no jar: worse than any wish unmet. */
  homelessLitre: 5000,
} as const

/** What a litre made this way costs when all of it is bought. */
export function minorPerL(way: Way, question: SeasonQuestion): number {
  const { kinds, spirits, sweeteners, minorPerBottle } = question
  const perKg =
    way.fruitMinorPerKg +
    priceOf(way.spiritMlPerKg, spirits) +
    priceOf(way.sweetenerGPerKg, sweeteners)
  const bottleSizeMl = kinds[way.kindIndex]?.bottleSizeMl ?? 1000
  return perKg / way.lPerKg + (minorPerBottle * 1000) / bottleSizeMl
}

const priceOf = (amounts: readonly number[], supplies: SeasonQuestion['spirits']): number =>
  amounts.reduce((total, amount, index) => total + amount * (supplies[index]?.minorPerUnit ?? 0), 0)

/** One minor unit of money in units of the sum. */
export function weightOfMinor(question: SeasonQuestion): number {
  const dearest = Math.max(0, ...question.ways.map((way) => minorPerL(way, question)))
  return dearest > 0 ? 1 / dearest : 0
}

/** The whole weight of what is wanted: the sum of a plan that covers nothing. */
export const wholeWeight = ({ kinds }: SeasonQuestion): number =>
  kinds
    .flatMap(({ tiers }) => tiers)
    .reduce((sum, tier) => sum + (weightOfTier(tier) * tier.volumeMl) / 1000, 0)
