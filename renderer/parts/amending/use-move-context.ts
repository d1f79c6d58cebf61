/** What the form of a recorded move may offer: of its batch, or of the whole cellar where it names none. */
import { useMemo } from 'react'
import type { Move } from '../../../shared/schemas/moves.ts'
import { newId } from '../../app/new-id.ts'
import { useRead } from '../../app/queries.ts'
import type { LogContext } from '../moves/drafts/log-context.ts'

/**
 * Undefined until the vessels, the pantry and the bottles have been read. `ofBatchId` is a batch that
 * the move concerns though it does not name one.
 */
export function useMoveContext(move: Move, ofBatchId: string | undefined): LogContext | undefined {
  const jars = useRead('jars.list', {}).data
  const pantry = useRead('pantry.list', {}).data
  const bottles = useRead('bottles.list', {}).data
  const batchId = 'batchId' in move ? move.batchId : undefined
  return useMemo(
    () =>
      jars &&
      pantry &&
      bottles && {
        batchId: batchId ?? ofBatchId ?? '',
        jars,
        pantry,
        bottleLots: bottles.filter((lot) => batchId === undefined || lot.batchId === batchId),
        now: () => new Date().toISOString(),
        newId,
      },
    [jars, pantry, bottles, batchId, ofBatchId],
  )
}
