/**
 * What is to be made next season, of what, when, in which jars, and what has to be bought for it?
 *
 * Method: what is drunk, given and wished, less what is left by the time it is ready, becomes litres
 * of each kind (demand.ts); recipes and own yields turn them into fruit, spirit, sugar and room in
 * jars (kind-recipe.ts, season-yield.ts); an integer program finds the loads that cover most within
 * jars, money, shelf and spirit (jar-program.ts, weights.ts); single jars are handed out, each load
 * becomes a draft that the engine runs once more. With explanations, the program is solved again
 * for each limit eased and for other harvests.
 * In: the facts of a cellar, a solver, seconds. Out: the plan, how sure it is to be the best, why.
 * Leaves out: when hands are free, and what a jar of another shape than those in use could do.
 */
import type {
  SeasonNotice,
  SeasonPlan,
  SeasonSpan,
  SeasonStep,
} from '../../../shared/schemas/season.ts'
import type { DraftFacts } from '../drafting/buying.ts'
import { bindingLimits, cutBy, reasonsBehind } from './binding-limits.ts'
import { reckonSeason, type Reckoned, type Reckoning } from './reckon-season.ts'
import type { SeasonFacts } from './season-facts.ts'
import { seasonKinds, type KindAsked } from './season-kinds.ts'
import { seasonNotices } from './season-notices.ts'
import { minorPerL } from './weights.ts'
import { easings, mostUseful, reliefOf } from './season-reliefs.ts'
import { harvests, variantOf } from './season-variants.ts'
import type { SolveInteger } from './solve-season.ts'
import { timeLeft, type Clock } from './time-left.ts'
import { told } from './told-kind.ts'
import { instant, mondayMs, weeksShown } from './weeks.ts'

export interface Progress {
  readonly step: SeasonStep
  /** 0 to 1. */
  readonly progress: number
  readonly gapShare?: number
  /** As far as it is made. */
  readonly plan?: SeasonPlan
}

export interface PlanOptions {
  readonly solve: SolveInteger
  readonly isExplained: boolean
  /** For the plan itself, from the start of the clock; each further question gets a share of it. */
  readonly timeLimitSeconds: number
  readonly clock: Clock
  readonly onProgress?: (progress: Progress) => void
}

/** Of the plan's own time, for each question asked after it. */
const questionShare = 0.2
/** Kept back, to run each batch through the engine once more. */
const replayShare = 0.05
/** How far along each step begins, when there are explanations to come. */
const begins = {
  recipes: 0,
  covering: 0.05,
  placing: 0.4,
  explaining: 0.45,
  variants: 0.8,
} as const

export function planSeason(facts: SeasonFacts, options: PlanOptions): SeasonPlan {
  const { solve, timeLimitSeconds, clock, isExplained } = options
  const solvedBy = (1 - replayShare) * timeLimitSeconds
  const tell = (progress: Progress) => options.onProgress?.(progress)
  tell({ step: 'recipes', progress: begins.recipes })
  const draftFacts = factsOfFruits(facts)
  const { kinds, notices } = seasonKinds(facts)
  tell({ step: 'covering', progress: begins.covering })
  const reckoning: Reckoning = {
    facts,
    kinds,
    draftFacts,
    solve,
    secondsLeft: () => solvedBy - clock(),
    onGap: (gapShare) => tell({ step: 'covering', progress: begins.covering, gapShare }),
  }
  const first = reckonSeason(reckoning)
  const made = planOf(facts, kinds, first, notices, clock())
  if (!isExplained) return made
  tell({ step: 'placing', progress: begins.placing, plan: made })

  const asking = (): Reckoning => ({
    facts,
    kinds,
    draftFacts,
    solve,
    secondsLeft: timeLeft(clock, questionShare * timeLimitSeconds),
  })
  // Where time was up, the time of one question goes on with the plan itself: else what an eased
  // limit seems to bring could be no more than a longer search.
  const longer = first.solved.isProven ? first : reckonSeason({ ...asking(), known: first.solved })
  const isBetter = longer.solved.sum < first.solved.sum
  const reckoned = isBetter ? longer : first
  const bare = isBetter ? planOf(facts, kinds, longer, notices, clock()) : made

  const asked = reckoned.totals.shortMl > 0 ? easings(reckoning) : []
  const reliefs = asked.flatMap((easing, index) => {
    const done = index / asked.length
    const progress = begins.explaining + done * (begins.variants - begins.explaining)
    tell({ step: 'explaining', progress, plan: bare })
    return reliefOf(easing, reckoned, asking()) ?? []
  })
  const explained = withReliefs(bare, reliefs)
  const variants = harvests.map((harvest, index) => {
    const done = index / harvests.length
    tell({ step: 'variants', progress: begins.variants + done * 0.2, plan: explained })
    return variantOf(harvest, asking())
  })
  return { ...explained, variants }
}

