/** What this cellar's batches taught of a fruit, and what a charge recorded now keeps of it. */
import { learn, learnedTissue, type Step } from '../engine/index.ts'
import type { FruitLearned, FruitTissue } from '../../shared/schemas/fruits.ts'
import { batchSteeping } from './batch-steeping.ts'
import type { CellarFruits } from './cellar-fruits.ts'
import type { LedgerView } from './ledger-view.ts'
import type { Session } from './session.ts'

interface Known {
  readonly fruits: CellarFruits
  readonly byFruit: Map<string, FruitLearned | undefined>
}

/** Lessons belong to one state of the ledger and of the facts; they are read when first asked for. */
const known = new WeakMap<LedgerView, Known>()

export function learnedOf(session: Session, fruitId: string): FruitLearned | undefined {
  const { ledger, fruits } = session
  let ofView = known.get(ledger)
  if (ofView?.fruits !== fruits) {
    ofView = { fruits, byFruit: new Map() }
    known.set(ledger, ofView)
  }
  if (!ofView.byFruit.has(fruitId)) {
    const paceOf = (batchId: string, steps: readonly Step[]) => fittedPace(session, batchId, steps)
    ofView.byFruit.set(fruitId, learn(ledger.folded, fruits.fruitOf(fruitId), { paceOf }))
  }
  return ofView.byFruit.get(fruitId)
}

/** Fewer readings say more of themselves than of the fruit. */
const fewestReadings = 3

/** A step ends one history only, so what was fitted up to it holds as long as the step is there. */
const fitted = new WeakMap<Step, Map<string, number | undefined>>()

function fittedPace(session: Session, batchId: string, steps: readonly Step[]): number | undefined {
  const last = steps.at(-1)
  const readings = steps.filter(({ recorded }) => recorded.move.kind === 'read')
  if (!last || readings.length < fewestReadings) return undefined
  const upToLast = fitted.get(last) ?? new Map<string, number | undefined>()
  fitted.set(last, upToLast)
  if (!upToLast.has(batchId)) upToLast.set(batchId, paceNow(session, batchId))
  return upToLast.get(batchId)
}

/** Times faster than the kinetic class: the fit tells it against what the charge was believed to be. */
function paceNow(session: Session, batchId: string): number | undefined {
  const { known: steeping, steps } = batchSteeping(session, batchId)
  if (!steeping || steeping.fit.readingsUsed < fewestReadings) return undefined
  const charge = steps.map(({ recorded }) => recorded.move).find((move) => move.kind === 'charge')
  return steeping.fit.pace.value * (charge?.tissue?.pace ?? 1)
}

/** What a charge recorded now keeps: later edits and lessons never change it. */
export const tissueFor = (session: Session, fruitId: string): FruitTissue =>
  learnedTissue(session.fruits.fruitOf(fruitId), learnedOf(session, fruitId))
