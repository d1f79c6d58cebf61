/** What calendars were given, with versions, and the secret of the address they may ask at. */
import type { Book } from './open-book.ts'

/** An entry as it was told last; its content is text to this store. */
export interface PublishedRow {
  readonly uid: string
  readonly entry: string
  readonly sequence: number
  readonly isCancelled: boolean
  readonly changedAt: string
}

export const allPublished = (book: Book): PublishedRow[] =>
  (
    book
      .prepare('SELECT uid, entry, sequence, is_cancelled, changed_at FROM calendar_entry')
      .all() as {
      uid: string
      entry: string
      sequence: number
      is_cancelled: number
      changed_at: string
    }[]
  ).map(({ uid, entry, sequence, is_cancelled, changed_at }) => ({
    uid,
    entry,
    sequence,
    isCancelled: is_cancelled === 1,
    changedAt: changed_at,
  }))

export function putPublished(book: Book, rows: readonly PublishedRow[]): void {
  const put = book.prepare(
    `INSERT INTO calendar_entry (uid, entry, sequence, is_cancelled, changed_at)
     VALUES (:uid, :entry, :sequence, :isCancelled, :changedAt)
     ON CONFLICT (uid) DO UPDATE SET entry = excluded.entry, sequence = excluded.sequence,
       is_cancelled = excluded.is_cancelled, changed_at = excluded.changed_at`,
  )
  for (const row of rows) put.run({ ...row, isCancelled: row.isCancelled ? 1 : 0 })
}

export const feedSecret = (book: Book): string | undefined =>
  book.prepare('SELECT secret FROM calendar_feed').pluck().get() as string | undefined

/** Null: the calendar is served no more. */
export function setFeedSecret(book: Book, secret: string | null): void {
  if (secret === null) book.prepare('DELETE FROM calendar_feed').run()
  else
    book
      .prepare(
        `INSERT INTO calendar_feed (only, secret) VALUES (1, ?)
         ON CONFLICT (only) DO UPDATE SET secret = excluded.secret`,
      )
      .run(secret)
}
