/** The rows in sight of a long list, read in parts: those around what is seen, and no others. */
import { useState } from 'react'
import type { Answer } from '../../../shared/channels.ts'
import type { MoveFilter } from '../../../shared/schemas/all-moves.ts'
import type { CallError } from '../../app/calls.ts'
import { useRead } from '../../app/queries.ts'

export type ListedMove = Answer<'moves.list'>['rows'][number]

/** More rows than are ever in sight at once, so that two neighbouring parts always hold them. */
const partSize = 100

const asked = (filter: MoveFilter, part: number) => ({
  filter,
  from: part * partSize,
  count: partSize,
})

/** What is known of the whole list; the last answer stays while a changed filter is being answered. */
export function useMoveList(wanted: MoveFilter) {
  const head = useRead('moves.list', asked(wanted, 0), { keepsLast: true })
  // The rows shown belong to the total shown: both change together.
  const [shown, setShown] = useState(wanted)
  if (head.data && !head.isPlaceholderData && shown !== wanted) setShown(wanted)
  return { head, filter: shown }
}

/** A row by its number, undefined while it is being read. */
export function useMoveRows(
  filter: MoveFilter,
  firstIndex: number,
  lastIndex: number,
): { rowAt: (index: number) => ListedMove | undefined; error: CallError | null } {
  const parts = [Math.floor(firstIndex / partSize), Math.floor(lastIndex / partSize)] as const
  const first = useRead('moves.list', asked(filter, parts[0]))
  const last = useRead('moves.list', asked(filter, parts[1]))
  return {
    rowAt: (index) => {
      const part = Math.floor(index / partSize)
      const page = part === parts[0] ? first : part === parts[1] ? last : undefined
      return page?.data?.rows[index - part * partSize]
    },
    error: first.error ?? last.error,
  }
}
