/** A draft in the making: its moves, what is missing, and whether recording was tried. */
import { useMemo, useState } from 'react'
import type { Move } from '../../../shared/schemas/moves.ts'
import type { Problem } from './drafts/draft-basics.ts'
import { movesOfDraft, type Draft } from './drafts/draft.ts'
import type { LogContext } from './drafts/log-context.ts'

export interface DraftInHand {
  readonly draft: Draft
  readonly setDraft: (draft: Draft) => void
  /** Undefined while something is missing. */
  readonly moves: readonly Move[] | undefined
  /** Empty until `attempt` was called. */
  readonly problems: readonly Problem[]
  /** The moves to record, or undefined after showing what is missing. */
  attempt: () => readonly Move[] | undefined
}

export function useDraft(first: () => Draft, { batchId, pantry }: LogContext): DraftInHand {
  const [draft, setDraft] = useState(first)
  const [isTried, setIsTried] = useState(false)
  const outcome = useMemo(() => movesOfDraft(draft, { batchId, pantry }), [draft, batchId, pantry])
  const moves = outcome.ok ? outcome.moves : undefined
  return {
    draft,
    setDraft,
    moves,
    problems: isTried && !outcome.ok ? outcome.problems : [],
    attempt: () => {
      setIsTried(true)
      return moves
    },
  }
}
