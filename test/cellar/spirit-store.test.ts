import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { migrate } from '../../main/cellar/migrate.ts'
import { migrations } from '../../main/cellar/migrations.ts'
import { allShut, sayShut } from '../../main/cellar/spirit-store.ts'

const at = '2026-11-25T12:00:00.000Z'

describe('migration 71', () => {
  it('leaves an older book as it was, with room for what is said of its spirits', () => {
    const db = new Database(':memory:')
    migrate(
      db,
      migrations.filter(({ version }) => version < 71),
    )
    db.prepare(`INSERT INTO batch VALUES ('b1', 'Damson', '#4a2545', '', ?)`).run(at)
    migrate(db)
    expect(db.prepare('SELECT name FROM batch').pluck().all()).toEqual(['Damson'])
    expect(allShut(db)).toEqual(new Map())
  })
})

describe('what is said of an opened spirit', () => {
  it('is the last that was said, told what it was before', () => {
    const db = new Database(':memory:')
    migrate(db)
    expect(sayShut(db, 'spirit', at)).toBeNull()
    expect(sayShut(db, 'spirit', '2026-12-25T12:00:00.000Z')).toBe(at)
    expect(allShut(db)).toEqual(new Map([['spirit', '2026-12-25T12:00:00.000Z']]))
    expect(sayShut(db, 'spirit', null)).toBe('2026-12-25T12:00:00.000Z')
    expect(allShut(db)).toEqual(new Map())
  })
})
