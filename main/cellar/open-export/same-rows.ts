/** Do two books hold the same? Every table that is not derived, row by row, to the last bit. */
import type { Book } from '../open-book.ts'
import { bookTables, rawRows } from './book-tables.ts'

/** The first place where they differ; undefined where nothing does. */
export function firstDifference(one: Book, other: Book): string | undefined {
  const tables = bookTables(one)
  const others = bookTables(other)
  if (JSON.stringify(tables) !== JSON.stringify(others)) return 'the tables'
  for (const table of tables) {
    const rows = rawRows(other, table)
    let index = 0
    for (const row of rawRows(one, table)) {
      const match = rows.next()
      const isSame =
        !match.done &&
        table.columns.every(({ name, kind }) =>
          isSameValue(row[name] ?? null, match.value[name] ?? null, kind === 'json'),
        )
      if (!isSame) {
        rows.return(undefined)
        return `${table.name}, row ${index + 1}`
      }
      index += 1
    }
    if (!rows.next().done) {
      rows.return(undefined)
      return `${table.name}, rows after ${index}`
    }
  }
  return undefined
}

type Value = string | number | null

/** JSON may have been written with other blanks; its values count. */
const isSameValue = (one: Value, other: Value, isJson: boolean): boolean =>
  Object.is(one, other) ||
  (isJson && one !== null && other !== null && canonical(one) === canonical(other))

const canonical = (json: Value): string => JSON.stringify(JSON.parse(String(json)))
