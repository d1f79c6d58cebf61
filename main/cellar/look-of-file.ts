/** What a file looks like before SQLite is let near it: a book, a damaged one, or something else. */
import { closeSync, existsSync, openSync, readSync, statSync } from 'node:fs'
import { BookError } from './book-error.ts'
import { whereaboutsFile } from './whereabouts.ts'

const sqliteBegins = 'SQLite format 3\0'

/** Throws where there is nothing to open. Call it with the book's lock held and the book closed. */
export function mustLookLikeBook(file: string): void {
  if (statSync(file).size === 0) throw new BookError('bookDamaged', 'this file is empty')
  if (beginningOf(file) === sqliteBegins) return
  // Where backups were kept of it, it was a book; else it never was one.
  throw existsSync(whereaboutsFile(file))
    ? new BookError('bookDamaged', 'the beginning of this file is destroyed')
    : new BookError('bookForeign', 'this file is not a cellar book')
}

function beginningOf(file: string): string {
  const handle = openSync(file, 'r')
  try {
    const bytes = Buffer.alloc(sqliteBegins.length)
    return bytes.toString('latin1', 0, readSync(handle, bytes, 0, bytes.length, 0))
  } finally {
    closeSync(handle)
  }
}
