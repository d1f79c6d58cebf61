/** What the forms may offer, read from the book. */
import { useIsFetching } from '@tanstack/react-query'
import { useMemo, useState } from 'react'
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'
import { newId } from '../../app/new-id.ts'
import { useRead } from '../../app/queries.ts'
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
        now: () => new Date().toISOString(),
        newId,
      },
    [jars, pantry, summary],
  )
}

const told: readonly unknown[] = ['jars.list', 'pantry.list', 'batches.page']

/**
 * Whether the form of that number may begin: it is filled in from what stands in the cellar, and
 * right after a move the screen still tells what stood there before. Once begun it stays, whatever
 * is read again meanwhile.
 */
export function useMayBegin(serial: number | undefined): boolean {
  const isReading = useIsFetching({ predicate: ({ queryKey }) => told.includes(queryKey[0]) }) > 0
  const [begun, setBegun] = useState<number>()
  if (serial === undefined || serial === begun) return serial !== undefined
  if (isReading) return false
  setBegun(serial)
  return true
}
