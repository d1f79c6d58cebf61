/** The vessels a maker owns. They carry no matter: what stands in them is read off the ledger. */
import type { Jar, JarShape } from '../../shared/schemas/cellar.ts'
import type { Book } from './open-book.ts'

interface JarRow {
  id: string
  name: string
  shape: JarShape
  capacity_ml: number
  is_retired: number
}

const jarOf = (row: JarRow): Jar => ({
  id: row.id,
  name: row.name,
  shape: row.shape,
  capacityMl: row.capacity_ml,
  isRetired: row.is_retired === 1,
})

export const allJars = (book: Book): Jar[] =>
  (book.prepare('SELECT * FROM jar ORDER BY rowid').all() as JarRow[]).map(jarOf)

/** Adds a jar, or changes the one that has its id. */
export function putJar(book: Book, jar: Jar): void {
  book
    .prepare(
      `INSERT INTO jar (id, name, shape, capacity_ml, is_retired)
       VALUES (:id, :name, :shape, :capacityMl, :isRetired)
       ON CONFLICT (id) DO UPDATE SET name = excluded.name, shape = excluded.shape,
         capacity_ml = excluded.capacity_ml, is_retired = excluded.is_retired`,
    )
    .run({ ...jar, isRetired: jar.isRetired ? 1 : 0 })
}
