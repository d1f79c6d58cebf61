import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { BookError } from '../../main/cellar/book-error.ts'
import { migrate } from '../../main/cellar/migrate.ts'
import { migrations } from '../../main/cellar/migrations.ts'
import { applicationId, closeBook, integrityOf, openBook } from '../../main/cellar/open-book.ts'

const newFile = () => join(mkdtempSync(join(tmpdir(), 'book-')), 'cellar.ratafia')

const kindOf = (open: () => unknown): string => {
  try {
    open()
  } catch (error) {
    if (error instanceof BookError) return error.kind
    throw error
  }
  return 'opened'
}

describe('openBook', () => {
  it('makes a book that says what it is and puts every commit on disk', () => {
    const book = openBook(newFile())
    expect(book.pragma('application_id', { simple: true })).toBe(applicationId)
    expect(book.pragma('user_version', { simple: true })).toBe(migrations.at(-1)?.version)
    expect(book.pragma('journal_mode', { simple: true })).toBe('wal')
    expect(book.pragma('synchronous', { simple: true })).toBe(2) // FULL
    expect(book.pragma('foreign_keys', { simple: true })).toBe(1)
    expect(integrityOf(book)).toBe('ok')
    closeBook(book)
  })

  it('leaves the book and an empty lock file behind when closed', () => {
    const file = newFile()
    closeBook(openBook(file))
    expect(readdirSync(dirname(file)).sort()).toEqual(['cellar.ratafia', 'cellar.ratafia.lock'])
    expect(readFileSync(`${file}.lock`)).toHaveLength(0)
  })

  it('refuses a book of a newer schema and leaves it as it was', () => {
    const file = newFile()
    closeBook(openBook(file))
    const newer = new Database(file)
    newer.pragma('user_version = 99990')
    newer.pragma('journal_mode = DELETE')
    newer.close()
    const before = readFileSync(file)
    expect(kindOf(() => openBook(file))).toBe('bookNewer')
    const after = new Database(file, { readonly: true })
    expect(after.pragma('user_version', { simple: true })).toBe(99990)
    after.close()
    expect(readFileSync(file).equals(before)).toBe(true)
  })

  it("refuses another program's database and leaves it as it was", () => {
    const file = newFile()
    const other = new Database(file)
    other.exec('CREATE TABLE theirs (a)')
    other.close()
    const before = readFileSync(file)
    expect(kindOf(() => openBook(file))).toBe('bookForeign')
    expect(readFileSync(file).equals(before)).toBe(true)
  })

  it('refuses a file that is no database and leaves it as it was', () => {
    const file = newFile()
    writeFileSync(file, 'sour cherries, 3 kg\n'.repeat(500))
    const before = readFileSync(file)
    expect(kindOf(() => openBook(file))).toBe('bookForeign')
    expect(readFileSync(file).equals(before)).toBe(true)
  })
})

describe('a book that is open', () => {
  it('is refused to a second keeper, and stays as it was', () => {
    const file = newFile()
    const book = openBook(file)
    expect(kindOf(() => openBook(file))).toBe('bookBusy')
    book.exec("INSERT INTO setting VALUES ('units', '\"us\"')")
    closeBook(book)
    const again = openBook(file)
    expect(again.prepare('SELECT count(*) FROM setting').pluck().get()).toBe(1)
    closeBook(again)
  })

  it('can still be read by other programs', () => {
    const file = newFile()
    const book = openBook(file)
    const other = new Database(file, { readonly: true })
    expect(other.pragma('application_id', { simple: true })).toBe(applicationId)
    other.close()
    closeBook(book)
  })

  it('is free again once its keeper is killed', async () => {
    const file = newFile()
    const keeper = spawn(process.execPath, [
      '--input-type=module',
      '-e',
      `const { openBook } = await import(${JSON.stringify(new URL('../../main/cellar/open-book.ts', import.meta.url).href)})
       openBook(${JSON.stringify(file)})
       console.log('open')
       setInterval(() => undefined, 1000)`,
    ])
    await once(keeper.stdout, 'data')
    expect(kindOf(() => openBook(file))).toBe('bookBusy')
    keeper.kill('SIGKILL')
    await once(keeper, 'exit')
    closeBook(openBook(file))
  })
})

describe('migrate', () => {
  const step = (version: number, sql: string) => ({ version, does: sql, sql })

  it('does nothing the second time', () => {
    const db = new Database(':memory:')
    const steps = [step(10, 'CREATE TABLE a (x)')]
    migrate(db, steps)
    migrate(db, steps)
    expect(db.pragma('user_version', { simple: true })).toBe(10)
  })

  it('takes a failing step back whole, and keeps the steps before it', () => {
    const db = new Database(':memory:')
    const steps = [
      step(10, 'CREATE TABLE a (x)'),
      step(20, 'CREATE TABLE b (x); CREATE TABLE b (x)'),
    ]
    expect(() => migrate(db, steps)).toThrow(/already exists/)
    expect(db.pragma('user_version', { simple: true })).toBe(10)
    expect(db.prepare('SELECT name FROM sqlite_master').pluck().all()).toEqual(['a'])
  })

  it('refuses a list of steps that is out of order', () => {
    const db = new Database(':memory:')
    expect(() => migrate(db, [step(20, 'SELECT 1'), step(10, 'SELECT 1')])).toThrow(/out of order/)
  })

  it('has rising versions', () => {
    const versions = migrations.map(({ version }) => version)
    expect(versions).toEqual([...new Set(versions)].toSorted((a, b) => a - b))
  })
})
