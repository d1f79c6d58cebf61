/** Books that cannot be opened: what is said, that nothing is harmed, and the ways on. */
import { randomUUID } from 'node:crypto'
import { existsSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it, vi } from 'vitest'
import { BookError } from '../../main/cellar/book-error.ts'
import { filledBook } from '../cellar/filled-book.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

const pageBytes = 4096

/** Destroys pages from one on, as a failing disk does. */
function withPagesLost(file: string, from: number, count: number): Buffer {
  const bytes = readFileSync(file)
  bytes.fill(0xa5, from * pageBytes, (from + count) * pageBytes)
  writeFileSync(file, bytes)
  return bytes
}

async function salvaged({ ask }: Trial) {
  await ask('rescue.salvage', { jobId: 'salvage' })
  return vi.waitUntil(
    async () => {
      const job = await ask('backups.job', { jobId: 'salvage' })
      if (job.state === 'running') return undefined
      if (!job.salvage) throw new Error(`not salvaged: ${JSON.stringify(job)}`)
      return job.salvage
    },
    { timeout: 50_000, interval: 20 },
  )
}

describe('a damaged book', () => {
  it('keeps every screen shut but the one that rescues it', async () => {
    const ownFile = filledBook({ remarks: 400 })
    const damaged = withPagesLost(ownFile, 20, 40)
    const hurt = await trial({ ownFile })
    for (const channel of ['cellar.status', 'batches.list', 'jars.list', 'backups.state'] as const)
      expect(await hurt.refusal(channel, {})).toMatchObject({ code: 'bookDamaged' })
    expect(await hurt.ask('rescue.state', {})).toMatchObject({
      file: ownFile,
      trouble: 'damaged',
      folder: join(dirname(ownFile), 'backups'),
    })
    expect((await hurt.ask('backups.list', {})).backups).toEqual([])
    hurt.service.close()
    expect(readFileSync(ownFile).equals(damaged)).toBe(true)
  })

  it('is read as far as can be, with a list of what is lost, and goes on with the rest', async () => {
    const ownFile = filledBook({ moves: 5, remarks: 400 })
    // In the midst of the ledger's own pages.
    const damaged = withPagesLost(ownFile, 60, 3)
    const hurt = await trial({ ownFile })
    const report = await salvaged(hurt)
    expect(readFileSync(ownFile).equals(damaged)).toBe(true)
    expect(report.movesRead + report.lostCount).toBe(405)
    expect(report.lostCount).toBeGreaterThan(3)
    expect(report.lostCount).toBeLessThan(200)
    expect(report.tables.find(({ table }) => table === 'batch')).toMatchObject({ rows: 1 })
    const { asideFile } = await hurt.ask('rescue.accept', { jobId: 'salvage' })
    expect(readFileSync(asideFile).equals(damaged)).toBe(true)
    expect(await hurt.ask('cellar.check', {})).toEqual({
      integrity: 'ok',
      moveCount: report.movesRead,
      lotsDiffering: [],
      bottleLotsDiffering: [],
      refusedMoves: [],
    })
    expect(await hurt.ask('rescue.state', {})).toBeNull()
    expect(existsSync(`${ownFile}.salvaged`)).toBe(false)
    hurt.service.close()
  })

  it('whose first page is gone is known by its backups, and is gone back from', async () => {
    const kept = await trial({ ownFile: filledBook({ moves: 4 }) })
    const { ownFile } = kept.options
    await kept.ask('backups.start', { jobId: 'b' })
    const made = await vi.waitUntil(
      async () => (await kept.ask('backups.job', { jobId: 'b' })).backup,
      { timeout: 50_000, interval: 20 },
    )
    kept.service.close()
    const damaged = withPagesLost(ownFile, 0, 1)
    const hurt = await trial({ ownFile })
    expect(await hurt.ask('rescue.state', {})).toMatchObject({
      trouble: 'damaged',
      message: 'the beginning of this file is destroyed',
    })
    expect(await salvaged(hurt)).toMatchObject({ movesRead: 0, counts: { moves: 0 } })
    const { asideFile } = await hurt.ask('backups.restore', { file: made.file })
    expect(readFileSync(asideFile ?? '').equals(damaged)).toBe(true)
    expect(await hurt.ask('cellar.check', {})).toMatchObject({ moveCount: 4, integrity: 'ok' })
    hurt.service.close()
  })

  it('with a move that is no move any more is damaged too', async () => {
    const ownFile = filledBook({ moves: 3 })
    const db = new Database(ownFile)
    db.exec('DROP TRIGGER move_is_never_changed')
    db.exec(`UPDATE move SET payload = '{"kind":"pourWater"}' WHERE id = 'm2'`)
    db.close()
    const hurt = await trial({ ownFile })
    expect(await hurt.refusal('cellar.status', {})).toMatchObject({ code: 'bookDamaged' })
    const report = await salvaged(hurt)
    expect(report).toMatchObject({
      movesRead: 2,
      lostMoves: [{ seq: 2, why: 'unreadable', after: '2026-02-01T10:00:00Z' }],
    })
    hurt.service.close()
  })

  it('is written to again, although some moves can no longer be', async () => {
    const first = await trial()
    const { ownFile } = first.options
    await withPantry(first)
    const inJar = { batchId: 'damson', jarId: 'north' }
    const at = '2026-09-02T08:00:00Z'
    const charge = {
      ...inJar,
      at,
      kind: 'charge',
      lotId: 'damsons',
      massG: 900,
      cut: 'whole',
    } as const
    await first.ask('moves.record', { key: 'charge', moves: [charge] })
    first.service.close()
    const db = new Database(ownFile)
    db.exec('DROP TRIGGER move_is_never_changed')
    db.exec(
      "UPDATE move SET payload = '{}' WHERE payload ->> '$.lotId' = 'damsons' AND kind = 'buy'",
    )
    db.close()
    const hurt = await trial({ ownFile, newId: () => randomUUID() })
    expect(await salvaged(hurt)).toMatchObject({
      lostCount: 1,
      refusedCount: 1,
      refusedMoves: [{ move: { kind: 'charge' }, batchName: 'Damson' }],
    })
    await hurt.ask('rescue.accept', { jobId: 'salvage' })
    const pour = { ...inJar, at, kind: 'pourSpirit', lotId: 'spirit', volumeMl: 500 } as const
    await hurt.ask('moves.record', { key: 'spirit', moves: [pour] })
    expect(await hurt.ask('cellar.check', {})).toMatchObject({
      integrity: 'ok',
      refusedMoves: { length: 1 },
    })
    // The lost purchase entered again, the charge can be once more.
    const goods = { kind: 'fruit', fruitId: 'damson' } as const
    const again = {
      at: '2026-09-01T08:00:00Z',
      kind: 'buy',
      lotId: 'damsons',
      goods,
      massG: 3000,
    } as const
    await hurt.ask('moves.record', { key: 'again', moves: [again] })
    expect(await hurt.ask('cellar.check', {})).toMatchObject({ refusedMoves: [] })
    hurt.service.close()
  })

  it('is not rescued where there is nothing to rescue', async () => {
    const sound = await trial()
    expect(await sound.ask('rescue.state', {})).toBeNull()
    for (const channel of ['rescue.salvage', 'rescue.accept'] as const)
      expect(await sound.refusal(channel, { jobId: 'x' })).toMatchObject({ code: 'notFound' })
    expect(await sound.refusal('rescue.beginAnew', {})).toMatchObject({ code: 'notFound' })
    sound.service.close()
  })
})

