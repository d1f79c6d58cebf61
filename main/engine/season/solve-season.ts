/**
 * One season solved: how good a plan can be found in the time there is, and how near the best it is.
 *
 * Method: the program without whole numbers gives a bound that no plan can better; a search lays and
 * relays loads until it is near enough to that. What is left open the program with whole numbers
 * goes on with, which proves small seasons the best. Money and trouble are then made as small as the
 * same cover allows, and what still fits is laid.
 * In: the question, a solver, the seconds left. Out: loads, the sum they come to, the bound, the gap
 * as a share of the weight of all that is wanted. The same question gives the same loads, unless
 * time ran out.
 */
import type { LinearProgram } from '../marrying/linear-program.ts'
import { valueOf } from '../marrying/linear-program.ts'
import { jarProgram } from './jar-program.ts'
import { PlanSketch } from './plan-sketch.ts'
import { searchLoads } from './search-loads.ts'
import type { Loading, SeasonQuestion } from './season-program.ts'
import { wholeWeight } from './weights.ts'

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
}

/** Undefined where nothing better than the start was found in time, or nothing fits. */
export type SolveInteger = (asked: IntegerAsked) => IntegerSolved | undefined

export interface SeasonSolved extends Loading {
  /** The plan's sum of weights, and the least that any plan could have. */
  readonly sum: number
  readonly bound: number
  readonly gapShare: number
  readonly isProven: boolean
}

export interface Solving {
  readonly solve: SolveInteger
  readonly secondsLeft: () => number
  /** A plan known to fit, to begin with. */
  readonly known?: Loading
  readonly onGap?: (gapShare: number) => void
  /** Share of the whole weight that is near enough to the best. */
  readonly nearEnough?: number
  /** True where only what is covered matters: money and trouble stay as they come. */
  readonly isCoverOnly?: boolean
}

/** In units of the sum. */
const rounding = 1e-6

/** Of the whole weight: nearer to the best is no better to a maker. */
const enoughShare = 0.002
/** What one limit brings is told by the glass. */
const enoughShareOfCover = 0.0005

/** Shares of the time: for the search, and kept back for money and trouble. */
const searchShare = 0.65
const savingShare = 0.15
/** Of the money and trouble there is: a plan that much dearer is as good. */
const enoughSaved = 0.05
/** Too little to ask a solver anything. */
const leastSeconds = 0.05

export function solveSeason(question: SeasonQuestion, solving: Solving): SeasonSolved {
  const { solve, secondsLeft, known, isCoverOnly = false } = solving
  const { nearEnough = isCoverOnly ? enoughShareOfCover : enoughShare } = solving
  const wholeSeconds = secondsLeft()
  const keptBack = isCoverOnly ? 0 : savingShare * wholeSeconds
  const jars = jarProgram(question)
  const { program } = jars
  const whole = wholeWeight(question)
  const shareOf = (gap: number) => (whole > 0 ? Math.max(0, gap) / whole : 0)
  const absoluteGap = Math.max(1e-6, nearEnough * whole)
  const withSum = (values: readonly number[]) => ({
    values,
    sum: valueOf(program.minimise, values),
  })

  let best = withSum(jars.valuesOf(known ?? nothing))
  const offer = (values: readonly number[]): void => {
    const next = withSum(values)
    if (next.sum < best.sum) best = next
  }
  let bound = 0
  const isDone = () =>
    best.sum - bound <= absoluteGap * 1.01 || secondsLeft() - keptBack <= leastSeconds
  const asked = (tried: LinearProgram) =>
    solve({
      program: tried,
      start: best.values,
      timeLimitSeconds: secondsLeft() - keptBack,
      absoluteGap,
      onGap: (gap) => solving.onGap?.(shareOf(tried === program ? gap : best.sum - bound)),
    })
  if (!isDone()) bound = Math.max(0, asked(withoutWhole(program))?.bound ?? 0)
  const searchedUntil = secondsLeft() - searchShare * wholeSeconds
  const searched = searchLoads(question, {
    begun: known,
    near: bound + absoluteGap,
    enough: bound + Math.min(absoluteGap, enoughSaved * bound),
    isTimeUp: () => secondsLeft() <= searchedUntil,
  })
  offer(jars.valuesOf(searched))
  solving.onGap?.(shareOf(best.sum - bound))

  if (!isDone()) {
    const solved = asked(program)
    if (solved) offer(solved.values)
    bound = Math.max(bound, solved?.bound ?? 0)
  }

  const saving = jars.saving(jars.uncoveredOf(best.values) + rounding)
  const enough = enoughSaved * valueOf(saving.minimise, best.values)
  if (!isCoverOnly && best.sum - bound > enough && secondsLeft() > leastSeconds) {
    const saved = solve({
      program: saving,
      start: best.values,
      timeLimitSeconds: Math.min(secondsLeft(), savingShare * wholeSeconds),
      absoluteGap: Math.max(1e-6, enough),
      onGap: () => solving.onGap?.(shareOf(best.sum - bound)),
    })
    if (saved) offer(saved.values)
  }

  const filled = new PlanSketch(question, jars.loadingOf(best.values))
  filled.complete()
  offer(jars.valuesOf(filled.loading))
  return {
    ...jars.loadingOf(best.values),
    sum: best.sum,
    bound,
    gapShare: shareOf(best.sum - bound),
    isProven: best.sum - bound <= absoluteGap * 1.01,
  }
}

const nothing: Loading = { loads: [], settled: [] }

/** The program with parts of jars allowed: what no plan of whole jars can better. */
const withoutWhole = (program: LinearProgram): LinearProgram => ({
  ...program,
  variables: program.variables.map((variable) => ({ ...variable, isWhole: false })),
})
