import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { isFruitNamed, ownFruits, putFruit, removeFruit } from '../../main/cellar/fruit-store.ts'
import { migrate } from '../../main/cellar/migrate.ts'
import { migrations } from '../../main/cellar/migrations.ts'
import { addGroup } from '../../main/cellar/move-store.ts'
import { openBook, type Book } from '../../main/cellar/open-book.ts'
import { fruitOf } from '../../main/engine/index.ts'
import type { Move } from '../../shared/schemas/moves.ts'

const newBook = (): Book => openBook(join(mkdtempSync(join(tmpdir(), 'fruit-')), 'cellar.ratafia'))

const sloe = fruitOf('sloe')
const medlar = { ...sloe, id: 'medlar', nameEn: 'Medlar' }
const changedAt = '2026-11-25T12:00:00.000Z'

describe('ownFruits', () => {
  it('is empty in a new book', () => {
    const book = newBook()
    expect(ownFruits(book)).toEqual([])
    book.close()
  })

  it('gives back what was kept last, and nothing of what was removed', () => {
    const book = newBook()
    putFruit(book, { fruit: sloe, origin: 'edited', changedAt })
    putFruit(book, { fruit: medlar, origin: 'own', changedAt })
    const dryer = { ...sloe, drainedLPerKg: 0.5 }
    putFruit(book, { fruit: dryer, origin: 'edited', changedAt: '2026-11-26T12:00:00.000Z' })
    expect(ownFruits(book)).toEqual([
      { fruit: medlar, origin: 'own', changedAt },
      { fruit: dryer, origin: 'edited', changedAt: '2026-11-26T12:00:00.000Z' },
    ])
    removeFruit(book, 'sloe')
    expect(ownFruits(book).map(({ fruit }) => fruit.id)).toEqual(['medlar'])
    book.close()
  })
})

describe('isFruitNamed', () => {
  const buy: Move = {
    at: changedAt,
    kind: 'buy',
    lotId: 'lot',
    goods: { kind: 'fruit', fruitId: 'medlar', composition: medlar.composition },
    massG: 1000,
  }
  const record = (book: Book, version: number, move: Move | null) =>
    addGroup(book, {
      id: `g${version}`,
      requestKey: `k${version}`,
      recordedAt: changedAt,
      rows: [{ id: 'm', version, move }],
    })

  it('knows a purchase, and does not forget it when it is struck', () => {
    const book = newBook()
    expect(isFruitNamed(book, 'medlar')).toBe(false)
    record(book, 1, buy)
    expect(isFruitNamed(book, 'medlar')).toBe(true)
    expect(isFruitNamed(book, 'sloe')).toBe(false)
    record(book, 2, null)
    expect(isFruitNamed(book, 'medlar')).toBe(true)
    book.close()
  })
})

describe('isFruitNamed in a bottle', () => {
  it('knows bottles that came from elsewhere, each of their fruits, and none beside', () => {
    const book = newBook()
    const move: Move = {
      at: changedAt,
      kind: 'bringIn',
      batchId: 'b',
      bottleLotId: 'l',
      bottleSizeMl: 500,
      count: 2,
      strengthPctVol: 30,
      sugarGPerL: 200,
      fruitIds: ['sloe', 'medlar'],
    }
    const rows = [{ id: 'm', version: 1, move }]
    book
      .prepare('INSERT INTO batch (id, name, colour, note, opened_at) VALUES (?, ?, ?, ?, ?)')
      .run('b', 'B', '#4a2545', '', changedAt)
    addGroup(book, { id: 'g', requestKey: 'k', recordedAt: changedAt, rows })
    expect(['sloe', 'medlar', 'quince'].map((id) => isFruitNamed(book, id))).toEqual([
      true,
      true,
      false,
    ])
    book.close()
  })
})

describe('isFruitNamed on paper', () => {
  const paper = JSON.stringify({ charges: [{ fruitId: 'medlar', massG: 1000 }], note: 'sloe' })
  const season = JSON.stringify({ kinds: [{ kindId: 'medlar', because: 'sloe' }] })

  it.each([
    ['a draft', `INSERT INTO draft VALUES ('d', '${paper}', '', '')`],
    [
      'a recipe',
      `INSERT INTO recipe VALUES ('r', 'Medlar', '', NULL);
       INSERT INTO recipe_version VALUES ('r', 1, '', '${paper}')`,
    ],
    [
      'the plan of a batch',
      `INSERT INTO batch VALUES ('b', 'Medlar', '', '', '');
       INSERT INTO plan VALUES ('b', '', '${paper}', '[]', NULL, NULL)`,
    ],
    ['the wishes for a season', `INSERT INTO season_wishes VALUES (1, '${season}')`],
    ['the plan of a season', `INSERT INTO season_plan VALUES ('p', '', '${season}')`],
  ])('finds it in %s, by what it is and not by any word', (_where, insert) => {
    const book = newBook()
    book.exec(insert)
    expect(isFruitNamed(book, 'medlar')).toBe(true)
    expect(isFruitNamed(book, 'sloe')).toBe(false)
    book.close()
  })
})

describe('migration 20', () => {
  const to = (version: number) => migrations.filter((step) => step.version <= version)

  it('adds a place for fruits to a book that has moves, and leaves those as they were', () => {
    const db = new Database(':memory:')
    migrate(db, to(10))
    db.exec(`INSERT INTO move_group VALUES ('g', 'k', '${changedAt}', NULL);
             INSERT INTO move (id, version, group_id, payload)
               VALUES ('m', 1, 'g', '{"kind":"remark","batchId":null}')`)
    migrate(db, to(20))
    expect(db.pragma('user_version', { simple: true })).toBe(20)
    expect(db.prepare('SELECT count(*) FROM move').pluck().get()).toBe(1)
    expect(ownFruits(db)).toEqual([])
    putFruit(db, { fruit: medlar, origin: 'own', changedAt })
    expect(ownFruits(db)).toHaveLength(1)
    db.close()
  })

  it('keeps nothing that is neither a copy nor an own fruit, nor JSON', () => {
    const db = new Database(':memory:')
    migrate(db, to(20))
    expect(() => db.exec(`INSERT INTO fruit VALUES ('a', 'library', '{}', '')`)).toThrow(/CHECK/)
    expect(() => db.exec(`INSERT INTO fruit VALUES ('a', 'own', 'pear', '')`)).toThrow(/CHECK/)
    db.close()
  })
})
