import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { putBatch } from '../../main/cellar/batch-store.ts'
import {
  addGroup,
  currentMoves,
  firstRecording,
  lastGroup,
  rowsBefore,
  versionsOfMove,
} from '../../main/cellar/move-store.ts'
import { closeBook, openBook, type Book } from '../../main/cellar/open-book.ts'
import type { Move } from '../../shared/schemas/moves.ts'

let book: Book
beforeEach(() => {
  book = openBook(join(mkdtempSync(join(tmpdir(), 'moves-')), 'cellar.ratafia'))
  for (const id of ['plum', 'sloe'])
    putBatch(book, { id, name: id, colour: '#7a1f3d', note: '', openedAt: '2026-01-01T00:00:00Z' })
})
afterEach(() => closeBook(book))

const water = (volumeMl: number, batchId = 'plum'): Move => ({
  at: '2026-02-01T10:00:00Z',
  kind: 'pourWater',
  batchId,
  jarId: 'jar',
  volumeMl,
})

const add = (id: string, version: number, move: Move | null, undoes?: string) => {
  const recordedAt = '2026-02-01T10:00:00Z'
  const group = `${id}-${version}`
  return addGroup(book, {
    id: group,
    requestKey: `key-${group}`,
    recordedAt,
    rows: [{ id, version, move }],
    ...(undoes !== undefined && { undoes }),
  })
}

describe('the ledger', () => {
  it('only ever grows: rows can be neither changed nor deleted', () => {
    add('m1', 1, water(500))
    expect(() => book.exec("UPDATE move SET payload = NULL WHERE id = 'm1'")).toThrow(
      /only ever added/,
    )
    expect(() => book.exec("DELETE FROM move WHERE id = 'm1'")).toThrow(/only ever added/)
    expect(currentMoves(book)).toHaveLength(1)
  })

  it('shows the newest version of a move in the place of its first recording', () => {
    add('m1', 1, water(500))
    add('m2', 1, water(100))
    add('m1', 2, water(450))
    const [first, second] = currentMoves(book)
    expect(first).toMatchObject({ id: 'm1', seq: 1, version: 2, move: { volumeMl: 450 } })
    expect(second).toMatchObject({ id: 'm2', seq: 2, version: 1 })
  })

  it('hides a struck move and keeps its versions', () => {
    add('m1', 1, water(500))
    add('m1', 2, null)
    expect(currentMoves(book)).toEqual([])
    expect(versionsOfMove(book, 'm1').map(({ move }) => move?.kind ?? 'struck')).toEqual([
      'pourWater',
      'struck',
    ])
    expect(firstRecording(book, 'm1')).toMatchObject({ id: 'm1', seq: 1, groupId: 'm1-1' })
  })

  it('refuses a move of a batch that is not there', () => {
    expect(() => add('m1', 1, water(500, 'nowhere'))).toThrow(/FOREIGN KEY/)
  })

  it('refuses the same version twice', () => {
    add('m1', 1, water(500))
    expect(() =>
      addGroup(book, {
        id: 'again',
        requestKey: 'again',
        recordedAt: '2026-02-01T10:00:00Z',
        rows: [{ id: 'm1', version: 1, move: water(1) }],
      }),
    ).toThrow(/UNIQUE/)
  })
})

describe('lastGroup', () => {
  it('is the newest group that was not taken back', () => {
    add('m1', 1, water(500))
    add('m2', 1, water(100))
    expect(lastGroup(book, undefined)).toBe('m2-1')
    add('m2', 2, null, 'm2-1')
    expect(lastGroup(book, undefined)).toBe('m1-1')
    add('m1', 2, null, 'm1-1')
    expect(lastGroup(book, undefined)).toBeUndefined()
  })

  it('is what was put back, once an undo was taken back itself', () => {
    add('m1', 1, water(500))
    add('m1', 2, null, 'm1-1')
    add('m1', 3, water(500), 'm1-2')
    expect(lastGroup(book, undefined)).toBe('m1-3')
    add('m1', 4, null, 'm1-3')
    expect(lastGroup(book, undefined)).toBeUndefined()
    add('m1', 5, water(500), 'm1-4')
    expect(lastGroup(book, undefined)).toBe('m1-5')
  })

  it('looks at one batch alone when asked', () => {
    add('m1', 1, water(500, 'plum'))
    add('m2', 1, water(100, 'sloe'))
    expect(lastGroup(book, { batchId: 'plum', moveIds: [] })).toBe('m1-1')
    expect(lastGroup(book, { batchId: 'sloe', moveIds: [] })).toBe('m2-1')
  })

  it('finds a move that names no batch among those known to concern it', () => {
    add('m1', 1, water(500, 'plum'))
    const draw = { at: '2026-11-02T10:00:00Z', kind: 'drawBottle', bottleLotId: 'lot', count: 1 }
    add('m2', 1, draw as Move)
    expect(lastGroup(book, { batchId: 'plum', moveIds: ['m1', 'm2'] })).toBe('m2-1')
    expect(lastGroup(book, { batchId: 'plum', moveIds: ['m1'] })).toBe('m1-1')
  })

  it('finds a strike by the batch that the move was of', () => {
    add('m1', 1, water(500, 'plum'))
    add('m2', 1, water(100, 'sloe'))
    add('m1', 2, null)
    expect(lastGroup(book, { batchId: 'plum', moveIds: [] })).toBe('m1-2')
  })
})

describe('rowsBefore', () => {
  it('strikes what the group recorded and gives back what it amended', () => {
    add('m1', 1, water(500))
    expect(rowsBefore(book, 'm1-1')).toEqual([{ id: 'm1', version: 2, move: null }])
    add('m1', 2, water(450))
    expect(rowsBefore(book, 'm1-2')).toEqual([{ id: 'm1', version: 3, move: water(500) }])
  })
})
