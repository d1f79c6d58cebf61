import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { putLots, readLots, replaceLots, type BottleLotRow } from '../../main/cellar/lot-store.ts'
import { migrate } from '../../main/cellar/migrate.ts'
import { migrations } from '../../main/cellar/migrations.ts'
import { openBook, type Book } from '../../main/cellar/open-book.ts'
import { allShelves, putShelf } from '../../main/cellar/shelf-store.ts'

const newBook = (): Book => openBook(join(mkdtempSync(join(tmpdir(), 'shelf-')), 'cellar.ratafia'))

const rack = {
  id: 'rack',
  name: 'Rack by the door',
  temperatureC: 13,
  light: 'dark',
  isRetired: false,
} as const
const sill = { ...rack, id: 'sill', name: 'Sill', temperatureC: 21.5, light: 'daylight' } as const

describe('allShelves', () => {
  it('gives back what was kept last, in the order of adding', () => {
    const book = newBook()
    putShelf(book, sill)
    putShelf(book, rack)
    putShelf(book, { ...sill, temperatureC: 20, isRetired: true })
    expect(allShelves(book)).toEqual([{ ...sill, temperatureC: 20, isRetired: true }, rack])
    book.close()
  })
})

describe('putLots', () => {
  const lot: BottleLotRow = {
    id: 'lot',
    batchId: 'batch',
    bottledAt: '2025-01-01T00:00:00.000Z',
    bottleSizeMl: 500,
    filledCount: 10,
    count: 7,
    places: [
      { shelfId: null, count: 2 },
      { shelfId: 'rack', count: 5 },
    ],
  }
  function withLot(): Book {
    const book = newBook()
    putShelf(book, rack)
    putShelf(book, sill)
    book.exec("INSERT INTO batch VALUES ('batch', 'Batch', '#000000', '', '2025-01-01T00:00:00Z')")
    putLots(book, { pantry: [], bottles: [lot] })
    return book
  }

  it('puts the places of a lot in place of those it had', () => {
    const book = withLot()
    expect(readLots(book).bottles).toEqual([lot])
    const moved = { ...lot, count: 6, places: [{ shelfId: 'sill', count: 6 }] }
    putLots(book, { pantry: [], bottles: [moved] })
    expect(readLots(book).bottles).toEqual([moved])
    replaceLots(book, { pantry: [], bottles: [] })
    expect(book.prepare('SELECT count(*) FROM bottle_place').pluck().get()).toBe(0)
    book.close()
  })

  it('refuses a shelf that is not there, a shelf named twice, and no bottles on a shelf', () => {
    const book = withLot()
    const put = (places: BottleLotRow['places']) => () =>
      putLots(book, { pantry: [], bottles: [{ ...lot, id: 'other', places }] })
    expect(put([{ shelfId: 'attic', count: 1 }])).toThrow(/FOREIGN KEY/)
    expect(put([lot.places[0], lot.places[0]] as BottleLotRow['places'])).toThrow(/UNIQUE/)
    expect(put([{ shelfId: 'rack', count: 0 }])).toThrow(/CHECK/)
    book.close()
  })
})

describe('migration 40', () => {
  it('leaves every bottle of an older book without a place', () => {
    const db = new Database(':memory:')
    migrate(
      db,
      migrations.filter(({ version }) => version <= 30),
    )
    db.exec(`
      INSERT INTO batch VALUES ('batch', 'Batch', '#000000', '', '2025-01-01T00:00:00Z');
      INSERT INTO bottle_lot VALUES ('full', 'batch', '2025-01-01T00:00:00Z', 500, 10, 7);
      INSERT INTO bottle_lot VALUES ('gone', 'batch', '2025-01-01T00:00:00Z', 500, 10, 0);
    `)
    migrate(db)
    expect(readLots(db).bottles.map(({ id, count, places }) => ({ id, count, places }))).toEqual([
      { id: 'full', count: 7, places: [{ shelfId: null, count: 7 }] },
      { id: 'gone', count: 0, places: [] },
    ])
    expect(allShelves(db)).toEqual([])
    db.close()
  })
})
