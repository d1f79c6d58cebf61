/** How a batch steeps by its maker's own readings: the fit, its bands, the curve and the forecast. */
import {
  bandsOf,
  ensembleOf,
  ethanolMl,
  fitSteeping,
  fruitTissue,
  measuredHold,
  noNews,
  replayOf,
  spreadOf,
  stepsOf,
  type Belief,
  type CellarState,
  type Ensemble,
  type FitReading,
  type Replay,
  type SteepingFit,
  type Step,
} from '../engine/index.ts'
import type { Banded, BatchFit } from '../../shared/schemas/steeping.ts'
import type { MoveOf } from '../../shared/schemas/moves.ts'
import type { CellarFruits } from './cellar-fruits.ts'
import { interpretationOf } from './describe.ts'
import type { Session } from './session.ts'

export interface BatchSteeping {
  /** The ledger's own steps of this batch. */
  readonly steps: readonly Step[]
  readonly ensemble: Ensemble
  /** Absent while no fruit was charged. */
  readonly known?: { readonly told: Replay; readonly belief: Belief; readonly fit: BatchFit }
  readonly residuals: SteepingFit['residuals']
  readonly outliers: SteepingFit['outliers']
}

/**
 * A fit is worked out when first asked for, and kept as long as the batch's last step and the facts
 * of the fruits are the same: more moves elsewhere leave a step as it is, any change to the past
 * makes new ones.
 */
const known = new WeakMap<Step, WeakMap<CellarFruits, Map<string, BatchSteeping>>>()

export function batchSteeping(session: Session, batchId: string): BatchSteeping {
  const steps = stepsOf(session.ledger.folded.steps, batchId)
  const last = steps.at(-1)
  if (!last) return { steps, ensemble: { middle: steps, outer: [] }, ...noFit }
  // One step may belong to two batches that were married.
  const ofStep = known.get(last) ?? new WeakMap<CellarFruits, Map<string, BatchSteeping>>()
  known.set(last, ofStep)
  const ofFacts = ofStep.get(session.fruits) ?? new Map<string, BatchSteeping>()
  ofStep.set(session.fruits, ofFacts)
  const found = ofFacts.get(batchId) ?? work(session, batchId, steps)
  ofFacts.set(batchId, found)
  return found
}

const noFit = {
  unknowns: noNews,
  residuals: new Map<string, number>(),
  outliers: new Set<string>(),
}

/** Before any reading the three unknowns are independent, each with a spread of one. */
const untold = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
]

function work(session: Session, batchId: string, steps: readonly Step[]): BatchSteeping {
  const { cellar } = session.ledger.folded
  const charge = chargeOf(steps)
  if (!charge) return { steps, ensemble: { middle: steps, outer: [] }, ...noFit }
  const fruit = session.fruits.fruitOf(fruitIdOf(charge, cellar))
  const facts = charge.tissue ?? fruitTissue(fruit)
  const spread = spreadOf(facts, charge.cut, fruit.drainedRangeLPerKg)
  const told = replayOf(steps, cellar, batchId, session.fruits.fruitOf)
  const readings = readingsThatCount(steps)
  const { drainedLPerKg } = measuredHold(steps, batchId)
  const measured = drainedLPerKg === undefined ? undefined : drainedLPerKg / facts.drainedLPerKg
  const hasNews = readings.length > 0 || measured !== undefined
  const fit = hasNews
    ? fitSteeping({ replay: told, spread, readings, measuredHold: measured })
    : { ...noFit, covariance: untold }
  const belief = { spread, unknowns: fit.unknowns, covariance: fit.covariance }
  return {
    steps,
    ensemble: ensembleOf(told, belief),
    known: {
      told,
      belief,
      fit: fitReply(belief, facts.pace ?? 1, {
        readingsUsed: readings.length,
        volumesUsed: measured === undefined ? 0 : 1,
      }),
    },
    residuals: fit.residuals,
    outliers: fit.outliers,
  }
}

function fitReply(
  belief: Belief,
  knownPace: number,
  used: Pick<BatchFit, 'readingsUsed' | 'volumesUsed'>,
): BatchFit {
  const { spread, unknowns, covariance } = belief
  const deviation = (index: number) => Math.sqrt(covariance[index]?.[index] ?? 1)
  const after = bandsOf(spread, unknowns, [deviation(0), deviation(1), deviation(2)])
  const before = bandsOf(spread, noNews, [1, 1, 1])
  // The charge may know its fruit to be faster than the class: the fit is told against that.
  const ofClass = ({ value, low, high }: Banded): Banded => ({
    value: knownPace * value,
    low: knownPace * low,
    high: knownPace * high,
  })
  return {
    ...used,
    ...after,
    pace: ofClass(after.pace),
    priorPace: ofClass(before.pace),
    priorHold: before.hold,
    priorJuice: before.juice,
  }
}

/** The charge that decides the batch's pace: its first. */
const chargeOf = (steps: readonly Step[]): MoveOf<'charge'> | undefined =>
  steps.map((step) => step.recorded.move).find((move) => move.kind === 'charge')

function fruitIdOf(charge: MoveOf<'charge'>, cellar: CellarState): string {
  const goods = cellar.lots.get(charge.lotId)?.goods
  if (goods?.kind !== 'fruit') throw new Error(`lot ${charge.lotId} was charged and is no fruit`)
  return goods.fruitId
}

/** Readings that are believed, of jars whose fruit has steeped in them or still does. */
function readingsThatCount(steps: readonly Step[]): FitReading[] {
  return steps.flatMap((step) => {
    const { move, id } = step.recorded
    const interpretation = interpretationOf(step)
    if (move.kind !== 'read' || !interpretation) return []
    const isUsed = interpretation.doubts.length === 0 || move.isConfirmed === true
    return isUsed ? [{ moveId: id, jarId: move.jarId, interpretation }] : []
  })
}

/** Price of a millilitre of pure ethanol in the spirit that was poured; undefined when not all is known. */
export function priceOfEthanolMl(steps: readonly Step[], cellar: CellarState): number | undefined {
  let paidMinor = 0
  let pouredMl = 0
  for (const { recorded, effect } of steps) {
    const { move } = recorded
    if (move.kind !== 'pourSpirit') continue
    const lot = cellar.lots.get(move.lotId)
    if (!lot || lot.priceMinor === undefined) return undefined
    const ml = ethanolMl(effect.transfers[0]?.matter.ethanolG ?? 0)
    paidMinor += (ml * lot.priceMinor) / ethanolMl(lot.bought.ethanolG)
    pouredMl += ml
  }
  return pouredMl === 0 ? undefined : paidMinor / pouredMl
}
