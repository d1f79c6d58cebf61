/** The named places for bottles: how warm and how light it is there. */
import type { Shelf } from '../../shared/schemas/shelf.ts'
import type { Book } from './open-book.ts'

interface ShelfRow {
  id: string
  name: string
  temperature_c: number
  light: Shelf['light']
  is_retired: number
}

export const allShelves = (book: Book): Shelf[] =>
  (book.prepare('SELECT * FROM shelf ORDER BY rowid').all() as ShelfRow[]).map((row) => ({
    id: row.id,
    name: row.name,
    temperatureC: row.temperature_c,
    light: row.light,
    isRetired: row.is_retired === 1,
  }))

/** Adds a shelf, or changes the one that has its id. */
export function putShelf(book: Book, shelf: Shelf): void {
  book
    .prepare(
      `INSERT INTO shelf (id, name, temperature_c, light, is_retired)
       VALUES (:id, :name, :temperatureC, :light, :isRetired)
       ON CONFLICT (id) DO UPDATE SET name = excluded.name,
         temperature_c = excluded.temperature_c, light = excluded.light,
         is_retired = excluded.is_retired`,
    )
    .run({ ...shelf, isRetired: shelf.isRetired ? 1 : 0 })
}
