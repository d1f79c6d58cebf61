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

/** Times faster than the kinetic class. */
function fittedPace(session: Session, batchId: string, steps: readonly Step[]): number | undefined {
  const readings = steps.filter(({ recorded }) => recorded.move.kind === 'read')
  if (readings.length < fewestReadings) return undefined
  const { known: steeping } = batchSteeping(session, batchId)
  if (!steeping || steeping.fit.readingsUsed < fewestReadings) return undefined
  return steeping.fit.pace.value
}

/** What a charge recorded now keeps: later edits and lessons never change it. */
export const tissueFor = (session: Session, fruitId: string): FruitTissue =>
  learnedTissue(session.fruits.fruitOf(fruitId), learnedOf(session, fruitId))
