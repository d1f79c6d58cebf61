/** A file that Ratafia was started to open: a book, or why it is none, told by its first bytes. */
import { closeSync, openSync, readSync } from 'node:fs'
import { StartProblem } from './start-problem.ts'

const sqlite = 'SQLite format 3\0'
const zip = 'PK\u0003\u0004'

/** The file itself when it can be tried as a book; throws a StartProblem otherwise, and touches nothing. */
export function bookToOpen(file: string): string {
  const beginning = beginningOf(file)
  if (beginning === sqlite) return file
  if (beginning.startsWith(zip))
    throw new StartProblem(
      `${file} is an archive, not a book: a backup or an export, perhaps.\n` +
        'Start Ratafia without it; Safekeeping looks into it, shows what would change, and puts it in place.',
    )
  throw new StartProblem(
    `${file} is no cellar book. It was not touched.\nName a cellar book; a new one begins with --cellar FILE.`,
  )
}

function beginningOf(file: string): string {
  const bytes = Buffer.alloc(sqlite.length)
  try {
    const handle = openSync(file, 'r')
    try {
      return bytes.subarray(0, readSync(handle, bytes)).toString('latin1')
    } finally {
      closeSync(handle)
    }
  } catch (error) {
    throw new StartProblem(
      `${file} cannot be read.\nCheck its name and its rights; a new book begins with --cellar FILE.`,
      { cause: error },
    )
  }
}
