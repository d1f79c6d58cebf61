/**
 * Reads what can be read of a table in a damaged file. Where a page is lost, reading goes on with
 * the first row behind it, which is looked for in longer and longer steps and then closed in upon.
 */
import { bookErrorOf } from './book-error.ts'
import type { Book } from './open-book.ts'

export type Row = Readonly<Record<string, unknown>>

export interface ReadableRows {
  readonly rows: readonly Row[]
  /** False where some of it could not be read; how much that was is not always known. */
  readonly isWhole: boolean
}

export function readableRows(book: Book, table: string): ReadableRows {
  const columns = tried(() => columnsOf(book, table)) ?? []
  if (columns.length === 0) return { rows: [], isWhole: false }
  const hasRowId = tried(() => rowIdsOf(book, table)) ?? false
  return hasRowId ? byRowId(book, table, columns) : inOneGo(book, table, columns)
}

/** Generated columns are not among them: they follow from the others. */
const columnsOf = (book: Book, table: string): string[] =>
  book.prepare(`SELECT name FROM pragma_table_info('${table}')`).pluck().all() as string[]

const rowIdsOf = (book: Book, table: string): boolean =>
  book.prepare(`SELECT wr FROM pragma_table_list('${table}')`).pluck().get() === 0

function inOneGo(book: Book, table: string, columns: readonly string[]): ReadableRows {
  const rows: Row[] = []
  const isWhole = tried(() => {
    for (const row of book.prepare(`SELECT ${columns.join()} FROM ${table}`).iterate())
      rows.push(row as Row)
    return true
  })
  return { rows, isWhole: isWhole ?? false }
}

function byRowId(book: Book, table: string, columns: readonly string[]): ReadableRows {
  const fields = `rowid AS rowid_, ${columns.join()}`
  const from = book.prepare(`SELECT ${fields} FROM ${table} WHERE rowid >= ? ORDER BY rowid`)
  const canRead = (rowId: number) => tried(() => (from.get(rowId), true)) ?? false
  const last = tried(() => lastRowId(book, table)) ?? furthest
  const rows: Row[] = []
  let next: number | undefined = 1
  let isWhole = true
  while (next !== undefined && next <= last) {
    const isAtEnd = tried(() => {
      for (const row of from.iterate(next)) {
        const { rowid_, ...rest } = row as Row & { rowid_: number }
        rows.push(rest)
        next = rowid_ + 1
      }
      return true
    })
    if (isAtEnd) break
    isWhole = false
    next = firstReadable(canRead, next, last)
  }
  return { rows, isWhole }
}

/** Further than any book goes. */
const furthest = 2 ** 31

const lastRowId = (book: Book, table: string): number =>
  (book.prepare(`SELECT max(rowid) FROM ${table}`).pluck().get() as number | null) ?? 0

/** The least row behind `failed` that can be read; undefined where there is none up to `last`. */
function firstReadable(canRead: (rowId: number) => boolean, failed: number, last: number) {
  let bad = failed
  for (let step = 1; ; step *= 2) {
    const good = Math.min(last, bad + step)
    if (canRead(good)) return closedIn(canRead, bad, good)
    if (good >= last) return undefined
    bad = good
  }
}

function closedIn(canRead: (rowId: number) => boolean, bad: number, good: number): number {
  while (good - bad > 1) {
    const middle = Math.floor((bad + good) / 2)
    if (canRead(middle)) good = middle
    else bad = middle
  }
  return good
}

/** Damage is what is expected here and gives undefined; anything else is a mistake of ours. */
function tried<T>(read: () => T): T | undefined {
  try {
    return read()
  } catch (error) {
    if (bookErrorOf(error)) return undefined
    throw error
  }
}
