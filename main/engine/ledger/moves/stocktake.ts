/** Bottles counted: one shelf, or all of a lot. The book is put right, never beyond what was filled. */
import { scaleMatter } from '../../../../shared/matter.ts'
import { bottlesPlace, isStanding, type BottleState, type CellarState } from '../cellar-state.ts'
import { allowed, refused, type Outcome } from '../refusal.ts'
import { added, standingOn, without, type ShelfCounts } from '../shelf-counts.ts'
import { difference } from './difference.ts'

export interface Counted {
  readonly bottleLotId: string
  readonly count: number
  /** The shelf that was counted, null for what has no place; left out: the whole lot. */
  readonly shelfId?: string | null | undefined
}

export function correctBottles(cellar: CellarState, counted: Counted): Outcome {
  const { bottleLotId, count, shelfId } = counted
  const place = bottlesPlace(bottleLotId)
  const lot = cellar.bottles.get(bottleLotId)
  if (!lot) return refused({ code: 'unknownPlace', place })
  const elsewhere = shelfId === undefined ? 0 : lot.count - standingOn(lot.shelves, shelfId)
  const most = lot.filledCount - openedOf(cellar, bottleLotId, lot) - elsewhere
  if (count > most) return neverFilled(place, count, lot.filledCount, Math.max(0, most))
  const found = { ...lot, count: elsewhere + count, shelves: shelvesFound(lot, counted) }
  return allowed({
    bottles: new Map([[bottleLotId, found]]),
    transfers: [
      difference(
        place,
        scaleMatter(lot.perBottle, lot.count),
        scaleMatter(lot.perBottle, found.count),
      ),
    ],
  })
}

export const neverFilled = (place: string, asked: number, filled: number, nearest: number) =>
  refused({ code: 'neverFilled', place, unit: 'bottles', asked, available: filled, nearest })

/** Opened bottles of a lot that still stand: they were filled once too. */
export function openedOf(
  { opened, batches }: CellarState,
  bottleLotId: string,
  { batchId }: BottleState,
): number {
  const ids = batches.get(batchId)?.openedIds ?? []
  return ids.filter((id) => {
    const one = opened.get(id)
    return one?.bottleLotId === bottleLotId && isStanding(one)
  }).length
}

/** Where they stand by the count: with no shelf named, what turned up has no place yet. */
function shelvesFound(lot: BottleState, { count, shelfId }: Counted): ShelfCounts {
  if (shelfId !== undefined)
    return added(lot.shelves, shelfId, count - standingOn(lot.shelves, shelfId))
  return count < lot.count
    ? without(lot.shelves, lot.count - count)
    : added(lot.shelves, null, count - lot.count)
}
