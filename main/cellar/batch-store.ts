/** A batch's name, colour and notes. What it is made of is read off the ledger. */
import type { Batch } from '../../shared/schemas/cellar.ts'
import type { Book } from './open-book.ts'

interface BatchRow {
  id: string
  name: string
  colour: string
  note: string
  opened_at: string
}

const batchOf = ({ opened_at, ...row }: BatchRow): Batch => ({ ...row, openedAt: opened_at })

/** Without those that came with moves of which none stands any more. */
export const allBatches = (book: Book): Batch[] =>
  (
    book
      .prepare(
        `SELECT * FROM batch
         WHERE id NOT IN (SELECT batch_id FROM batch_with_moves)
            OR id IN (SELECT batch_id FROM current_move)
         ORDER BY opened_at, rowid`,
      )
      .all() as BatchRow[]
  ).map(batchOf)

export const batchNames = (book: Book): ReadonlyMap<string, string> =>
  new Map(book.prepare('SELECT id, name FROM batch').raw().all() as [string, string][])

export function batchById(book: Book, id: string): Batch | undefined {
  const row = book.prepare('SELECT * FROM batch WHERE id = ?').get(id) as BatchRow | undefined
  return row && batchOf(row)
}

/** Adds a batch, or changes the one that has its id. */
export function putBatch(book: Book, batch: Batch): void {
  book
    .prepare(
      `INSERT INTO batch (id, name, colour, note, opened_at)
       VALUES (:id, :name, :colour, :note, :openedAt)
       ON CONFLICT (id) DO UPDATE SET name = excluded.name, colour = excluded.colour,
         note = excluded.note`,
    )
    .run(batch)
}

/** Opens a batch together with its first moves: call it in the transaction that writes them. */
export function openBatchWithMoves(book: Book, batch: Batch): void {
  putBatch(book, batch)
  book.prepare('INSERT INTO batch_with_moves (batch_id) VALUES (?)').run(batch.id)
}
