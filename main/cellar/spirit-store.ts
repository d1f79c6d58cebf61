/** When the maker last said of an opened spirit that it is shut. It moves no matter. */
import type { Book } from './open-book.ts'

/** By pantry lot. */
export function allShut(book: Book): Map<string, string> {
  const rows = book.prepare('SELECT lot_id, shut_at FROM spirit_shut').all() as {
    lot_id: string
    shut_at: string
  }[]
  return new Map(rows.map(({ lot_id, shut_at }) => [lot_id, shut_at]))
}

/** `shutAt` null forgets what was said. Answers with what was kept before. */
export function sayShut(book: Book, lotId: string, shutAt: string | null): string | null {
  const before = book.prepare('SELECT shut_at FROM spirit_shut WHERE lot_id = ?').pluck().get(lotId)
  if (shutAt === null) book.prepare('DELETE FROM spirit_shut WHERE lot_id = ?').run(lotId)
  else
    book
      .prepare(
        `INSERT INTO spirit_shut (lot_id, shut_at) VALUES (:lotId, :shutAt)
         ON CONFLICT (lot_id) DO UPDATE SET shut_at = excluded.shut_at`,
      )
      .run({ lotId, shutAt })
  return (before as string | undefined) ?? null
}
