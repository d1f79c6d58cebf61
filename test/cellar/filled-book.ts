/** A book with moves in it, written row by row, for tests of its file. */
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { putBatch } from '../../main/cellar/batch-store.ts'
import { putJar } from '../../main/cellar/jar-store.ts'
import { addGroup } from '../../main/cellar/move-store.ts'
import { closeBook, openBook, type Book } from '../../main/cellar/open-book.ts'
import type { Move } from '../../shared/schemas/moves.ts'

export const newBookFile = (): string =>
  join(mkdtempSync(join(tmpdir(), 'kept-')), 'cellar.ratafia')

export const water = (volumeMl: number, at = '2026-02-01T10:00:00Z'): Move => ({
  at,
  kind: 'pourWater',
  batchId: 'plum',
  jarId: 'jar',
  volumeMl,
})

export function addWater(book: Book, id: string, volumeMl: number): void {
  const rows = [{ id, version: 1, move: water(volumeMl) }]
  book
    .transaction(() =>
      addGroup(book, {
        id: `g-${id}`,
        requestKey: `k-${id}`,
        recordedAt: '2026-02-01T10:00:00Z',
        rows,
      }),
    )
    .immediate()
}

/** Closed again. Each remark makes the file longer, so that there are pages to lose. */
export function filledBook({ moves = 5, remarks = 0 } = {}): string {
  const file = newBookFile()
  const book = openBook(file)
  putJar(book, { id: 'jar', name: 'Jar', shape: 'jar', capacityMl: 9000, isRetired: false })
  putBatch(book, {
    id: 'plum',
    name: 'Plum',
    colour: '#7a1f3d',
    note: 'from the wall',
    openedAt: '2026-01-01T00:00:00Z',
  })
  for (let index = 1; index <= moves; index += 1) addWater(book, `m${index}`, 100 + index)
  book.transaction(() => addRemarks(book, remarks)).immediate()
  closeBook(book)
  return file
}

function addRemarks(book: Book, remarks: number): void {
  const at = '2026-03-01T10:00:00Z'
  for (let index = 1; index <= remarks; index += 1) {
    const note = `remark ${index} `.repeat(20)
    const move: Move = { at, kind: 'remark', batchId: 'plum', note }
    const rows = [{ id: `r${index}`, version: 1, move }]
    addGroup(book, { id: `gr${index}`, requestKey: `kr${index}`, recordedAt: at, rows })
  }
}
