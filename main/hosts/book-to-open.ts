/** A file that Ratafia was started to open: a book, or why it is none, told by its first bytes. */
import { closeSync, openSync, readSync } from 'node:fs'
import { StartProblem } from './start-problem.ts'

const sqlite = 'SQLite format 3\0'
const zip = 'PK\u0003\u0004'

/** The file itself when it can be tried as a book; throws a StartProblem otherwise, and touches nothing. */
export function bookToOpen(file: string): string {
  const beginning = beginningOf(file)
  if (beginning === sqlite) return file
  if (beginning.startsWith(zip)) throw new StartProblem('isArchive', file)
  throw new StartProblem('isNoBook', file)
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
    throw new StartProblem('isUnreadable', file, { cause: error })
  }
}
