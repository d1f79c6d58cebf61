/** Every kind of move as a draft: begun from what stands in the cellar, or from a recorded move. */
import type { PantryLot } from '../../../../shared/schemas/cellar.ts'
import type { Move } from '../../../../shared/schemas/moves.ts'
import type { LoggedKind } from '../kinds.ts'
import {
  addingMoves,
  addingOfMove,
  startAdding,
  startWater,
  waterMoves,
  waterOfMove,
  type AddingDraft,
  type WaterDraft,
} from './adding.ts'
import {
  bottlesOutMoves,
  bottlesOutOfMove,
  bottlingMoves,
  bottlingOfMove,
  startBottlesOut,
  startBottling,
  type BottlesOutDraft,
  type BottlingDraft,
} from './bottling.ts'
import { bringingInMoves, bringingInOfMove, type BringingInDraft } from './bringing-in.ts'
import type { Outcome } from './draft-basics.ts'
import {
  filteringMoves,
  filteringOfMove,
  startFiltering,
  type FilteringDraft,
} from './filtering.ts'
import { keepingMoves, keepingOfMove, startKeeping, type KeepingDraft } from './keeping.ts'
import type { LogContext } from './log-context.ts'
import { marryingMoves, marryingOfMove, startMarrying, type MarryingDraft } from './marrying.ts'
import {
  correctMoves,
  correctOfMove,
  discardMoves,
  discardOfMove,
  startCorrect,
  startDiscard,
  type CorrectDraft,
  type DiscardDraft,
} from './mending.ts'
import {
  pouringOffMoves,
  pouringOffOfMove,
  startPouringOff,
  type PouringOffDraft,
} from './pouring-off.ts'
import { buyingMoves, buyingOfMove, startBuying, type BuyDraft } from './purchase.ts'
import { readingMoves, readingOfMove, startReading, type ReadingDraft } from './reading.ts'
import { shelfMoves, shelfOfMove, type ShelfDraft } from './shelf-moves.ts'
import { startTaste, tasteMoves, tasteOfMove, type TasteDraft } from './tasting.ts'
import {
  remarkMoves,
  remarkOfMove,
  startRemark,
  startTending,
  tendingMoves,
  tendingOfMove,
  type RemarkDraft,
  type TendingDraft,
} from './tending.ts'
import {
  startUnbottling,
  unbottlingMoves,
  unbottlingOfMove,
  type UnbottlingDraft,
} from './unbottling.ts'

export type Draft =
  | AddingDraft
  | WaterDraft
  | TendingDraft
  | KeepingDraft
  | RemarkDraft
  | ReadingDraft
  | PouringOffDraft
  | MarryingDraft
  | FilteringDraft
  | BottlingDraft
  | BottlesOutDraft
  | BringingInDraft
  | UnbottlingDraft
  | DiscardDraft
  | CorrectDraft
  | TasteDraft
  | ShelfDraft
  | BuyDraft

/** A fresh draft, filled in as the cellar suggests. */
export function startDraft(kind: LoggedKind, context: LogContext): Draft {
  switch (kind) {
    case 'charge':
    case 'sugar':
    case 'coverWithSugar':
    case 'addAcid':
    case 'pourSpirit':
      return startAdding(kind, context)
    case 'pourWater':
      return startWater(context)
    case 'stir':
    case 'crush':
      return startTending(kind, context)
    case 'keep':
      return startKeeping(context)
    case 'remark':
      return startRemark(context)
    case 'read':
      return startReading(context)
    case 'drawOff':
    case 'press':
      return startPouringOff(kind, context)
    case 'marry':
      return startMarrying(context)
    case 'filter':
      return startFiltering(context)
    case 'bottle':
      return startBottling(context)
    case 'unbottle':
      return startUnbottling(context)
    case 'drawBottle':
    case 'give':
      return startBottlesOut(kind, context)
    case 'discard':
      return startDiscard(context)
    case 'correct':
      return startCorrect(context)
    case 'taste':
      return startTaste(context)
    case 'buy':
      return startBuying(context)
  }
}

/** The moves a draft comes to, to be recorded together; or what is still missing. */
export function movesOfDraft(
  draft: Draft,
  { batchId, pantry }: { batchId: string; pantry: readonly PantryLot[] },
): Outcome<Move> {
  switch (draft.kind) {
    case 'charge':
    case 'sugar':
    case 'coverWithSugar':
    case 'addAcid':
    case 'pourSpirit':
      return addingMoves(draft, batchId)
    case 'pourWater':
      return waterMoves(draft, batchId)
    case 'stir':
    case 'crush':
      return tendingMoves(draft, batchId)
    case 'keep':
      return keepingMoves(draft, batchId)
    case 'remark':
      return remarkMoves(draft, batchId)
    case 'read':
      return readingMoves(draft, batchId)
    case 'drawOff':
    case 'press':
      return pouringOffMoves(draft, batchId)
    case 'marry':
      return marryingMoves(draft, batchId)
    case 'filter':
      return filteringMoves(draft, batchId)
    case 'bottle':
      return bottlingMoves(draft, batchId)
    case 'bringIn':
      return bringingInMoves(draft, batchId)
    case 'unbottle':
      return unbottlingMoves(draft, batchId)
    case 'drawBottle':
    case 'give':
      return bottlesOutMoves(draft)
    case 'discard':
      return discardMoves(draft, pantry)
    case 'correct':
      return correctMoves(draft, pantry)
    case 'taste':
      return tasteMoves(draft, batchId)
    case 'breakBottle':
    case 'shelve':
    case 'openBottle':
    case 'pourGlass':
    case 'topUp':
      return shelfMoves(draft)
    case 'buy':
      return buyingMoves(draft)
  }
}

/** A recorded move as a draft again, to be amended. */
export function draftOfMove(move: Move): Draft {
  switch (move.kind) {
    case 'charge':
    case 'sugar':
    case 'coverWithSugar':
    case 'addAcid':
    case 'pourSpirit':
      return addingOfMove(move)
    case 'pourWater':
      return waterOfMove(move)
    case 'stir':
    case 'crush':
      return tendingOfMove(move)
    case 'keep':
      return keepingOfMove(move)
    case 'remark':
      return remarkOfMove(move)
    case 'read':
      return readingOfMove(move)
    case 'drawOff':
    case 'press':
      return pouringOffOfMove(move)
    case 'marry':
      return marryingOfMove(move)
    case 'filter':
      return filteringOfMove(move)
    case 'bottle':
      return bottlingOfMove(move)
    case 'bringIn':
      return bringingInOfMove(move)
    case 'unbottle':
      return unbottlingOfMove(move)
    case 'drawBottle':
    case 'give':
      return bottlesOutOfMove(move)
    case 'discard':
      return discardOfMove(move)
    case 'correct':
      return correctOfMove(move)
    case 'taste':
      return tasteOfMove(move)
    case 'breakBottle':
    case 'shelve':
    case 'openBottle':
    case 'pourGlass':
    case 'topUp':
      return shelfOfMove(move)
    case 'buy':
      return buyingOfMove(move)
  }
}
