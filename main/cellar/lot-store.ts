/** Pantry and bottle lots as rows: derived from the ledger, for lists and for other programs. */
import type { Book } from './open-book.ts'

export interface PantryLotRow {
  readonly id: string
  readonly goods: string
  readonly boughtAt: string
  readonly boughtG: number
  readonly leftG: number
  readonly priceMinor: number | null
}

export interface BottleLotRow {
  readonly id: string
  readonly batchId: string
  readonly bottledAt: string
  readonly bottleSizeMl: number
  readonly filledCount: number
  readonly count: number
  /** By shelf, what has no place first. */
  readonly places: readonly BottlePlaceRow[]
}

export interface BottlePlaceRow {
  readonly shelfId: string | null
  readonly count: number
}

export interface LotRows {
  readonly pantry: readonly PantryLotRow[]
  readonly bottles: readonly BottleLotRow[]
}

/** Writes the given lots, leaving others as they are; call it inside a transaction. */
export function putLots(book: Book, { pantry, bottles }: LotRows): void {
  const putPantry = book.prepare(
    `INSERT OR REPLACE INTO pantry_lot (id, goods, bought_at, bought_g, left_g, price_minor)
     VALUES (:id, :goods, :boughtAt, :boughtG, :leftG, :priceMinor)`,
  )
  for (const lot of pantry) putPantry.run(lot)
  const putBottles = book.prepare(
    `INSERT OR REPLACE INTO bottle_lot (id, batch_id, bottled_at, bottle_size_ml, filled_count, count)
     VALUES (:id, :batchId, :bottledAt, :bottleSizeMl, :filledCount, :count)`,
  )
  // A lot's places go with its old row.
  const putPlace = book.prepare(
    'INSERT INTO bottle_place (bottle_lot_id, shelf_id, count) VALUES (?, ?, ?)',
  )
  for (const { places, ...lot } of bottles) {
    putBottles.run(lot)
    for (const { shelfId, count } of places) putPlace.run(lot.id, shelfId, count)
  }
}

/** Forgets all lots and writes these. */
export function replaceLots(book: Book, rows: LotRows): void {
  book.exec('DELETE FROM pantry_lot; DELETE FROM bottle_lot;')
  putLots(book, rows)
}

export function readLots(book: Book): LotRows {
  const places = placesByLot(book)
  return {
    pantry: book
      .prepare(
        `SELECT id, goods, bought_at AS boughtAt, bought_g AS boughtG, left_g AS leftG,
                price_minor AS priceMinor FROM pantry_lot ORDER BY id`,
      )
      .all() as PantryLotRow[],
    bottles: (
      book
        .prepare(
          `SELECT id, batch_id AS batchId, bottled_at AS bottledAt, bottle_size_ml AS bottleSizeMl,
                  filled_count AS filledCount, count FROM bottle_lot ORDER BY id`,
        )
        .all() as Omit<BottleLotRow, 'places'>[]
    ).map((lot) => ({ ...lot, places: places.get(lot.id) ?? [] })),
  }
}

function placesByLot(book: Book): Map<string, BottlePlaceRow[]> {
  const rows = book
    .prepare(
      `SELECT bottle_lot_id AS lotId, shelf_id AS shelfId, count FROM bottle_place
       ORDER BY bottle_lot_id, shelf_id`,
    )
    .all() as (BottlePlaceRow & { lotId: string })[]
  const byLot = new Map<string, BottlePlaceRow[]>()
  for (const { lotId, ...place } of rows) {
    const known = byLot.get(lotId)
    if (known) known.push(place)
    else byLot.set(lotId, [place])
  }
  return byLot
}