describe('an empty file where the book should be', () => {
  it('is never taken for a new book; one is begun when asked, and the file kept', async () => {
    const ownFile = filledBook()
    truncateSync(ownFile, 0)
    const hurt = await trial({ ownFile })
    expect(await hurt.ask('rescue.state', {})).toMatchObject({ trouble: 'empty' })
    expect(readFileSync(ownFile)).toHaveLength(0)
    const { asideFile } = await hurt.ask('rescue.beginAnew', {})
    expect(readFileSync(asideFile)).toHaveLength(0)
    expect(await hurt.ask('cellar.status', {})).toMatchObject({ isEmpty: true })
    hurt.service.close()
  })

  it('is told from a book that went away without its log', async () => {
    const ownFile = filledBook()
    writeFileSync(`${ownFile}-wal`, 'the last moves')
    rmSync(ownFile)
    const hurt = await trial({ ownFile })
    expect(await hurt.refusal('cellar.status', {})).toMatchObject({
      code: 'bookDamaged',
      message: 'the book is gone, but the log of its last moves is here',
    })
    expect(readFileSync(`${ownFile}-wal`, 'utf8')).toBe('the last moves')
    hurt.service.close()
  })
})

describe('a file that is not for this program', () => {
  it.each([
    [
      'of a newer version',
      'bookNewer',
      (file: string) => {
        const db = new Database(file)
        db.pragma('user_version = 99990')
        db.pragma('journal_mode = DELETE')
        db.close()
      },
    ],
    ['that is something else', 'bookForeign', (file: string) => writeFileSync(file, 'a photo')],
  ])('%s stops the start, and stays as it was', async (_what, kind, change) => {
    const ownFile = filledBook()
    change(ownFile)
    const before = readFileSync(ownFile)
    const error: unknown = await trial({ ownFile }).catch((thrown: unknown) => thrown)
    expect(error).toBeInstanceOf(BookError)
    expect(error).toMatchObject({ kind })
    expect(readFileSync(ownFile).equals(before)).toBe(true)
  })

  it('does not open a book that another program has open', async () => {
    const first = await trial({ ownFile: filledBook() })
    await expect(trial({ ownFile: first.options.ownFile })).rejects.toMatchObject({
      kind: 'bookBusy',
    })
    expect(await first.ask('cellar.check', {})).toMatchObject({ moveCount: 5 })
    first.service.close()
  })
})
