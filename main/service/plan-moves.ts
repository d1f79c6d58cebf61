/** A draft's moves as the plan of a real batch. */
import type { Move } from '../../shared/schemas/moves.ts'

export const movesOfBatch = (moves: readonly Move[], batchId: string): Move[] =>
  moves.map((move) => {
    const own = 'batchId' in move ? { ...move, batchId } : move
    return own.kind === 'bottle' ? { ...own, bottleLotId: `${batchId.slice(0, 50)}-bottles` } : own
  })
