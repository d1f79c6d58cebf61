/**
 * One book, one keeper: a second program that wrote to it would not see what the first one holds in
 * memory. The lock is the system's own, on a small file beside the book, so it goes with the process
 * however that ends, and the book itself stays readable for others.
 */
import Database from 'better-sqlite3'
import { BookError } from './book-error.ts'

export interface BookLock {
  release: () => void
}

export function lockBook(file: string): BookLock {
  // The file is left behind on purpose: removing it could let two in at once.
  const lock = new Database(`${file}.lock`, { timeout: 0 })
  try {
    // Nothing is ever written here, so there is nothing to keep a journal of.
    lock.pragma('journal_mode = MEMORY')
    lock.exec('BEGIN EXCLUSIVE')
  } catch (error) {
    lock.close()
    const isHeld = error instanceof Error && 'code' in error && error.code === 'SQLITE_BUSY'
    if (!isHeld) throw error
    throw new BookError('bookBusy', 'this book is open in another window of Ratafia', {
      cause: error,
    })
  }
  return { release: () => lock.close() }
}
