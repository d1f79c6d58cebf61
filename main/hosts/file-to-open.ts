/** A file that Ratafia was started to open: a book, an archive, or why it is neither, told by its first bytes. */
import { closeSync, openSync, readSync } from 'node:fs'
import { StartProblem } from './start-problem.ts'

const sqlite = 'SQLite format 3\0'
const zip = 'PK\u0003\u0004'

/** What can be tried as a book, or looked into as a backup or an export; throws a StartProblem otherwise, and touches nothing. */
export function kindOfFile(file: string): 'book' | 'archive' {
  const beginning = beginningOf(file)
  if (beginning === sqlite) return 'book'
  if (beginning.startsWith(zip)) return 'archive'
  throw new StartProblem('isNoBook', file)
}

/**
 * Where the window opens, to look into an archive before anything is changed. Its name is wrapped
 * twice: the router takes the outer wrapping off before it looks for slashes, the route the inner.
 */
export const lookIntoPath = (archive: string): string =>
  `/look-into/${encodeURI(encodeURIComponent(archive))}`

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
