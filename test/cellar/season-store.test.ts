import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { migrate } from '../../main/cellar/migrate.ts'
import { migrations } from '../../main/cellar/migrations.ts'
import { purchaseTicks, putTick, removeTick } from '../../main/cellar/purchase-store.ts'
import {
  keepRegion,
  keepWishes,
  keptSeasonPlans,
  newestSeasonPlan,
  seasonRegion,
  seasonWishes,
} from '../../main/cellar/season-store.ts'
import { plainWishes } from '../engine/season/season-cellar.ts'

const at = '2026-11-25T12:00:00.000Z'

/** A book of the schema before seasons, with a batch in it. */
function olderBook() {
  const db = new Database(':memory:')
  db.pragma('foreign_keys = ON')
  migrate(
    db,
    migrations.filter(({ version }) => version < 60),
  )
  db.prepare(`INSERT INTO batch VALUES ('b1', 'Damson', '#4a2545', '', ?)`).run(at)
  return db
}

describe('the step that brings seasons', () => {
  it('leaves an older book as it was, with room for them', () => {
    const db = olderBook()
    migrate(db)
    expect(db.prepare('SELECT name FROM batch').pluck().all()).toEqual(['Damson'])
    expect(seasonRegion(db)).toEqual({ zone: 'northTemperate', ownShiftWeeks: 0 })
    expect(seasonWishes(db)).toBeUndefined()
    expect([keptSeasonPlans(db), newestSeasonPlan(db)]).toEqual([[], undefined])
  })

  it('keeps one region, one set of wishes, and one tick a line', () => {
    const db = olderBook()
    migrate(db)
    keepRegion(db, { zone: 'mediterranean', ownShiftWeeks: -1 })
    keepRegion(db, { zone: 'mediterranean', ownShiftWeeks: 2 })
    keepWishes(db, plainWishes)
    keepWishes(db, { ...plainWishes, reserveMonths: 3 })
    expect(seasonRegion(db).ownShiftWeeks).toBe(2)
    expect(seasonWishes(db)).toEqual({ ...plainWishes, reserveMonths: 3 })
    const line = { lineKey: 'cork@2027-08-02', moveId: undefined, at }
    putTick(db, { ...line, count: 5 })
    putTick(db, { ...line, count: 6, priceMinor: 120 })
    expect(purchaseTicks(db).get(line.lineKey)).toEqual({ ...line, count: 6, priceMinor: 120 })
    removeTick(db, line.lineKey)
    expect(purchaseTicks(db).size).toBe(0)
  })
})
