/** Opens a cellar book, or makes one: one SQLite file whose every acknowledged write is on disk. */
import { mkdirSync } from 'node:fs'
import { dirname } from 'node:path'
import Database from 'better-sqlite3'
import { BookError, bookErrorOf } from './book-error.ts'
import { lockBook, type BookLock } from './book-lock.ts'
import { knownVersion, migrate } from './migrate.ts'

/** "RATA" in the file's header, so that other programs can tell what it is. */
export const applicationId = 0x52_41_54_41

export type Book = Database.Database

const locks = new WeakMap<Book, BookLock>()

export function openBook(file: string): Book {
  try {
    mkdirSync(dirname(file), { recursive: true })
    const lock = lockBook(file)
    let db: Book | undefined
    try {
      db = new Database(file)
      // Before anything is written: a newer book, or another program's file, stays as it is.
      knownVersion(db)
      claim(db)
      db.pragma('journal_mode = WAL')
      db.pragma('synchronous = FULL')
      db.pragma('foreign_keys = ON')
      db.pragma('busy_timeout = 3000')
      migrate(db)
      locks.set(db, lock)
      return db
    } catch (error) {
      db?.close()
      lock.release()
      throw error
    }
  } catch (error) {
    throw bookErrorOf(error) ?? error
  }
}

function claim(db: Book): void {
  const id = db.pragma('application_id', { simple: true }) as number
  if (id === applicationId) return
  const tables = db.prepare('SELECT count(*) FROM sqlite_master').pluck().get() as number
  if (id !== 0 || tables > 0)
    throw new BookError('bookDamaged', 'this file is a database of another program')
  db.pragma(`application_id = ${applicationId}`)
}

/** Folds the write-ahead log back in and lets the file go. */
export function closeBook(book: Book): void {
  if (!book.open) return
  book.pragma('optimize')
  book.pragma('wal_checkpoint(TRUNCATE)')
  book.close()
  locks.get(book)?.release()
}

/** What SQLite itself says of the file; `ok` when all is well. */
export const integrityOf = (book: Book): string =>
  (book.pragma('integrity_check') as { integrity_check: string }[])
    .map((row) => row.integrity_check)
    .join('; ')
