/** A draft's moves as the plan of a real batch. */
import type { FruitTissue } from '../../shared/schemas/fruits.ts'
import type { Move } from '../../shared/schemas/moves.ts'

export const movesOfBatch = (moves: readonly Move[], batchId: string): Move[] =>
  moves.map((move) => {
    const own = 'batchId' in move ? { ...move, batchId } : move
    return own.kind === 'bottle' ? { ...own, bottleLotId: `${batchId.slice(0, 50)}-bottles` } : own
  })

/**
 * Charges that keep how their fruit was known to steep on the day, as recorded ones do: what the
 * batch itself teaches must not change what was planned.
 */
export function asKnownToday(
  moves: readonly Move[],
  tissueOf: (fruitId: string) => FruitTissue,
): Move[] {
  const fruitIds = new Map(
    moves.flatMap((move) =>
      move.kind === 'buy' && move.goods.kind === 'fruit'
        ? [[move.lotId, move.goods.fruitId] as const]
        : [],
    ),
  )
  return moves.map((move) => {
    const fruitId = move.kind === 'charge' ? fruitIds.get(move.lotId) : undefined
    return move.kind === 'charge' && fruitId !== undefined
      ? { ...move, tissue: tissueOf(fruitId) }
      : move
  })
}
