/**
 * How much of a kind has to be laid down this season, and why?
 *
 * Method: what is laid down now is ready only after its steeping and its rest, and next season's
 * comes a year later; so it has to last a year from that day, beginning with what is left of today's
 * stock by then. A reserve, gifts and the maker's wishes come on top; at most so much cuts from the
 * least wanted end. What the low end of the drinking asks for is sure, the rest is likely.
 * In: stock and drinking of the kind in mL, with the band that holds nine times in ten; the instant
 * it is ready; wishes. Out: needs with their reasons, and the same in the order they are covered.
 * Leaves out: evaporation, and what is bottled but not ready yet.
 * @example demandOf({ stockMl: 4000, perYearMl: { value: 4000, low: 3000, high: 5000 }, nowMs: 0, readyMs: 31557600000, reserveMonths: 0, wishes: [] }).wantedMl // 4000
 */
import type { SeasonNeed, SeasonWish, WishPriority } from '../../../shared/schemas/season.ts'
import type { Banded } from '../../../shared/schemas/steeping.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'

export interface DemandAsked {
  /** Bottled, and what stands in jars and will be. */
  readonly stockMl: number
  readonly perYearMl: Banded
  readonly nowMs: number
  readonly readyMs: number
  readonly reserveMonths: number
  readonly wishes: readonly SeasonWish[]
}

/** A part of what is wanted: covered in the order of priority, the sure before the likely. */
export interface Tier {
  readonly priority: WishPriority
  readonly isSure: boolean
  readonly volumeMl: number
}

export interface Demand {
  readonly needs: readonly SeasonNeed[]
  readonly wantedMl: number
  readonly atMostMl: number | undefined
  readonly tiers: readonly Tier[]
  readonly leftThenMl: Banded
  readonly runsDryMs: number | undefined
}

const msPerYear = 365.25 * msPerDay
const rank: Record<WishPriority, number> = { must: 0, should: 1, could: 2 }

export function demandOf(asked: DemandAsked): Demand {
  const { stockMl, perYearMl, nowMs, readyMs, reserveMonths, wishes } = asked
  const years = Math.max(0, readyMs - nowMs) / msPerYear
  const leftBy = (rateMl: number) => Math.max(0, stockMl - rateMl * years)
  const yearNeed = (rateMl: number) => Math.max(0, rateMl - leftBy(rateMl))
  const drinkingMl = yearNeed(perYearMl.value)
  const sureMl = Math.min(drinkingMl, yearNeed(perYearMl.low))
  const overMl = Math.max(0, leftBy(perYearMl.value) - perYearMl.value)
  const reserveMl = Math.max(0, (perYearMl.value * reserveMonths) / 12 - overMl)

  const drink = told(wishes, 'drink')
  const gift = told(wishes, 'gift')
  const mustMl = drink.priority === 'must' ? Math.min(drink.atLeastMl, drinkingMl) : 0
  const needs: SeasonNeed[] = [
    { because: 'drinking', priority: 'must', volumeMl: mustMl },
    { because: 'drinking', priority: 'should', volumeMl: drinkingMl - mustMl },
    { because: 'reserve', priority: 'could', volumeMl: reserveMl },
    {
      because: 'wish',
      priority: drink.priority,
      volumeMl: Math.max(0, drink.atLeastMl - drinkingMl - reserveMl),
    },
    { because: 'gift', priority: gift.priority, volumeMl: gift.atLeastMl },
  ]
  const tiers = needs.flatMap((need): Tier[] => {
    if (need.because !== 'drinking' || need.priority === 'must')
      return [{ ...tierOf(need), isSure: need.because !== 'reserve' }]
    const ownSureMl = Math.max(0, Math.min(need.volumeMl, sureMl - mustMl))
    return [
      { ...tierOf(need), isSure: true, volumeMl: ownSureMl },
      { ...tierOf(need), isSure: false, volumeMl: need.volumeMl - ownSureMl },
    ]
  })
  const atMostMl = leastOf(wishes.flatMap(({ atMostMl: most }) => most ?? []))
  const kept = capped(tiers, atMostMl ?? Infinity)
  return {
    needs: needs.filter(({ volumeMl }) => volumeMl > 0),
    wantedMl: kept.reduce((sum, { volumeMl }) => sum + volumeMl, 0),
    atMostMl,
    tiers: kept,
    leftThenMl: {
      value: leftBy(perYearMl.value),
      low: leftBy(perYearMl.high),
      high: leftBy(perYearMl.low),
    },
    runsDryMs:
      perYearMl.value > 0 && stockMl / perYearMl.value < years
        ? nowMs + (stockMl / perYearMl.value) * msPerYear
        : undefined,
  }
}

const tierOf = ({ priority, volumeMl }: SeasonNeed) => ({ priority, volumeMl })

/** The wishes of one purpose together: added up, as urgent as the most urgent of them. */
function told(wishes: readonly SeasonWish[], purpose: SeasonWish['purpose']) {
  const asking = wishes.filter((wish) => wish.purpose === purpose && (wish.atLeastMl ?? 0) > 0)
  const priority = asking
    .map((wish) => wish.priority)
    .reduce<WishPriority>((most, next) => (rank[next] < rank[most] ? next : most), 'could')
  return { atLeastMl: asking.reduce((sum, wish) => sum + (wish.atLeastMl ?? 0), 0), priority }
}

const leastOf = (values: readonly number[]): number | undefined =>
  values.length === 0 ? undefined : Math.min(...values)

/** The most urgent first; what is beyond the most is left out from the end. */
function capped(tiers: readonly Tier[], mostMl: number): Tier[] {
  let leftMl = mostMl
  return [...tiers]
    .sort((a, b) => rank[a.priority] - rank[b.priority] || Number(b.isSure) - Number(a.isSure))
    .flatMap((tier) => {
      const volumeMl = Math.min(tier.volumeMl, leftMl)
      leftMl -= volumeMl
      return volumeMl > 0 ? [{ ...tier, volumeMl }] : []
    })
}
