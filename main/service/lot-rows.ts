/** Pantry and bottle lots as the book's derived rows. */
import type { BottleLotRow, BottlePlaceRow, LotRows, PantryLotRow } from '../cellar/lot-store.ts'
import type { BottleState, CellarState, LotState } from '../engine/index.ts'
import { massOf } from '../../shared/matter.ts'

export const instant = (ms: number): string => new Date(ms).toISOString()

const pantryRow = (id: string, lot: LotState): PantryLotRow => ({
  id,
  goods: JSON.stringify(lot.goods),
  boughtAt: instant(lot.boughtAtMs),
  boughtG: massOf(lot.bought),
  leftG: massOf(lot.matter),
  priceMinor: lot.priceMinor ?? null,
})

const bottleRow = (id: string, lot: BottleState): BottleLotRow => ({
  id,
  batchId: lot.batchId,
  bottledAt: instant(lot.bottledAtMs),
  bottleSizeMl: lot.bottleSizeMl,
  filledCount: lot.filledCount,
  count: lot.count,
  places: placesOf(lot),
})

/** What has no place comes first, then shelf by shelf in the order of their ids. */
export const placesOf = ({ shelves }: BottleState): BottlePlaceRow[] =>
  [...shelves]
    .map(([shelfId, count]) => ({ shelfId, count }))
    .sort((a, b) => ((a.shelfId ?? '') < (b.shelfId ?? '') ? -1 : 1))

export const lotRowsOf = (cellar: Pick<CellarState, 'lots' | 'bottles'>): LotRows => ({
  pantry: [...cellar.lots].map(([id, lot]) => pantryRow(id, lot)).sort(byId),
  bottles: [...cellar.bottles].map(([id, lot]) => bottleRow(id, lot)).sort(byId),
})

const byId = (a: { id: string }, b: { id: string }) => (a.id < b.id ? -1 : 1)
