/**
 * One season solved: how good a plan can be found in the time there is, and how near the best it is.
 *
 * Method: a greedy plan first; the whole program next, which proves small seasons the best. What is
 * left open then goes on part by part: a kind that is short, with the kinds that want jars in the
 * same weeks, is planned anew while the others stay, until no part gives more or time is up. The
 * bound of the whole program tells how much any plan could still be better.
 * Money and trouble are then made as small as the same cover allows.
 * In: the question, a solver, seconds. Out: loads, the sum they come to, the bound, the gap as a
 * share of the weight of all that is wanted. The same question gives the same loads, unless time
 * ran out.
 */
import type { LinearProgram } from '../marrying/linear-program.ts'
import { valueOf } from '../marrying/linear-program.ts'
import { greedyLoading } from './greedy-loads.ts'
import { jarProgram } from './jar-program.ts'
import type { Tier } from './demand.ts'
import type { Load, Loading, SeasonQuestion, Way } from './season-program.ts'
import { weightOfTier, wholeWeight } from './weights.ts'

export interface IntegerAsked {
  readonly program: LinearProgram
  /** Values that fit, to begin with. */
  readonly start: readonly number[]
  readonly timeLimitSeconds: number
  /** No nearer to the best is sought. */
  readonly absoluteGap: number
  readonly onGap: (gap: number) => void
}

export interface IntegerSolved {
  readonly values: readonly number[]
  /** No solution is better than that. */
  readonly bound: number
  readonly seconds: number
}

/** Undefined where nothing better than the start was found in time, or nothing fits. */
export type SolveInteger = (asked: IntegerAsked) => IntegerSolved | undefined

export interface SeasonSolved extends Loading {
  /** The plan's sum of weights, and the least that any plan could have. */
  readonly sum: number
  readonly bound: number
  readonly gapShare: number
  readonly isProven: boolean
  /** That the solver took. */
  readonly seconds: number
}

export interface Solving {
  readonly solve: SolveInteger
  readonly timeLimitSeconds: number
  /** A plan known to fit; the better of it and a greedy one is begun with. */
  readonly known?: Loading
  readonly onGap?: (gapShare: number) => void
  /** Share of the whole weight that is near enough to the best; half a hundredth when left out. */
  readonly nearEnough?: number
  /** True where only what is covered matters: money and trouble stay as they come. */
  readonly isCoverOnly?: boolean
}

/** In units of the sum. */
const rounding = 1e-6

/** Of the whole weight: nearer to the best is no better to a maker. */
const enoughShare = 0.005

/** Share of the time for the whole program; the parts get the rest. */
const wholeProgramShare = 0.3
const partShare = 0.15
/** Kept back for money and trouble. */
const savingShare = 0.2
/** Of the money and trouble there is: a plan that much dearer is as good. */
const enoughSaved = 0.05

