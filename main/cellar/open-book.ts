/** Opens a cellar book, or makes one: one SQLite file whose every acknowledged write is on disk. */
import { existsSync, mkdirSync, renameSync, rmSync, statSync } from 'node:fs'
import { dirname } from 'node:path'
import Database from 'better-sqlite3'
import { BookError, bookErrorOf } from './book-error.ts'
import { lockBook, type BookLock } from './book-lock.ts'
import { mustLookLikeBook } from './look-of-file.ts'
import { knownVersion, migrate, newestVersion } from './migrate.ts'
import { migrations, type Migration } from './migrations.ts'
import { syncFolder } from './sync-folder.ts'

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
      if (existsSync(file)) mustLookLikeBook(file)
      else makeBook(file)
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

/**
 * A new book is made under another name and renamed when whole, so that an empty file at this place
 * is always a sign that something went wrong.
 */
export function makeBook(file: string, steps: readonly Migration[] = migrations): void {
  if ((statSync(`${file}-wal`, { throwIfNoEntry: false })?.size ?? 0) > 0)
    throw new BookError('bookDamaged', 'the book is gone, but the log of its last moves is here')
  const unfinished = `${file}.new`
  removeBookFiles(unfinished)
  const db = new Database(unfinished)
  claim(db)
  migrate(db, steps)
  db.close()
  renameSync(unfinished, file)
  syncFolder(dirname(file))
}

/** Whether opening it would change its schema. */
export function needsMigration(file: string): boolean {
  if (!existsSync(file) || statSync(file).size === 0) return false
  const lock = lockBook(file)
  let db: Book | undefined
  try {
    db = new Database(file, { readonly: true })
    const version = knownVersion(db)
    return version > 0 && version < newestVersion
  } catch (error) {
    // Opening it will say what is wrong.
    if (bookErrorOf(error)) return false
    throw error
  } finally {
    db?.close()
    lock.release()
  }
}

/** With what SQLite keeps beside it. */
export function removeBookFiles(file: string): void {
  for (const suffix of ['', '-wal', '-shm', '-journal', '.lock'])
    rmSync(file + suffix, { force: true })
}

function claim(db: Book): void {
  const id = db.pragma('application_id', { simple: true }) as number
  if (id === applicationId) return
  const tables = db.prepare('SELECT count(*) FROM sqlite_master').pluck().get() as number
  if (id !== 0 || tables > 0)
    throw new BookError('bookForeign', 'this file is a database of another program')
  db.pragma(`application_id = ${applicationId}`)
}

/** Folds the write-ahead log back in and lets the file go. */
export function closeBook(book: Book): void {
  if (!book.open) return
  try {
    // A backup that still reads must not hold up the end: the log is then folded in the next time.
    book.pragma('busy_timeout = 300')
    book.pragma('optimize')
    book.pragma('wal_checkpoint(TRUNCATE)')
  } catch (error) {
    // A damaged or full disk is no reason to keep the book open.
    if (!bookErrorOf(error)) throw error
  } finally {
    book.close()
    locks.get(book)?.release()
  }
}

/** What SQLite itself says of the file; `ok` when all is well. */
export const integrityOf = (book: Book): string =>
  (book.pragma('integrity_check') as { integrity_check: string }[])
    .map((row) => row.integrity_check)
    .join('; ')
