/** What moves would do, asked a moment after the last keystroke and shown until the next answer. */
import { useEffect, useState } from 'react'
import type { Answer } from '../../../shared/channels.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import { useRead } from '../../app/queries.ts'

export type Preview = Answer<'moves.preview'>

export interface Previewed {
  readonly preview: Preview | undefined
  /** The moves that the preview is of; they lag behind while a new answer is on its way. */
  readonly moves: readonly Move[]
  readonly error: Error | null
}

const pauseMs = 120

export function useSettled<Value>(value: Value): Value {
  const [settled, setSettled] = useState(value)
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), pauseMs)
    return () => clearTimeout(timer)
  }, [value])
  return settled
}

/** `moves` must keep its identity while nothing changes. */
export function useRecordPreview(moves: readonly Move[] | undefined): Previewed {
  const settled = useSettled(moves)
  const { data, error, isPlaceholderData } = useRead(
    'moves.preview',
    { moves: [...(settled ?? [])] },
    { isEnabled: settled !== undefined && moves !== undefined, keepsLast: true },
  )
  return { preview: moves && data, moves: isPlaceholderData ? [] : (settled ?? []), error }
}
