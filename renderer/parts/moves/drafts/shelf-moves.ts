/** Moves made on the shelf, mended in the log: when, the note, and how many or how much. */
import type { Move, MoveOf } from '../../../../shared/schemas/moves.ts'
import type { ShelfKind } from '../kinds.ts'
import {
  complete,
  headOf,
  headOfMove,
  missing,
  type DraftHead,
  type Outcome,
} from './draft-basics.ts'

export interface ShelfDraft extends DraftHead {
  readonly kind: ShelfKind
  /** As it was recorded: which bottles, from where to where. */
  readonly move: MoveOf<ShelfKind>
  /** Of bottles broken or carried. */
  readonly count: number | undefined
  /** Poured; undefined is all that is left. */
  readonly volumeMl: number | undefined
}

export const shelfOfMove = (move: MoveOf<ShelfKind>): ShelfDraft => ({
  kind: move.kind,
  ...headOfMove(move),
  move,
  count: 'count' in move ? move.count : undefined,
  volumeMl: 'volumeMl' in move ? move.volumeMl : undefined,
})

export function shelfMoves({ at, note, move, count, volumeMl }: ShelfDraft): Outcome<Move> {
  if (at === undefined) return missing({ at })
  const head = headOf(at, note)
  switch (move.kind) {
    case 'breakBottle': {
      if (count === undefined) return missing({ count })
      const { kind, bottleLotId, shelfId } = move
      return complete([{ ...head, kind, bottleLotId, count, ...(shelfId && { shelfId }) }])
    }
    case 'shelve': {
      if (count === undefined) return missing({ count })
      const { kind, bottleLotId, fromShelfId, toShelfId } = move
      return complete([{ ...head, kind, bottleLotId, count, fromShelfId, toShelfId }])
    }
    case 'openBottle': {
      const { kind, bottleLotId, openedId, shelfId } = move
      return complete([{ ...head, kind, bottleLotId, openedId, ...(shelfId && { shelfId }) }])
    }
    case 'pourGlass': {
      const { kind, openedId } = move
      return complete([{ ...head, kind, openedId, ...(volumeMl !== undefined && { volumeMl }) }])
    }
    case 'topUp': {
      const { kind, openedId, fromOpenedId } = move
      const poured = volumeMl === undefined ? {} : { volumeMl }
      return complete([{ ...head, kind, openedId, fromOpenedId, ...poured }])
    }
  }
}
