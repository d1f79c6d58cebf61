import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { allBatches, openBatchWithMoves, putBatch } from '../../main/cellar/batch-store.ts'
import { migrate } from '../../main/cellar/migrate.ts'
import { migrations } from '../../main/cellar/migrations.ts'
import { addGroup } from '../../main/cellar/move-store.ts'

const at = '2026-11-25T12:00:00.000Z'
const batch = (id: string) => ({ id, name: id, colour: '#4a2545', note: '', openedAt: at })
const names = (db: Database.Database) => allBatches(db).map(({ name }) => name)

describe('migration 82', () => {
  it('leaves the batches of an older book in sight, with moves or without', () => {
    const db = new Database(':memory:')
    migrate(
      db,
      migrations.filter(({ version }) => version < 82),
    )
    db.prepare(`INSERT INTO batch VALUES ('b1', 'Damson', '#4a2545', '', ?)`).run(at)
    migrate(db)
    expect(names(db)).toEqual(['Damson'])
  })
})

describe('a batch that came with its moves', () => {
  it('is there while one of them stands', () => {
    const db = new Database(':memory:')
    migrate(db)
    putBatch(db, batch('own'))
    openBatchWithMoves(db, batch('brought'))
    expect(names(db)).toEqual(['own'])
    const move = { kind: 'remark', at, batchId: 'brought', note: 'Old' } as const
    const group = (id: string, version: number, stands: boolean) =>
      addGroup(db, {
        id,
        requestKey: id,
        recordedAt: at,
        rows: [{ id: 'm', version, move: stands ? move : null }],
      })
    group('in', 1, true)
    expect(names(db)).toEqual(['own', 'brought'])
    group('out', 2, false)
    expect(names(db)).toEqual(['own'])
  })
})