function factsOfFruits({ fruits }: SeasonFacts): DraftFacts {
  const byId = new Map(fruits.map((fruit) => [fruit.id, fruit]))
  return {
    fruitOf: (id) => {
      const fruit = byId.get(id)
      if (!fruit) throw new RangeError(`fruit is ${id}, not among those of the season`)
      return fruit
    },
  }
}

function planOf(
  facts: SeasonFacts,
  kinds: readonly KindAsked[],
  reckoned: Reckoned,
  kindNotices: readonly SeasonNotice[],
  seconds: number,
): SeasonPlan {
  const { batches, purchases, totals, solved, placed, asked } = reckoned
  const reasons = reasonsBehind(kinds, reckoned)
  return {
    madeAt: instant(facts.nowMs),
    startAt: instant(mondayMs(facts.startMs)),
    weekCount: weeksShown,
    wishes: facts.wishes,
    kinds: kinds.map((kind, index) => {
      const shortMl = reckoned.shortMl[index] ?? 0
      const way = asked.question.ways.find(({ kindIndex }) => kindIndex === index)
      return told(kind, {
        batches,
        shortMl,
        cutBy: cutBy(kind, reasons[index] ?? []),
        minorPerL: way && totals.moneyMinor > 0 ? minorPerL(way, asked.question) : undefined,
      })
    }),
    batches: [...batches],
    jars: facts.jars.map(({ id, name, shape, capacityMl }) => ({
      jarId: id,
      name,
      shape,
      capacityMl,
      usedWeeks: usedWeeks(placed.spans, id),
    })),
    spans: [...placed.spans],
    purchases: [...purchases],
    totals,
    binding: bindingLimits(facts, kinds, reckoned, reasons),
    reliefs: [],
    variants: [],
    proof: { isProven: solved.isProven, gapShare: solved.gapShare, seconds },
    notices: seasonNotices(facts, kinds, reckoned, kindNotices),
  }
}

const usedWeeks = (spans: readonly SeasonSpan[], jarId: string): number =>
  spans
    .filter((span) => span.jarId === jarId && span.use !== 'cleaning')
    .reduce(
      (sum, { fromWeek, toWeek }) => sum + Math.max(0, Math.min(toWeek, weeksShown) - fromWeek),
      0,
    )

/** Where easing a limit gives a kind more, that limit is why it was short. */
function withReliefs(plan: SeasonPlan, reliefs: SeasonPlan['reliefs']): SeasonPlan {
  const kinds = plan.kinds.map((kind) => {
    if (kind.shortMl === 0) return kind
    const found = reliefs.filter(({ kinds: gaining }) =>
      gaining.some(({ kindId, gainsMl }) => kindId === kind.kindId && gainsMl > 0),
    )
    const limits = [...new Set(found.map(({ eases }) => eases))]
    const isCapped = kind.cutBy.includes('wish') ? (['wish'] as const) : []
    return limits.length === 0 ? kind : { ...kind, cutBy: [...limits, ...isCapped] }
  })
  return { ...plan, kinds, reliefs: mostUseful(reliefs) }
}
