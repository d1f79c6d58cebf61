/**
 * Which amounts give the liqueur that is wanted?
 *
 * Method: the forward model itself (fold and steeping) inside damped least squares over the amounts
 * that nobody pinned; first within the fruit library's windows, then as far as physics lets it. The
 * part up to the extracts is folded once for all changes of the finish. Wishes left out follow.
 * In: numbers to begin with, pins, wishes. Out: the numbers found, what they come to, and each wish
 * that cannot be met with its limit and how near the nearest draft comes.
 * Within 0.05 % vol and 0.5 g/L where the wishes can be met; test/engine/drafting shows it.
 * Leaves out: times and ways of cutting, which a solve never changes.
 */
import type {
  DraftPin,
  DraftSolution,
  DraftSpec,
  DraftWishes,
  WishName,
} from '../../../shared/schemas/drafts.ts'
import type { Liquid } from '../../../shared/schemas/cellar.ts'
import { describeLiquid } from '../ledger/jar-liquid.ts'
import type { CellarState } from '../ledger/cellar-state.ts'
import { leastSquares } from '../least-squares.ts'
import { outcomeOf } from './outcome.ts'
import type { DraftFacts } from './buying.ts'
import { plannedMoves } from './planned-moves.ts'
import { runToExtracts, runToFinish } from './run-draft.ts'
import { unknownsOf, withUnknowns, type Reach } from './unknowns.ts'
import { unmetNames, whyUnmet, wishedVolumeMl, withinPhysics } from './unmet-wishes.ts'
import { leadingFruit } from './windows.ts'

export interface Solving {
  readonly spec: DraftSpec
  readonly pins: readonly DraftPin[]
  readonly wishes: DraftWishes
}

/** A residual of 1: well inside what is promised, far above rounding. */
const tolerated = { volumeShare: 5e-5, strengthPctVol: 0.004, sugarGPerL: 0.04, acidGPerL: 0.004 }

export function solveDraft(solving: Solving, facts: DraftFacts): DraftSolution {
  const finishedOf = finisher(facts)
  const { spec, finished } = nearest(solving, finishedOf, facts)
  const outcome = outcomeOf(spec, facts)
  const unmet = unmetNames(solving.wishes, spec.bottleSizeMl, finished)
  if (unmet.length === 0) return { spec, outcome, unmet: [] }
  const freed = solving.pins.length > 0 && nearest({ ...solving, pins: [] }, finishedOf, facts)
  const { wishes } = solving
  return {
    spec,
    outcome,
    unmet: unmet.map((wish) =>
      whyUnmet({
        wish,
        wishes,
        spec,
        finished,
        isMetUnpinned: freed && !freed.unmet.includes(wish),
      }),
    ),
  }
}

interface Found {
  readonly spec: DraftSpec
  readonly finished: Liquid | undefined
  readonly unmet: readonly WishName[]
}

function nearest(solving: Solving, finishedOf: Finisher, facts: DraftFacts): Found {
  const { pins } = solving
  const wishes = withinPhysics(solving.wishes, solving.spec)
  const spec = rescaled(solving, finishedOf, facts)
  let best = attempt({ spec, pins, wishes }, finishedOf, facts, 'window')
  for (const reach of ['fortified', 'physics'] as const) {
    if (best.unmet.length === 0) return best
    // From there, and not from the start: what was allowed is used up first.
    const further = attempt({ spec: best.spec, pins, wishes }, finishedOf, facts, reach)
    if (further.unmet.length <= best.unmet.length) best = further
  }
  return best
}

/** A first guess of the right size: everything that is not pinned is made larger alike. */
function rescaled(
  { spec, pins, wishes }: Solving,
  finishedOf: Finisher,
  facts: DraftFacts,
): DraftSpec {
  const wantedMl = wishedVolumeMl(wishes, spec.bottleSizeMl)
  if (wantedMl === undefined || pins.includes('fruit') || pins.includes('spirit')) return spec
  const nowMl = finishedOf(spec)?.volumeMl
  if (!nowMl) return spec
  const unknowns = unknownsOf(spec, pins, leadingFruit(spec, facts.fruitOf), 'physics')
  const x = unknowns.map(({ pin, start }) => (pin === 'fruit' ? wantedMl / nowMl : start))
  return withUnknowns(spec, unknowns, x)
}

function attempt(
  { spec, pins, wishes }: Solving,
  finishedOf: Finisher,
  facts: DraftFacts,
  reach: Reach,
): Found {
  const unknowns = unknownsOf(spec, pins, leadingFruit(spec, facts.fruitOf), reach)
  const fitted = leastSquares({
    residualsAt: (x) =>
      residualsOf(wishes, spec.bottleSizeMl, finishedOf(withUnknowns(spec, unknowns, x))),
    start: unknowns.map(({ start }) => start),
    low: unknowns.map(({ low }) => low),
    high: unknowns.map(({ high }) => high),
    pull: unknowns.map(({ pull }) => pull),
  })
  const found = withUnknowns(spec, unknowns, fitted.x)
  const finished = finishedOf(found)
  return { spec: found, finished, unmet: unmetNames(wishes, spec.bottleSizeMl, finished) }
}

function residualsOf(wishes: DraftWishes, bottleSizeMl: number, liquid: Liquid | undefined) {
  const wantedMl = wishedVolumeMl(wishes, bottleSizeMl)
  const { strengthPctVol, sugarGPerL, acidGPerL } = wishes
  const residuals: number[] = []
  const miss = (wanted: number | undefined, got: number | undefined, tolerance: number) => {
    if (wanted !== undefined) residuals.push(((got ?? 0) - wanted) / tolerance)
  }
  miss(wantedMl, liquid?.volumeMl, tolerated.volumeShare * (wantedMl ?? 1))
  miss(strengthPctVol, liquid?.strengthPctVol, tolerated.strengthPctVol)
  miss(sugarGPerL, liquid?.sugarGPerL, tolerated.sugarGPerL)
  miss(acidGPerL, liquid?.acidGPerL, tolerated.acidGPerL)
  return residuals
}

type Finisher = (spec: DraftSpec) => Liquid | undefined

/** The liqueur of a draft; while only the finish changes, the extracts are not folded again. */
function finisher(facts: DraftFacts): Finisher {
  let known: { key: string; extracts: CellarState } | undefined
  return (spec) => {
    const planned = plannedMoves(spec, facts)
    const { fruits, spirits, steepWaterMl, layeringSugarG, sugarDraws } = spec
    const key = JSON.stringify([fruits, spirits, steepWaterMl, layeringSugarG, sugarDraws])
    if (known?.key !== key) known = { key, extracts: runToExtracts(planned, facts) }
    const matter = runToFinish(planned, known.extracts, facts)
    return matter && describeLiquid(matter)
  }
}
