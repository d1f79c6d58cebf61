/** The whole cellar as tables that any spreadsheet reads and none runs. */
import type { CellarTable, CellarTold } from './cellar-told.ts'
import { moveTable, readingTable, tastingTable } from './history-tables.ts'
import { batchTable, bottleTable, pantryTable, vesselTable } from './stock-tables.ts'
import { csv } from '../csv.ts'

export const cellarTables = (told: CellarTold): CellarTable[] =>
  [batchTable, vesselTable, pantryTable, bottleTable, moveTable, readingTable, tastingTable].map(
    (table) => table(told),
  )

/** So that spreadsheets take it for UTF-8. */
const byteOrderMark = '\ufeff'

export function* tableText({ head, rows }: CellarTable): Generator<string> {
  yield byteOrderMark + csv([head])
  for (const row of rows()) yield csv([row])
}
