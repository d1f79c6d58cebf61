/**
 * Writes a whole book in open form while it is in use: one instant of it, streamed into a zip under
 * another name, brought in again as if by somebody else, found to be the same row by row, and only
 * then given its name. Runs in a thread of its own.
 */
import { createHash } from 'node:crypto'
import { mkdirSync, renameSync, rmSync, statSync } from 'node:fs'
import { basename, join } from 'node:path'
import { Readable } from 'node:stream'
import Database from 'better-sqlite3'
import {
  exportFormat,
  exportVersion,
  type ExportManifest,
  type ExportPart,
  type FoundExport,
} from '../../../shared/schemas/exports.ts'
import { fold, fruitOf, type Folded } from '../../engine/index.ts'
import { factsOf, type BookFacts } from '../book-facts.ts'
import { datedName, freeNameIn, unfinishedName } from '../dated-file.ts'
import { currentMoves } from '../move-store.ts'
import type { Book } from '../open-book.ts'
import { readSettings } from '../setting-store.ts'
import { syncFolder } from '../sync-folder.ts'
import { writeZip, type EntryToZip } from '../zip-writer.ts'
import { bookTables, openRow, rawRows, rowCount, type BookTable } from './book-tables.ts'
import {
  dataEntry,
  exportEnding,
  foundExport,
  manifestEntry,
  readMeEntry,
  schemaEntry,
  tableEntry,
} from './export-file.ts'
import { ExportUnfit } from './export-unfit.ts'
import { jsonSchemaOf } from './json-schemas.ts'
import { readExport } from './read-export.ts'
import { readMe } from './read-me.ts'
import { firstDifference } from './same-rows.ts'

export interface ExportOrder {
  readonly bookFile: string
  readonly folder: string
  /** The folder beside the book may be made; a stick that is not there must not be. */
  readonly makesFolder: boolean
  readonly workFolder: string
  readonly madeAt: string
  readonly programVersion: string
}

/** A table for people: its name and its text in pieces, and how many rows stand below the head. */
export interface PeopleTable {
  readonly name: string
  readonly rows: number
  readonly text: Iterable<string>
}

/** What the tables for people are made from. */
export interface BookAtInstant {
  readonly book: Book
  readonly folded: Folded
  readonly at: Date
}

export interface Exporting {
  readonly onStep: (step: 'copying' | 'packing' | 'checking', share: number) => void
  readonly peopleTables: (book: BookAtInstant) => readonly PeopleTable[]
}

export async function makeExport(
  order: ExportOrder,
  { onStep, peopleTables }: Exporting,
): Promise<FoundExport> {
  const { bookFile, folder, makesFolder, madeAt } = order
  if (makesFolder) mkdirSync(folder, { recursive: true, mode: 0o700 })
  const name = datedName(basename(bookFile), madeAt, exportEnding)
  // Said before the work is done, when the folder is not there.
  const target = join(folder, freeNameIn(folder, name))
  const unfinished = unfinishedName(target)
  const book = new Database(bookFile, { readonly: true, fileMustExist: true, timeout: 5000 })
  try {
    onStep('copying', 0)
    // A read transaction holds one instant still, however much is written meanwhile.
    book.exec('BEGIN')
    const moves = currentMoves(book)
    const folded = fold(moves, { fruitOf })
    const facts = factsOf(book, moves.length, folded)
    onStep('packing', 0)
    const entries = entriesOf(book, {
      order,
      facts,
      tables: peopleTables({ book, folded, at: new Date(madeAt) }),
      onShare: (share) => onStep('packing', share),
    })
    await writeZip(unfinished, entries)
    await mustComeBackTheSame(unfinished, { book, facts, order, onStep })
    renameSync(unfinished, target)
    syncFolder(folder)
  } finally {
    book.close()
    rmSync(unfinished, { force: true })
  }
  return foundExport(target)
}

interface Writing {
  readonly order: ExportOrder
  readonly facts: BookFacts
  readonly tables: readonly PeopleTable[]
  readonly onShare: (share: number) => void
}

