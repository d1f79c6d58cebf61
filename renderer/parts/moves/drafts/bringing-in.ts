/** Bottles that no jar of this book filled, to be mended: they come in by a spreadsheet. */
import type { Move, MoveOf } from '../../../../shared/schemas/moves.ts'
import {
  complete,
  headOf,
  headOfMove,
  missing,
  type DraftHead,
  type Outcome,
} from './draft-basics.ts'

export interface BringingInDraft extends DraftHead {
  readonly kind: 'bringIn'
  readonly bottleLotId: string
  readonly bottleSizeMl: number | undefined
  readonly count: number | undefined
  readonly strengthPctVol: number | undefined
  readonly sugarGPerL: number | undefined
  /** Kept as it was told. */
  readonly fruitIds: readonly string[]
  readonly name: string
  readonly shelfId: string | undefined
}

export function bringingInMoves(draft: BringingInDraft, batchId: string): Outcome<Move> {
  const { at, note, bottleLotId, bottleSizeMl, count, strengthPctVol, sugarGPerL } = draft
  if (
    at === undefined ||
    bottleSizeMl === undefined ||
    count === undefined ||
    strengthPctVol === undefined ||
    sugarGPerL === undefined
  )
    return missing({ at, bottleSizeMl, count, strengthPctVol, sugarGPerL })
  const name = draft.name.trim()
  return complete([
    {
      ...headOf(at, note),
      kind: 'bringIn',
      batchId,
      bottleLotId,
      bottleSizeMl,
      count,
      strengthPctVol,
      sugarGPerL,
      ...(draft.fruitIds.length > 0 && { fruitIds: [...draft.fruitIds] }),
      ...(name !== '' && { name }),
      ...(draft.shelfId !== undefined && { shelfId: draft.shelfId }),
    },
  ])
}

export const bringingInOfMove = (move: MoveOf<'bringIn'>): BringingInDraft => ({
  kind: 'bringIn',
  ...headOfMove(move),
  bottleLotId: move.bottleLotId,
  bottleSizeMl: move.bottleSizeMl,
  count: move.count,
  strengthPctVol: move.strengthPctVol,
  sugarGPerL: move.sugarGPerL,
  fruitIds: move.fruitIds ?? [],
  name: move.name ?? '',
  shelfId: move.shelfId,
})
