import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import {
  allPublished,
  feedSecret,
  putPublished,
  setFeedSecret,
} from '../../main/cellar/calendar-store.ts'
import { migrate } from '../../main/cellar/migrate.ts'
import { migrations } from '../../main/cellar/migrations.ts'
import { allPutOff, putOff, remindedFirst } from '../../main/cellar/task-store.ts'

const at = '2026-11-25T12:00:00.000Z'

/** A book of the schema before, with a batch in it. */
function olderBook() {
  const db = new Database(':memory:')
  migrate(
    db,
    migrations.filter(({ version }) => version < 70),
  )
  db.prepare(`INSERT INTO batch VALUES ('b1', 'Damson', '#4a2545', '', ?)`).run(at)
  return db
}

describe('migration 70', () => {
  it('leaves an older book as it was, with room for what is put off and published', () => {
    const db = olderBook()
    migrate(db)
    expect(db.prepare('SELECT name FROM batch').pluck().all()).toEqual(['Damson'])
    expect(allPutOff(db)).toEqual(new Map())
    expect(allPublished(db)).toEqual([])
    expect(feedSecret(db)).toBeUndefined()
  })
})

describe('what was put off', () => {
  it('is the last day said, and told what it was before', () => {
    const db = olderBook()
    migrate(db)
    expect(putOff(db, 'b1.filter.1', '2026-12-01', at)).toBeNull()
    expect(putOff(db, 'b1.filter.1', '2026-12-05', at)).toBe('2026-12-01')
    expect(allPutOff(db)).toEqual(new Map([['b1.filter.1', '2026-12-05']]))
    expect(putOff(db, 'b1.filter.1', null, at)).toBe('2026-12-05')
    expect(allPutOff(db)).toEqual(new Map())
  })
})

describe('reminding', () => {
  it('is first once a day', () => {
    const db = olderBook()
    migrate(db)
    const days = ['2026-11-25', '2026-11-25', '2026-11-26', '2026-11-26']
    expect(days.map((day) => remindedFirst(db, day))).toEqual([true, false, true, false])
  })
})

describe('what was published', () => {
  it('is kept as it was told last', () => {
    const db = olderBook()
    migrate(db)
    const row = { uid: 'u', entry: '{"a":1}', sequence: 0, isCancelled: false, changedAt: at }
    putPublished(db, [row])
    const newer = { ...row, entry: '{"a":2}', sequence: 1, isCancelled: true }
    putPublished(db, [newer])
    expect(allPublished(db)).toEqual([newer])
  })

  it('has one secret at most', () => {
    const db = olderBook()
    migrate(db)
    setFeedSecret(db, 'first')
    setFeedSecret(db, 'second')
    expect(feedSecret(db)).toBe('second')
    setFeedSecret(db, null)
    expect(feedSecret(db)).toBeUndefined()
  })
})
