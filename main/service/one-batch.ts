/** What every channel about one batch begins with: the batch itself, and the stages it went through. */
import { batchById } from '../cellar/batch-store.ts'
import type { Batch, StageBand } from '../../shared/schemas/cellar.ts'
import { nowMs } from './handlers/handler.ts'
import { instant } from './lot-rows.ts'
import { notFound } from './service-error.ts'
import type { Session } from './session.ts'

export function batchOf(session: Session, id: string): Batch {
  const batch = batchById(session.book, id)
  if (!batch) throw notFound('batch', id)
  return batch
}

export function bandsOfBatch(session: Session, batchId: string): StageBand[] {
  const found = session.ledger.folded.cellar.batches.get(batchId)?.bands ?? []
  return found
    .map(({ stage, fromMs }, index) => ({
      stage,
      from: instant(fromMs),
      to: instant(found[index + 1]?.fromMs ?? Math.max(fromMs, nowMs(session))),
    }))
    .filter(({ from, to }) => from !== to)
}
