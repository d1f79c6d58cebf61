/** Moves as they stand in the book once they are written, checked on the way. */
import { nextSeq } from '../cellar/move-store.ts'
import type { Move, RecordedMove } from '../../shared/schemas/moves.ts'
import { checkedMoves } from './move-checks.ts'
import type { Session } from './session.ts'

export function newlyRecorded(
  session: Session,
  moves: readonly Move[],
  groupId: string,
  /** Batches that are opened together with them. */
  opening?: ReadonlySet<string>,
): RecordedMove[] {
  const first = nextSeq(session.book)
  const recordedAt = session.options.now().toISOString()
  return checkedMoves(session, moves, opening).map((move, index) => ({
    id: session.options.newId(),
    seq: first + index,
    groupId,
    recordedAt,
    version: 1,
    move,
  }))
}
