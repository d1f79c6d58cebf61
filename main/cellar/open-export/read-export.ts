/**
 * Makes a book of an export. The book is begun in the schema of the one that was exported, filled,
 * and then brought up by the same migrations as any older book; only what then keeps to the schemas
 * of this program, and adds up to a ledger, is a book to go on with.
 */
import Database from 'better-sqlite3'
import { createHash } from 'node:crypto'
import { existsSync } from 'node:fs'
import { z } from 'zod'
import type { ExportManifest, ExportPart } from '../../../shared/schemas/exports.ts'
import { Move } from '../../../shared/schemas/moves.ts'
import { bookFacts, type BookFacts } from '../book-facts.ts'
import { migrate, newestVersion } from '../migrate.ts'
import { migrations } from '../migrations.ts'
import { makeBook, removeBookFiles, type Book } from '../open-book.ts'
import { placesNamed } from '../places-named.ts'
import { contentOf, withZip, type OpenZip } from '../zip-reader.ts'
import { bookTables, openRow, rawRows, rawValues, type BookTable } from './book-tables.ts'
import { dataEntry, manifestIn } from './export-file.ts'
import { ExportUnfit, asExport, asRow } from './export-unfit.ts'
import { linesIn, valueIn } from './json-lines.ts'
import { rowSchemas } from './row-schemas.ts'

export interface Reading {
  /** Must not exist; nothing is left there when the export will not do. */
  readonly into: string
  readonly onStep: (step: 'packing' | 'checking', share: number) => void
}

export interface ReadExport {
  readonly manifest: ExportManifest
  readonly facts: BookFacts
}

/** Throws `ExportUnfit` with the reason. */
export async function readExport(file: string, { into, onStep }: Reading): Promise<ReadExport> {
  if (existsSync(into)) throw new Error(`there is a book already at ${into}`)
  try {
    return await asExport(() =>
      withZip(file, async (zip) => {
        const manifest = await manifestIn(zip)
        beginBook(into, manifest.schemaVersion)
        const book = new Database(into)
        try {
          onStep('packing', 0)
          await fill(book, { zip, manifest, onShare: (share) => onStep('packing', share) })
          onStep('checking', 0)
          migrate(book)
          book.pragma('foreign_keys = ON')
          mustHoldTogether(book)
          mustKeepToSchemas(book, (share) => onStep('checking', share))
          return { manifest, facts: factsIn(book) }
        } finally {
          book.close()
        }
      }),
    )
  } catch (error) {
    removeBookFiles(into)
    throw error
  }
}

function beginBook(into: string, schemaVersion: number): void {
  if (schemaVersion > newestVersion)
    throw new ExportUnfit('newerProgram', `the book is of schema ${schemaVersion}`)
  if (!migrations.some(({ version }) => version === schemaVersion))
    throw new ExportUnfit('notBySchema', `no book was ever of schema ${schemaVersion}`)
  makeBook(
    into,
    migrations.filter(({ version }) => version <= schemaVersion),
  )
}

interface Filling {
  readonly zip: OpenZip
  readonly manifest: ExportManifest
  readonly onShare: (share: number) => void
}

async function fill(book: Book, { zip, manifest, onShare }: Filling): Promise<void> {
  const parts = new Map(manifest.data.map((part) => [part.name, part]))
  const all = manifest.data.reduce((sum, { bytes }) => sum + bytes, 0)
  let done = 0
  // What refers to what is looked at when all is there.
  book.pragma('foreign_keys = OFF')
  book.exec('BEGIN IMMEDIATE')
  for (const table of bookTables(book)) {
    const part = parts.get(dataEntry(table.name))
    if (!part) throw new ExportUnfit('damagedInside', `${dataEntry(table.name)} is missing`)
    await fillTable(book, table, {
      part,
      content: contentOf(zip, part.name),
      onBytes: (bytes) => {
        done += bytes
        onShare(Math.min(1, done / Math.max(1, all)))
      },
    })
  }
  book.exec('COMMIT')
}

interface TableToFill {
  readonly part: ExportPart
  readonly content: AsyncIterable<Uint8Array>
  readonly onBytes: (bytes: number) => void
}

async function fillTable(book: Book, table: BookTable, { part, content, onBytes }: TableToFill) {
  const hash = createHash('sha256')
  async function* hashed() {
    for await (const piece of content) {
      hash.update(piece)
      onBytes(piece.length)
      yield piece
    }
  }
  const names = table.columns.map(({ name }) => name)
  const add = book.prepare(
    `INSERT INTO ${table.name} (${names.join()}) VALUES (${names.map(() => '?').join()})`,
  )
  let rows = 0
  for await (const line of linesIn(hashed())) {
    rows += 1
    const where = `${part.name}, line ${rows}`
    const row = valueIn(line)
    if (typeof row !== 'object' || row === null || Array.isArray(row))
      throw new ExportUnfit('notBySchema', `${where} is no object`)
    const values = rawValues(table, row as Readonly<Record<string, unknown>>)
    if (typeof values === 'string') throw new ExportUnfit('notBySchema', `${where}: ${values}`)
    asRow(where, () => add.run(...values))
  }
  if (rows !== part.rows || hash.digest('hex') !== part.sha256)
    throw new ExportUnfit('checksum', `${part.name} is not as it was written`)
}

function mustHoldTogether(book: Book): void {
  if ((book.pragma('foreign_key_check') as unknown[]).length > 0)
    throw new ExportUnfit('notBySchema', 'rows name what is not there')
  const gap = book
    .prepare(
      `SELECT id FROM move GROUP BY id HAVING min(version) <> 1 OR max(version) <> count(*) LIMIT 1`,
    )
    .get()
  if (gap) throw new ExportUnfit('notBySchema', 'a version of a move is missing')
}

function mustKeepToSchemas(book: Book, onShare: (share: number) => void): void {
  const tables = bookTables(book)
  tables.forEach((table, index) => {
    const schema = rowSchemas[table.name]
    if (!schema) throw new Error(`the table ${table.name} has no schema in row-schemas.ts`)
    for (const raw of rawRows(book, table)) {
      const read = schema.safeParse(openRow(table, raw))
      if (!read.success)
        throw new ExportUnfit('notBySchema', `${table.name}: ${z.prettifyError(read.error)}`)
    }
    onShare((index + 1) / (tables.length + 1))
  })
  mustKnowPlaces(book)
}

/** No column holds these together: jars and shelves are named inside the moves. */
function mustKnowPlaces(book: Book): void {
  const idsIn = (table: 'jar' | 'shelf') =>
    new Set(book.prepare(`SELECT id FROM ${table}`).pluck().all())
  const [jars, shelves] = [idsIn('jar'), idsIn('shelf')]
  const payloads = book.prepare('SELECT payload FROM move WHERE payload IS NOT NULL').pluck()
  for (const payload of payloads.iterate()) {
    const { jarIds, shelfIds } = placesNamed(JSON.parse(payload as string) as Move)
    if (!jarIds.every((id) => jars.has(id)) || !shelfIds.every((id) => shelves.has(id)))
      throw new ExportUnfit('notBySchema', 'a move names a vessel or shelf that is not there')
  }
}

/** Whatever the engine stumbles over in rows from elsewhere is a fault of the rows. */
function factsIn(book: Book): BookFacts {
  try {
    return bookFacts(book)
  } catch (error) {
    throw new ExportUnfit('notBySchema', 'its moves cannot be worked through', { cause: error })
  }
}
