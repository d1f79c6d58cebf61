/** Puts a book in place of another, which is kept aside under a name of its own. */
import { existsSync, linkSync, renameSync, rmSync } from 'node:fs'
import { lockBook } from './book-lock.ts'
import { removeBookFiles } from './open-book.ts'

/** What SQLite keeps beside a book and cannot do without. */
const companions = ['', '-wal', '-journal']

/**
 * `nextFile` must be a whole book that nobody has open, in the same folder; left out, the place is
 * left empty. Returns the name under which the former book is kept; null when there was none.
 */
export function putInPlace(
  file: string,
  { nextFile, at }: { nextFile: string | undefined; at: Date },
): string | null {
  const lock = lockBook(file)
  try {
    const aside = existsSync(file) ? asideName(file, at) : null
    if (aside !== null) setAside(file, aside)
    if (nextFile !== undefined) {
      try {
        renameSync(nextFile, file)
      } catch (error) {
        if (aside !== null) setAside(aside, file)
        throw error
      }
      removeBookFiles(nextFile)
    }
    return aside
  } finally {
    lock.release()
  }
}

/** `cellar kept 2026-11-25 180307.ratafia`, or with a number when there is one already. */
function asideName(file: string, at: Date): string {
  const stamp = at.toISOString().slice(0, 19).replace('T', ' ').replaceAll(':', '')
  const stem = file.replace(/\.ratafia$/, '')
  for (let serial = 1; ; serial += 1) {
    const name = `${stem} kept ${stamp}${serial === 1 ? '' : ` ${serial}`}.ratafia`
    if (companions.every((suffix) => !existsSync(name + suffix))) return name
  }
}

/** The log goes first: a book without its log would be older than it was. */
function setAside(file: string, aside: string): void {
  for (const suffix of companions.toReversed())
    if (existsSync(file + suffix)) moveWithoutOverwriting(file + suffix, aside + suffix)
  rmSync(`${file}-shm`, { force: true })
}

/** A rename would write over a file that came to be meanwhile; a link does not. */
function moveWithoutOverwriting(from: string, to: string): void {
  try {
    linkSync(from, to)
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined
    if (code === 'EEXIST') throw error
    // Not every file system has links.
    renameSync(from, to)
    return
  }
  rmSync(from)
}
