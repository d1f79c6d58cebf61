/** Spirit of the pantry that stands opened, and was not said to be shut since. */
import { allShut } from '../cellar/spirit-store.ts'
import { alongLedger, openedSpirit, takePouring, type Pouring } from '../engine/index.ts'
import type { Caution } from '../../shared/schemas/cellar.ts'
import { nowMs } from './handlers/handler.ts'
import type { Session } from './session.ts'

const pouringsAfter = alongLedger({
  start: () => new Map<string, Pouring>(),
  take: takePouring,
})

export function spiritCautions(session: Session): Caution[] {
  const { cellar, steps } = session.ledger.folded
  const shut = [...allShut(session.book)].map(([id, at]) => [id, Date.parse(at)] as const)
  return openedSpirit({
    lots: cellar.lots,
    pourings: pouringsAfter(steps),
    shutAtMs: new Map(shut),
    nowMs: nowMs(session),
  })
}
