/** What the host said was done, held against what is in the file. */
import Database from 'better-sqlite3'

/** A request that was sent: what it writes, and whether its answer came. */
export interface Asked {
  readonly key: string
  /** How many rows of the ledger it writes when it is done. */
  readonly rows: number
  isAcknowledged: boolean
}

export interface Findings {
  /** Acknowledged, and not in the book. */
  readonly lost: readonly string[]
  /** In the book in part. */
  readonly torn: readonly string[]
  /** Sent, never acknowledged, and in the book: that is allowed. */
  readonly unanswered: number
  readonly integrity: string
}

/** Read by SQLite alone, past the program that wrote it. */
export function findingsIn(file: string, asked: readonly Asked[]): Findings {
  const book = new Database(file, { readonly: true })
  try {
    const written = new Map(
      (
        book
          .prepare(
            `SELECT request_key AS key, count(move.seq) AS rows FROM move_group
             LEFT JOIN move ON move.group_id = move_group.id GROUP BY move_group.id`,
          )
          .all() as { key: string; rows: number }[]
      ).map(({ key, rows }) => [key, rows]),
    )
    const inBook = asked.filter(({ key }) => written.has(key))
    return {
      lost: asked
        .filter((one) => one.isAcknowledged && !written.has(one.key))
        .map(({ key }) => key),
      torn: inBook.filter(({ key, rows }) => written.get(key) !== rows).map(({ key }) => key),
      unanswered: inBook.filter(({ isAcknowledged }) => !isAcknowledged).length,
      integrity: (book.pragma('integrity_check', { simple: true }) as string) ?? 'none',
    }
  } finally {
    book.close()
  }
}

/** The keys of all requests that a book holds. */
export function keysIn(file: string): Set<string> {
  const book = new Database(file, { readonly: true })
  try {
    return new Set(book.prepare('SELECT request_key FROM move_group').pluck().all() as string[])
  } finally {
    book.close()
  }
}
