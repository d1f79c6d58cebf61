import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import {
  keptStyle,
  ownSheets,
  putSheet,
  putStyle,
  removeSheet,
} from '../../main/cellar/label-store.ts'
import { migrate } from '../../main/cellar/migrate.ts'
import { migrations } from '../../main/cellar/migrations.ts'
import type { LabelSheet, LabelStyle } from '../../shared/schemas/labels.ts'

const sheet: LabelSheet = {
  id: 'mine',
  name: 'The yellow box',
  pageWidthMm: 210,
  pageHeightMm: 297,
  columns: 2,
  rows: 3,
  labelWidthMm: 90,
  labelHeightMm: 80,
  marginLeftMm: 10,
  marginTopMm: 20,
  gapXMm: 10,
  gapYMm: 5,
}

const style: LabelStyle = {
  design: 'glass',
  part: 'neck',
  shown: ['name', 'strength'],
  hasCode: false,
  hasEmblem: true,
  hasCutMarks: true,
  strengthPrefix: 'alc',
  sheetId: 'mine',
}

/** A book of the schema before labels, with a jar in it. */
function olderBook() {
  const db = new Database(':memory:')
  db.pragma('foreign_keys = ON')
  migrate(
    db,
    migrations.filter(({ version }) => version < 50),
  )
  db.prepare(`INSERT INTO jar VALUES ('j', 'North', 'jar', 4000, 0)`).run()
  return db
}

describe('the step that brings labels', () => {
  it('leaves an older book as it was, with room for sheets and a style', () => {
    const db = olderBook()
    migrate(db)
    expect(db.prepare('SELECT name FROM jar').pluck().all()).toEqual(['North'])
    expect([ownSheets(db), keptStyle(db)]).toEqual([[], undefined])
  })
})

describe('own sheets', () => {
  it('are kept, changed in place, and forgotten', () => {
    const db = olderBook()
    migrate(db)
    putSheet(db, sheet)
    putSheet(db, { ...sheet, id: 'other' })
    putSheet(db, { ...sheet, rows: 2 })
    expect(ownSheets(db).map(({ id, rows }) => [id, rows])).toEqual([
      ['mine', 2],
      ['other', 3],
    ])
    expect([removeSheet(db, 'mine'), removeSheet(db, 'mine')]).toEqual([true, false])
    expect(ownSheets(db).map(({ id }) => id)).toEqual(['other'])
  })
})

describe('the kept style', () => {
  it('is the last one', () => {
    const db = olderBook()
    migrate(db)
    putStyle(db, style)
    putStyle(db, { ...style, design: 'ledger' })
    expect(keptStyle(db)).toEqual({ ...style, design: 'ledger' })
  })

  it('counts as not kept where it cannot be read', () => {
    const db = olderBook()
    migrate(db)
    putStyle(db, style)
    db.exec(`UPDATE label_style SET content = '{"design":"baroque"}'`)
    expect(keptStyle(db)).toBeUndefined()
  })
})
