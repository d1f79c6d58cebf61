/**
 * Reads a damaged book into a new one, as far as SQLite can: the damaged file is copied first and
 * never touched. What comes out is a sound book; what is missing from it is in the report.
 */
import { copyFileSync, existsSync, rmSync } from 'node:fs'
import Database from 'better-sqlite3'
import type { MoveInBook } from '../../shared/schemas/books-compared.ts'
import type { SalvageReport } from '../../shared/schemas/safekeeping.ts'
import { batchIdOf, fold, fruitOf } from '../engine/index.ts'
import { bookFacts } from './book-facts.ts'
import { derivedTables } from './derived-tables.ts'
import { moveInBook } from './look-into-backup.ts'
import { currentMoves } from './move-store.ts'
import { closeBook, openBook, type Book } from './open-book.ts'
import { readableRows, type ReadableRows, type Row } from './readable-rows.ts'
import { placesNamed } from './places-named.ts'
import { salvagedLedger, type SalvagedLedger } from './salvage-moves.ts'

const ledger = new Set(['move', 'move_group'])
const mostListed = 200

export function salvageBook(
  damagedFile: string,
  { into, onTable }: { into: string; onTable: (done: number, of: number) => void },
): SalvageReport {
  const copy = `${into}.damaged-copy`
  const damaged = openCopy(damagedFile, copy)
  try {
    const book = openBook(into)
    try {
      return transfer(damaged, book, onTable)
    } finally {
      closeBook(book)
    }
  } finally {
    damaged.close()
    for (const suffix of ['', '-wal', '-shm']) rmSync(copy + suffix, { force: true })
  }
}

function openCopy(damagedFile: string, copy: string): Book {
  copyFileSync(damagedFile, copy)
  // What was written last may still lie in the log beside it.
  if (existsSync(`${damagedFile}-wal`)) copyFileSync(`${damagedFile}-wal`, `${copy}-wal`)
  return new Database(copy)
}

function transfer(
  damaged: Book,
  book: Book,
  onTable: (done: number, of: number) => void,
): SalvageReport {
  const names = (
    book
      .prepare("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY rowid")
      .pluck()
      .all() as string[]
  ).filter((name) => !name.startsWith('sqlite_') && !derivedTables.has(name))
  const read = new Map<string, ReadableRows>()
  names.forEach((name, index) => {
    onTable(index, names.length)
    read.set(name, readableRows(damaged, name))
  })
  const rowsOf = (name: string) => read.get(name)?.rows ?? []
  const told = salvagedLedger(rowsOf('move'), rowsOf('move_group'))
  const written = new Map<string, number>()
  const own = names.filter((name) => !ledger.has(name))
  // Parents were made before what refers to them, and come first here as well.
  const addOwn = () => {
    for (const name of own)
      written.set(name, (written.get(name) ?? 0) + addRows(book, name, rowsOf(name)))
  }
  const madeAgain = book
    .transaction(() => {
      addOwn()
      const made = makeAgain(book, told)
      addLedger(book, told)
      // What refers to a batch made again could not come in before it.
      if (made.batches > 0) addOwn()
      return made
    })
    .immediate()
  written.set('move', told.moves.length)
  written.set('move_group', told.groups.length)
  const { refused } = fold(currentMoves(book), { fruitOf })
  return {
    tables: names.map((table) => ({
      table,
      rows: written.get(table) ?? 0,
      isWhole: read.get(table)?.isWhole ?? false,
    })),
    movesRead: told.moves.length,
    lostMoves: told.lostMoves.slice(0, mostListed),
    lostCount: told.lostMoves.length,
    refusedMoves: refused.slice(0, mostListed).flatMap(({ recorded }): MoveInBook[] =>
      moveInBook(
        {
          id: recorded.id,
          recordedAt: recorded.recordedAt,
          payload: JSON.stringify(recorded.move),
        },
        book,
      ),
    ),
    refusedCount: refused.length,
    madeAgain,
    counts: bookFacts(book).counts,
  }
}

/** How many came in; a row that the schema refuses is left out. */
function addRows(book: Book, table: string, rows: readonly Row[]): number {
  const [first] = rows
  if (!first) return 0
  const known = book
    .prepare(`SELECT name FROM pragma_table_info('${table}')`)
    .pluck()
    .all() as string[]
  const columns = known.filter((name) => name in first)
  const add = book.prepare(
    `INSERT OR IGNORE INTO ${table} (${columns.join()}) VALUES (${columns.map(() => '?').join()})`,
  )
  let added = 0
  for (const row of rows) {
    try {
      added += add.run(...columns.map((name) => row[name])).changes
    } catch (error) {
      if (!isConstraint(error)) throw error
    }
  }
  return added
}

const isConstraint = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && String(error.code).startsWith('SQLITE_CONSTRAINT')

/** Batches, jars and shelves that moves name, but that could not be read. */
function makeAgain(book: Book, { moves }: SalvagedLedger): SalvageReport['madeAgain'] {
  const batch = book.prepare(
    `INSERT OR IGNORE INTO batch (id, name, colour, note, opened_at)
     VALUES (?, 'Batch read from damage', '#777777', '', ?)`,
  )
  const jar = book.prepare(
    `INSERT OR IGNORE INTO jar (id, name, shape, capacity_ml, is_retired)
     VALUES (?, 'Jar read from damage', 'jar', 10000, 0)`,
  )
  const shelf = book.prepare(
    `INSERT OR IGNORE INTO shelf (id, name, temperature_c, light, is_retired)
     VALUES (?, 'Shelf read from damage', 15, 'dark', 0)`,
  )
  const made = { batches: 0, jars: 0, shelves: 0 }
  for (const { payload } of moves) {
    if (payload === null) continue
    const move = JSON.parse(payload) as Parameters<typeof batchIdOf>[0]
    const batchId = batchIdOf(move)
    if (batchId !== undefined) made.batches += batch.run(batchId, move.at).changes
    const { jarIds, shelfIds } = placesNamed(move)
    for (const id of jarIds) made.jars += jar.run(id).changes
    for (const id of shelfIds) made.shelves += shelf.run(id).changes
  }
  return made
}

function addLedger(book: Book, { groups, moves }: SalvagedLedger): void {
  const addGroup = book.prepare(
    `INSERT OR IGNORE INTO move_group (id, request_key, recorded_at) VALUES (?, ?, ?)`,
  )
  const addUndo = book.prepare('UPDATE OR IGNORE move_group SET undoes = ? WHERE id = ?')
  const addMove = book.prepare(
    'INSERT INTO move (seq, id, version, group_id, payload) VALUES (?, ?, ?, ?, ?)',
  )
  for (const { id, requestKey, recordedAt } of groups) addGroup.run(id, requestKey, recordedAt)
  for (const { id, undoes } of groups) if (undoes !== null) addUndo.run(undoes, id)
  for (const { seq, id, version, groupId, payload } of moves)
    addMove.run(seq, id, version, groupId, payload)
}
