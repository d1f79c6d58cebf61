import { createHash } from 'node:crypto'
import { copyFileSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import Database from 'better-sqlite3'
import fc from 'fast-check'
import { unzipSync, zipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { bookFacts } from '../../../main/cellar/book-facts.ts'
import { derivedTables } from '../../../main/cellar/derived-tables.ts'
import { migrate, newestVersion } from '../../../main/cellar/migrate.ts'
import { migrations } from '../../../main/cellar/migrations.ts'
import { makeBook } from '../../../main/cellar/open-book.ts'
import {
  bookTables,
  openRow,
  rawRows,
  rowCount,
} from '../../../main/cellar/open-export/book-tables.ts'
import { dataEntry, foundExport } from '../../../main/cellar/open-export/export-file.ts'
import { readExport } from '../../../main/cellar/open-export/read-export.ts'
import { rowSchemas } from '../../../main/cellar/open-export/row-schemas.ts'
import { firstDifference } from '../../../main/cellar/open-export/same-rows.ts'
import { histories, play } from '../../engine/ledger/random-history.ts'
import { filledBook, newBookFile } from '../filled-book.ts'
import { bookOf, exportOf, fullBook, oddText } from './full-book.ts'

const broughtBack = async (file: string): Promise<string> => {
  const into = join(mkdtempSync(join(tmpdir(), 'back-')), 'book.ratafia')
  await readExport(file, { into, onStep: () => undefined })
  return into
}

const withBooks = <T>(files: readonly string[], use: (books: Database.Database[]) => T): T => {
  const books = files.map((file) => new Database(file, { readonly: true }))
  try {
    return use(books)
  } finally {
    for (const book of books) book.close()
  }
}

const textsIn = (file: string): Record<string, string> =>
  Object.fromEntries(
    Object.entries(unzipSync(readFileSync(file))).map(([name, bytes]) => [
      name,
      Buffer.from(bytes).toString('utf8'),
    ]),
  )

const lines = (text: string): object[] =>
  text
    .split('\n')
    .slice(0, -1)
    .map((line) => JSON.parse(line) as object)

describe('every table of the book', () => {
  const db = new Database(':memory:')
  migrate(db)
  const all = db
    .prepare("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")
    .pluck()
    .all() as string[]

  it('is derived, or exported by a schema of its own', () => {
    expect([...derivedTables, ...Object.keys(rowSchemas)].sort()).toEqual([...all].sort())
    expect(bookTables(db).map(({ name }) => name)).toEqual(
      all.filter((name) => !derivedTables.has(name)),
    )
  })
})

const book = fullBook()
const exported = await exportOf(book)

describe('an export', () => {
  it('brings back every row of every table', async () => {
    const back = await broughtBack(exported)
    withBooks([book, back], ([one, other]) => {
      if (!one || !other) throw new Error('two books are compared')
      const counts = bookTables(one).map((table) => [table.name, rowCount(one, table)])
      expect(counts.filter(([, count]) => count === 0)).toEqual([])
      expect(firstDifference(one, other)).toBeUndefined()
      // Without the function that the program itself trusts.
      for (const table of bookTables(one))
        expect([...rawRows(other, table)]).toEqual([...rawRows(one, table)])
      expect(bookFacts(other)).toEqual(bookFacts(one))
    })
  })

  it('brings back random histories with odd words to the bit', async () => {
    await fc.assert(
      fc.asyncProperty(
        histories({ maxLength: 25 }),
        fc.string({ unit: 'binary' }),
        async (wishes, words) => {
          const { moves } = play(wishes, () => undefined)
          const random = bookOf(moves, `${words}${oddText}`.toWellFormed().slice(0, 4000))
          const back = await broughtBack(await exportOf(random))
          withBooks([random, back], ([one, other]) => {
            if (!one || !other) throw new Error('two books are compared')
            expect(firstDifference(one, other)).toBeUndefined()
            expect(bookFacts(other)).toEqual(bookFacts(one))
          })
        },
      ),
      { numRuns: 6 },
    )
  }, 60_000)

  it('keeps to the schemas in it, by a validator that is not ours', () => {
    const found = textsIn(exported)
    const names = Object.keys(found).filter((name) => name.startsWith('data/'))
    expect(names).toHaveLength(Object.keys(rowSchemas).length)
    for (const name of names) {
      const schema = found[name.replace('data/', 'schemas/').replace('.jsonl', '.schema.json')]
      // Formats stand beside patterns that say the same.
      const validate = new Ajv2020({ strict: false, validateFormats: false }).compile(
        JSON.parse(schema ?? 'null') as object,
      )
      const rows = lines(found[name] ?? '')
      expect(rows.length).toBeGreaterThan(0)
      for (const row of rows)
        expect([name, validate(row), validate.errors]).toEqual([name, true, null])
      const [row = {}] = rows
      expect(validate({ ...row, more: 1 })).toBe(false)
      expect(validate({ ...row, [Object.keys(row)[0] ?? '']: [] })).toBe(false)
    }
  })

  it('says what it holds, and leaves nothing else behind', async () => {
    const made = readdirSync(dirname(exported)).filter((name) => name.includes('.cellar.zip'))
    expect(made).toEqual(['cellar-2026-11-25-180307Z.cellar.zip'])
    const { manifest, problem } = await foundExport(exported)
    expect(problem).toBeNull()
    expect(manifest).toMatchObject({
      format: 'ratafia-cellar',
      version: 1,
      currency: 'PLN',
      counts: { moves: 2, jars: 1, batches: 2 },
    })
    expect(manifest?.data.find(({ name }) => name === 'data/move.jsonl')?.rows).toBe(6)
  })

  it('is never written over another', async () => {
    const small = filledBook()
    const first = await exportOf(small)
    const bytes = readFileSync(first)
    expect(await exportOf(small)).toMatch(/Z-2\.cellar\.zip$/)
    expect(readFileSync(first).equals(bytes)).toBe(true)
  })
})

describe('firstDifference', () => {
  const changed = (sql: string): string | undefined => {
    const other = join(mkdtempSync(join(tmpdir(), 'changed-')), 'book.ratafia')
    copyFileSync(book, other)
    const opened = new Database(other)
    opened.exec(sql)
    opened.close()
    return withBooks([book, other], ([a, b]) => a && b && firstDifference(a, b))
  }

  it('sees the last bit of a number, a row too many, and one too few', () => {
    expect(changed('SELECT 1')).toBeUndefined()
    expect(changed('UPDATE jar SET capacity_ml = 9000.000000000002')).toBe('jar, row 1')
    expect(changed(`INSERT INTO jar VALUES ('x', 'X', 'jar', 1, 0)`)).toBe('jar, rows after 1')
    expect(changed('DELETE FROM setting')).toBe('setting, row 1')
    expect(changed('ALTER TABLE jar ADD COLUMN more TEXT')).toBe('the tables')
  })

  it('lets JSON be written with other blanks, but no other values', () => {
    expect(changed(`UPDATE setting SET value = ' ' || value`)).toBeUndefined()
    expect(changed(`UPDATE setting SET value = '"other"' WHERE key = 'units'`)).toMatch(/^setting/)
  })
})

describe('openRow', () => {
  it('gives columns that hold JSON as values, and 0 or 1 as false or true', () => {
    withBooks([book], ([opened]) => {
      if (!opened) throw new Error('there is a book')
      const table = bookTables(opened).find(({ name }) => name === 'calendar_entry')
      if (!table) throw new Error('there is a table')
      const [raw] = rawRows(opened, table)
      expect(openRow(table, raw ?? {})).toMatchObject({
        entry: { summary: oddText },
        isCancelled: true,
        sequence: 3,
      })
    })
  })
})

describe('an export of an older book', () => {
  it('comes in by the schema it was made with, and is then brought up like any older book', async () => {
    const older = newBookFile()
    const version = 40
    makeBook(
      older,
      migrations.filter((step) => step.version <= version),
    )
    const db = new Database(older)
    db.exec(`INSERT INTO shelf VALUES ('s', 'Cellar', 12.1, 'dim', 1)`)
    db.exec(`INSERT INTO batch VALUES ('b', 'Damson', '#4a2545', '', '2026-01-01T00:00:00Z')`)
    const data = bookTables(db).map((table) => {
      const text = [...rawRows(db, table)]
        .map((raw) => `${JSON.stringify(openRow(table, raw))}\n`)
        .join('')
      const sha256 = createHash('sha256').update(text).digest('hex')
      return { table, text, part: { rows: rowCount(db, table), bytes: text.length, sha256 } }
    })
    expect(data.map(({ table }) => table.name)).not.toContain('season_plan')
    db.close()
    const { manifest } = await foundExport(exported)
    const parts = data.map(({ table, part }) => ({ ...part, name: dataEntry(table.name) }))
    const file = join(mkdtempSync(join(tmpdir(), 'older-')), 'older.cellar.zip')
    const entries = {
      'manifest.json': JSON.stringify({ ...manifest, schemaVersion: version, data: parts }),
      ...Object.fromEntries(data.map(({ table, text }) => [dataEntry(table.name), text])),
    }
    writeFileSync(
      file,
      zipSync(
        Object.fromEntries(
          Object.entries(entries).map(([name, text]) => [name, Buffer.from(text)]),
        ),
      ),
    )
    withBooks([await broughtBack(file)], ([back]) => {
      expect(back?.pragma('user_version', { simple: true })).toBe(newestVersion)
      expect(back?.prepare('SELECT name, temperature_c FROM shelf').raw().all()).toEqual([
        ['Cellar', 12.1],
      ])
    })
  })
})
