/** What the forms may offer, read from the book. */
import { useMemo } from 'react'
import type { BatchSummary } from '../../../../shared/schemas/cellar.ts'
import { newId } from '../../../app/new-id.ts'
import { useRead } from '../../../app/queries.ts'
import type { LogContext } from './drafts/log-context.ts'

/** Undefined until the vessels and the pantry have been read. */
export function useLogContext(summary: BatchSummary): LogContext | undefined {
  const jars = useRead('jars.list', {}).data
  const pantry = useRead('pantry.list', {}).data
  return useMemo(
    () =>
      jars &&
      pantry && {
        batchId: summary.batch.id,
        jars,
        pantry,
        bottleLots: summary.bottleLots,
        next: summary.next,
        now: () => new Date().toISOString(),
        newId,
      },
    [jars, pantry, summary],
  )
}
