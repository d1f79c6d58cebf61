/**
 * The book's tables as an export writes them, read off the book's own schema: so that an export of
 * any version of the book, and every table added later, is told in the same way.
 */
import { derivedTables } from '../derived-tables.ts'
import type { Book } from '../open-book.ts'

/** `truth` is 0 or 1 in the book; `json` is text there, and a value of its own in an export. */
export interface BookColumn {
  readonly name: string
  /** Its name in an export: `capacity_ml` is `capacityMl` there. */
  readonly field: string
  readonly kind: 'plain' | 'truth' | 'json'
}

export interface BookTable {
  readonly name: string
  readonly columns: readonly BookColumn[]
  /** The order of the rows is kept: lists follow it. */
  readonly orderBy: string
}

/** Every table that is not derived, in the order in which they were made. */
export function bookTables(book: Book): BookTable[] {
  const made = book
    .prepare("SELECT name, sql FROM sqlite_master WHERE type = 'table' ORDER BY rowid")
    .all() as { name: string; sql: string }[]
  return made
    .filter(({ name }) => !name.startsWith('sqlite_') && !derivedTables.has(name))
    .map(({ name, sql }) => ({ name, ...columnsOf(book, name, sql) }))
}

function columnsOf(book: Book, table: string, sql: string): Omit<BookTable, 'name'> {
  // Generated columns are not among them: they follow from the others.
  const told = book
    .prepare(`SELECT name, pk FROM pragma_table_info('${table}') ORDER BY cid`)
    .all() as { name: string; pk: number }[]
  const hasRowId = book.prepare(`SELECT wr FROM pragma_table_list('${table}')`).pluck().get() === 0
  const key = told.filter(({ pk }) => pk > 0).sort((a, b) => a.pk - b.pk)
  const json = new Set([...sql.matchAll(/json_valid\s*\(\s*(\w+)\s*\)/g)].map(([, name]) => name))
  return {
    columns: told.map(({ name }) => ({
      name,
      field: name.replaceAll(/_(\w)/g, (_, letter: string) => letter.toUpperCase()),
      kind: json.has(name) ? 'json' : name.startsWith('is_') ? 'truth' : 'plain',
    })),
    orderBy: hasRowId ? 'rowid' : key.map(({ name }) => name).join(),
  }
}

type Raw = Readonly<Record<string, string | number | null>>

export function* rawRows(book: Book, { name, columns, orderBy }: BookTable): Generator<Raw> {
  const fields = columns.map((column) => column.name).join()
  yield* book
    .prepare(`SELECT ${fields} FROM ${name} ORDER BY ${orderBy}`)
    .iterate() as IterableIterator<Raw>
}

export const rowCount = (book: Book, { name }: Pick<BookTable, 'name'>): number =>
  book.prepare(`SELECT count(*) FROM ${name}`).pluck().get() as number

/** A row as an export tells it. */
export type OpenRow = Readonly<Record<string, unknown>>

export function openRow({ columns }: BookTable, raw: Raw): OpenRow {
  const row: Record<string, unknown> = {}
  for (const { name, field, kind } of columns) {
    const value = raw[name] ?? null
    if (kind === 'json' && value !== null) row[field] = JSON.parse(String(value))
    else if (kind === 'truth') row[field] = value === 1
    else row[field] = value
  }
  return row
}

/** The values to write, column by column; a string says what is wrong with the row instead. */
export function rawValues(
  { columns }: BookTable,
  row: OpenRow,
): readonly (string | number | null)[] | string {
  const values: (string | number | null)[] = []
  for (const { field, kind } of columns) {
    if (!Object.hasOwn(row, field)) return `${field} is missing`
    const value = row[field]
    if (kind === 'json' && value !== null) values.push(JSON.stringify(value))
    else if (kind === 'truth') {
      if (typeof value !== 'boolean') return `${field} is neither true nor false`
      values.push(value ? 1 : 0)
    } else if (value === null || typeof value === 'string' || typeof value === 'number')
      values.push(value)
    else return `${field} is neither text nor a number`
  }
  if (Object.keys(row).length > columns.length) return 'it has fields that the table has not'
  return values
}
