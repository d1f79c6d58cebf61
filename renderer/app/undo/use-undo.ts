/** Taking back what this window did, one group at a time, and putting it back. */
import { useEffect } from 'react'
import { newId } from '../new-id.ts'
import { useWrite } from '../queries.ts'
import { useUndoEvents, useUndoStack } from './undo-context.tsx'

export interface Undoing {
  /** Absent where there is nothing to take back. */
  readonly undo: (() => void) | undefined
  readonly redo: (() => void) | undefined
  readonly error: Error | null
  dismiss: () => void
}

export function useUndo(): Undoing {
  const { done, undone, told } = useUndoStack()
  const tell = useUndoEvents()
  const write = useWrite('moves.undo')
  const { reset } = write
  // A refusal is old news once something else was done.
  useEffect(() => {
    if (told) reset()
  }, [told, reset])

  function takeBack(groupId: string) {
    if (write.isPending) return
    write.mutate(
      { key: newId(), groupId },
      {
        onError: ({ reply }) => {
          // Refused for what rests on it, the group stays: it can be tried again.
          if (reply.code === 'nothingToUndo') tell({ kind: 'gone', groupId })
        },
      },
    )
  }

  const last = done.at(-1)
  const next = undone.at(-1)
  return {
    undo: last === undefined ? undefined : () => takeBack(last),
    redo: next === undefined ? undefined : () => takeBack(next),
    error: write.error,
    dismiss: () => {
      write.reset()
      tell({ kind: 'dismissed' })
    },
  }
}
