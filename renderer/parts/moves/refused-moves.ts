/** Refusals of a preview put beside the moves they are about. */
import type { Move } from '../../../shared/schemas/moves.ts'
import type { RefusedMove } from './nearest.ts'
import type { Preview } from './use-preview.ts'

/** How many moves before this one take from the place that refuses. */
function takenBefore(moves: readonly Move[], index: number, place: string): number {
  const takes = (move: Move) =>
    ('lotId' in move && move.kind !== 'buy' && place === `lot:${move.lotId}`) ||
    ('fromJarId' in move && place === `jar:${move.fromJarId}`)
  return moves.slice(0, index).filter(takes).length
}

/** The first refusal is the one to mend; those after it often follow from it. */
export function firstRefused(
  refusals: Preview['refusals'],
  moves: readonly Move[],
): RefusedMove | undefined {
  const first = refusals.toSorted((a, b) => a.index - b.index)[0]
  if (!first) return undefined
  const { refusal, index } = first
  return { refusal, before: takenBefore(moves, index, refusal.place) }
}