/** The manifest comes last: it has the sums of all that is before it. */
function entriesOf(book: Book, { order, facts, tables, onShare }: Writing): EntryToZip[] {
  const at = new Date(order.madeAt)
  const ownTables = bookTables(book)
  const data: ExportPart[] = []
  const forPeople: ExportPart[] = []
  const all = ownTables.reduce((sum, table) => sum + rowCount(book, table), 0)
  let done = 0
  const onRow = () => onShare(Math.min(1, (done += 1) / Math.max(1, all)))
  const whole = (name: string, text: () => string): EntryToZip => ({
    name,
    at,
    content: () => Buffer.from(text()),
  })
  return [
    whole(readMeEntry, () => readMe),
    ...ownTables.map((table) =>
      whole(
        schemaEntry(table.name),
        () => `${JSON.stringify(jsonSchemaOf(table.name), null, 2)}\n`,
      ),
    ),
    ...ownTables.map((table): EntryToZip => {
      const name = dataEntry(table.name)
      const text = rowLines(book, table, onRow)
      const sum = { name, rows: rowCount(book, table), into: data }
      return { name, at, content: () => Readable.from(summed(text, sum)) }
    }),
    ...tables.map((table): EntryToZip => {
      const name = tableEntry(table.name)
      const sum = { name, rows: table.rows, into: forPeople }
      return { name, at, content: () => Readable.from(summed(table.text, sum)) }
    }),
    whole(manifestEntry, () => {
      const manifest: ExportManifest = {
        format: exportFormat,
        version: exportVersion,
        madeAt: order.madeAt,
        programVersion: order.programVersion,
        bookName: basename(order.bookFile),
        currency: readSettings(book).currency,
        ...facts,
        data,
        tables: forPeople,
      }
      return `${JSON.stringify(manifest, null, 2)}\n`
    }),
  ]
}

function* rowLines(book: Book, table: BookTable, onRow: () => void): Generator<string> {
  for (const raw of rawRows(book, table)) {
    yield `${JSON.stringify(openRow(table, raw))}\n`
    onRow()
  }
}

const pieceLength = 64 * 1024

/** The text as bytes in larger pieces; its sum is noted when all of it went through. */
function* summed(
  text: Iterable<string>,
  { name, rows, into }: { name: string; rows: number; into: ExportPart[] },
): Generator<Buffer> {
  const hash = createHash('sha256')
  let bytes = 0
  const summedUp = (piece: string): Buffer => {
    const buffer = Buffer.from(piece)
    hash.update(buffer)
    bytes += buffer.length
    return buffer
  }
  let waiting = ''
  for (const piece of text) {
    waiting += piece
    if (waiting.length < pieceLength) continue
    yield summedUp(waiting)
    waiting = ''
  }
  if (waiting !== '') yield summedUp(waiting)
  into.push({ name, rows, bytes, sha256: hash.digest('hex') })
}

interface ToVerify extends Pick<Exporting, 'onStep'> {
  readonly book: Book
  readonly facts: BookFacts
  readonly order: ExportOrder
}

async function mustComeBackTheSame(
  file: string,
  { book, facts, order, onStep }: ToVerify,
): Promise<void> {
  const into = join(order.workFolder, 'came-back.ratafia')
  onStep('checking', 0)
  if (statSync(file).size === 0) throw new ExportUnfit('cutShort', 'nothing was written')
  // Unpacking and checking are both part of the check here.
  const back = await readExport(file, {
    into,
    onStep: (step, share) => onStep('checking', step === 'packing' ? share / 2 : 0.5 + share / 2),
  })
  const other = new Database(into, { readonly: true })
  try {
    const difference = firstDifference(book, other)
    if (difference !== undefined)
      throw new ExportUnfit('otherState', `what came back is different: ${difference}`)
    if (back.facts.ledgerDigest !== facts.ledgerDigest)
      throw new ExportUnfit('otherState', 'the moves in the export come to another state')
  } finally {
    other.close()
  }
}
