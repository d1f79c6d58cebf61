/** One season reckoned: the question put, solved, placed in jars, written out as batches and purchases. */
import type { SeasonBatch, SeasonPurchase, SeasonTotals } from '../../../shared/schemas/season.ts'
import type { DraftFacts } from '../drafting/buying.ts'
import { placed, type Placed } from './placed-loads.ts'
import { seasonBatch } from './season-batches.ts'
import type { Otherwise, SeasonFacts } from './season-facts.ts'
import type { KindAsked } from './season-kinds.ts'
import type { Loading } from './season-program.ts'
import { seasonPurchases } from './season-purchases.ts'
import { seasonQuestion, type Asked } from './season-question.ts'
import { seasonTotals } from './season-totals.ts'
import { solveSeason, type SeasonSolved, type SolveInteger } from './solve-season.ts'
import { mondayMs } from './weeks.ts'

export interface Reckoning {
  readonly facts: SeasonFacts
  readonly kinds: readonly KindAsked[]
  readonly draftFacts: DraftFacts
  readonly solve: SolveInteger
  readonly secondsLeft: () => number
  readonly known?: Loading
  readonly onGap?: (gapShare: number) => void
  readonly isCoverOnly?: boolean
}

/** Solved, but not yet written out: enough to say what an eased limit brings. */
export interface Covered {
  readonly asked: Asked
  readonly solved: SeasonSolved
  /** mL of each kind, in their order. */
  readonly plannedMl: readonly number[]
  readonly shortMl: readonly number[]
}

export interface Reckoned extends Covered {
  readonly placed: Placed
  readonly batches: readonly SeasonBatch[]
  readonly purchases: readonly SeasonPurchase[]
  readonly totals: SeasonTotals
}

const nothingSolved: SeasonSolved = {
  loads: [],
  settled: [],
  sum: 0,
  bound: 0,
  gapShare: 0,
  isProven: true,
}

export function coverSeason(reckoning: Reckoning, otherwise: Otherwise = {}): Covered {
  const { facts, kinds, solve, secondsLeft, known, onGap, isCoverOnly = false } = reckoning
  const asked = seasonQuestion(facts, kinds, otherwise)
  const { ways, classes, mustSettle } = asked.question
  const isEmpty = classes.length === 0 || (ways.length === 0 && mustSettle.length === 0)
  const solved = isEmpty
    ? nothingSolved
    : solveSeason(asked.question, {
        solve,
        secondsLeft,
        isCoverOnly,
        ...(known && { known }),
        ...(onGap && { onGap }),
      })
  const plannedMl = kinds.map(() => 0)
  for (const { wayIndex, kg } of solved.loads) {
    const way = ways[wayIndex]
    if (way) plannedMl[way.kindIndex] = (plannedMl[way.kindIndex] ?? 0) + kg * way.lPerKg * 1000
  }
  const shortMl = kinds.map(({ demand }, index) =>
    withoutRounding(demand.wantedMl - (plannedMl[index] ?? 0)),
  )
  return { asked, solved, plannedMl, shortMl }
}

/** Less than a small glass short is not short. */
const roundingMl = 10
const withoutRounding = (ml: number): number => (ml < roundingMl ? 0 : ml)

export function reckonSeason(reckoning: Reckoning, otherwise: Otherwise = {}): Reckoned {
  const covered = coverSeason(reckoning, otherwise)
  const { asked, solved, shortMl } = covered
  const { facts, kinds, draftFacts } = reckoning
  const inJars = placed(asked.question, solved, facts)
  const batches = inJars.loads
    .map((load) => seasonBatch(load, { facts, kinds, prices: asked.prices, draftFacts }))
    .sort((a, b) => a.week - b.week || (a.key < b.key ? -1 : 1))
  const purchases = seasonPurchases({
    startMs: mondayMs(facts.startMs),
    batches,
    fruitOf: draftFacts.fruitOf,
    prices: asked.prices,
    spirits: asked.spirits,
    sweeteners: asked.sweeteners,
  })
  const wholeShortMl = shortMl.reduce((sum, ml) => sum + ml, 0)
  const totals = seasonTotals(batches, purchases, wholeShortMl)
  return { ...covered, placed: inJars, batches, purchases, totals }
}