export function solveSeason(question: SeasonQuestion, solving: Solving): SeasonSolved {
  const { solve, timeLimitSeconds, known, nearEnough = enoughShare } = solving
  const jars = jarProgram(question)
  const { program } = jars
  const whole = wholeWeight(question)
  const shareOf = (gap: number) => (whole > 0 ? Math.max(0, gap) / whole : 0)
  const absoluteGap = Math.max(1e-6, nearEnough * whole)
  const withSum = (values: readonly number[]) => ({
    values,
    sum: valueOf(program.minimise, values),
  })

  let best = [greedyLoading(question), ...(known ? [known] : [])]
    .map((loading) => withSum(jars.valuesOf(loading)))
    .reduce((least, next) => (next.sum < least.sum ? next : least))
  let bound = 0
  const keptBack = solving.isCoverOnly ? 0 : savingShare * timeLimitSeconds
  let secondsLeft = timeLimitSeconds - keptBack
  const attempt = (tried: LinearProgram, seconds: number): boolean => {
    const before = best.sum
    const solved = solve({
      program: tried,
      start: best.values,
      timeLimitSeconds: Math.min(seconds, secondsLeft),
      absoluteGap,
      onGap: (gap) => solving.onGap?.(shareOf(tried === program ? gap : best.sum - bound)),
    })
    if (!solved) return false
    secondsLeft -= solved.seconds
    const found = withSum(solved.values)
    if (found.sum < best.sum) best = found
    if (tried === program) bound = Math.max(bound, solved.bound)
    return best.sum < before - absoluteGap / 20
  }
  const isDone = () => best.sum - bound <= absoluteGap * 1.01 || secondsLeft <= 0.05

  const isSmall = question.kinds.length <= kindsOfPart
  attempt(program, isSmall ? timeLimitSeconds : wholeProgramShare * timeLimitSeconds)
  let isBetter = !isSmall
  while (isBetter && !isDone()) {
    isBetter = false
    for (const part of partsOf(question, jars.loadingOf(best.values).loads)) {
      if (isDone()) break
      const freed = new Set(part.flatMap((kindIndex) => jars.variablesOfKind(kindIndex)))
      const fixed = question.kinds.flatMap((_, kindIndex) =>
        part.includes(kindIndex) ? [] : jars.variablesOfKind(kindIndex),
      )
      const held = heldAt(program, best.values, new Set(fixed.filter((v) => !freed.has(v))))
      if (attempt(held, partShare * timeLimitSeconds)) isBetter = true
    }
  }
  // What no part could better may still be bettered as a whole, or proven.
  if (!isSmall && !isDone()) attempt(program, secondsLeft)
  secondsLeft += keptBack
  if (!solving.isCoverOnly && secondsLeft > 0.05) {
    const saving = jars.saving(jars.uncoveredOf(best.values) + rounding)
    const saved = solve({
      program: saving,
      start: best.values,
      timeLimitSeconds: Math.min(secondsLeft, timeLimitSeconds / 2),
      absoluteGap: Math.max(1e-6, enoughSaved * valueOf(saving.minimise, best.values)),
      onGap: () => solving.onGap?.(shareOf(best.sum - bound)),
    })
    if (saved) {
      secondsLeft -= saved.seconds
      const found = withSum(saved.values)
      if (found.sum < best.sum) best = found
    }
  }
  const gapShare = shareOf(best.sum - bound)
  return {
    ...jars.loadingOf(best.values),
    sum: best.sum,
    bound,
    gapShare,
    isProven: best.sum - bound <= absoluteGap * 1.01,
    seconds: timeLimitSeconds - secondsLeft,
  }
}

/** The program with some variables held where they are. */
const heldAt = (
  program: LinearProgram,
  values: readonly number[],
  held: ReadonlySet<number>,
): LinearProgram => ({
  ...program,
  variables: program.variables.map((variable, index) => {
    if (!held.has(index)) return variable
    const value = Math.min(Math.max(values[index] ?? 0, variable.low), variable.high)
    return { low: value, high: value, isWhole: false }
  }),
})

/** How many kinds are planned anew together. */
const kindsOfPart = 5

/** For each kind that is short, the worst first: it, and those that stand in jars in its weeks. */
function partsOf(question: SeasonQuestion, loads: readonly Load[]): number[][] {
  const { kinds, ways } = question
  const madeL = kinds.map(() => 0)
  for (const { wayIndex, kg } of loads) {
    const way = ways[wayIndex] as Way
    madeL[way.kindIndex] = (madeL[way.kindIndex] as number) + kg * way.lPerKg
  }
  const weeksOf = kinds.map((_, kindIndex) => weeksTaken(question, kindIndex))
  const missing = kinds.map((kind, index) => shortWeight(kind.tiers, madeL[index] as number))
  return kinds
    .map((_, index) => index)
    .filter((index) => (missing[index] as number) > 1e-6)
    .sort((a, b) => (missing[b] as number) - (missing[a] as number))
    .map((index) => {
      const own = weeksOf[index] as Set<number>
      const others = kinds
        .map((_, other) => ({
          other,
          shared: [...(weeksOf[other] as Set<number>)].filter((week) => own.has(week)).length,
        }))
        .filter(({ other, shared }) => other !== index && shared > 0)
        .sort((a, b) => b.shared - a.shared || a.other - b.other)
      return [index, ...others.slice(0, kindsOfPart - 1).map(({ other }) => other)]
    })
}

/** Weeks in which a kind may stand in a jar. */
const weeksTaken = ({ ways }: SeasonQuestion, kindIndex: number): Set<number> =>
  new Set(
    ways
      .filter((way) => way.kindIndex === kindIndex)
      .flatMap(({ starts, settleToWeek }) =>
        starts.flatMap(({ week }) => Array.from({ length: settleToWeek }, (_, at) => week + at)),
      ),
  )

/** What stays uncovered, the least urgent first, by its weight. */
export function shortWeight(tiers: readonly Tier[], madeL: number): number {
  let leftL = madeL
  return tiers.reduce((sum, tier) => {
    const tierL = tier.volumeMl / 1000
    const shortL = Math.max(0, tierL - leftL)
    leftL = Math.max(0, leftL - tierL)
    return sum + weightOfTier(tier) * shortL
  }, 0)
}
