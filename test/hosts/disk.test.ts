/** Disks that are full, locked or gone: what is said, and that nothing acknowledged is lost. */
import { mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { BookError } from '../../main/cellar/book-error.ts'
import { closeBook, integrityOf, openBook } from '../../main/cellar/open-book.ts'
import { StartProblem, startProblemOf } from '../../main/hosts/start-problem.ts'
import { addWater, filledBook } from '../cellar/filled-book.ts'
import { trial, withPantry, type Trial } from '../service/with-service.ts'
import { hasSmallDisks, smallDisk, type SmallDisk } from './small-disk.ts'

const remark = (index: number) => ({
  key: `remark-${index}`,
  moves: [
    {
      at: '2026-09-02T08:00:00Z',
      kind: 'remark' as const,
      batchId: 'damson',
      note: 'stands well '.repeat(300),
    },
  ],
})

const ended = ({ ask }: Trial, jobId: string) =>
  vi.waitUntil(
    async () => {
      const job = await ask('backups.job', { jobId })
      return job.state === 'running' ? undefined : job
    },
    { timeout: 50_000, interval: 20 },
  )

describe('a book that may not grow', () => {
  it('refuses the move that does not fit, whole, and keeps all before it', () => {
    const file = filledBook({ moves: 3 })
    const book = openBook(file)
    const pages = book.pragma('page_count', { simple: true }) as number
    book.pragma(`max_page_count = ${pages}`)
    let written = 0
    const fill = () => {
      for (;;) {
        addWater(book, `more-${written}`, 10)
        written += 1
      }
    }
    expect(fill).toThrow(expect.objectContaining({ code: 'SQLITE_FULL' }))
    book.pragma('max_page_count = 1000000')
    expect(integrityOf(book)).toBe('ok')
    const count = (table: string) =>
      book.prepare(`SELECT count(*) FROM ${table}`).pluck().get() as number
    expect(count('move')).toBe(3 + written)
    expect(count('move_group')).toBe(3 + written)
    addWater(book, 'room again', 10)
    closeBook(book)
  })
})

describe.skipIf(!hasSmallDisks())('on a small disk', () => {
  let disk: SmallDisk
  const noWorkIsLeft = () =>
    vi.waitFor(() =>
      expect(readdirSync(disk.folder).filter((name) => name.includes('at-work'))).toEqual([]),
    )
  beforeEach(() => {
    const made = smallDisk(4)
    if (!made) throw new Error('there was a small disk before')
    disk = made
  })
  afterEach(() => disk.remove())

  const kept = async () => {
    const opened = await trial({ ownFile: join(disk.folder, 'cellar.ratafia') })
    await withPantry(opened)
    return opened
  }

  it('says that it is full, keeps what was acknowledged, and goes on once there is room', async () => {
    const opened = await kept()
    disk.fill(60_000)
    let recorded = 0
    const fill = async () => {
      for (;;) {
        await opened.ask('moves.record', remark(recorded))
        recorded += 1
      }
    }
    await expect(fill()).rejects.toThrow('diskFull')
    expect(await opened.refusal('moves.record', remark(recorded))).toMatchObject({
      code: 'diskFull',
    })
    expect(await opened.ask('cellar.check', {})).toMatchObject({
      integrity: 'ok',
      moveCount: 3 + recorded,
    })
    disk.makeRoom()
    await opened.ask('moves.record', remark(recorded))
    opened.service.close()
    const again = await trial({ ownFile: opened.options.ownFile })
    expect(await again.ask('cellar.check', {})).toMatchObject({ moveCount: 4 + recorded })
    again.service.close()
  })

  it('makes no half backup when it is full, and tells of it', async () => {
    const opened = await kept()
    disk.fill(20_000)
    await opened.ask('backups.start', { jobId: 'full' })
    expect(await ended(opened, 'full')).toMatchObject({ state: 'failed', failure: 'diskFull' })
    await noWorkIsLeft()
    expect((await opened.ask('backups.list', {})).backups).toEqual([])
    disk.makeRoom()
    await opened.ask('backups.start', { jobId: 'room' })
    expect(await ended(opened, 'room')).toMatchObject({ state: 'done' })
    opened.service.close()
  })

  it('does not go back to a backup for which there is no room, and keeps the book', async () => {
    const opened = await kept()
    await opened.ask('backups.start', { jobId: 'b' })
    const file = (await ended(opened, 'b')).backup?.file ?? ''
    // What the backup's work leaves behind would be room again.
    await noWorkIsLeft()
    disk.fill(20_000)
    expect(await opened.refusal('backups.restore', { file })).toMatchObject({
      code: 'backupFailed',
      details: { failure: 'diskFull' },
    })
    expect(await opened.ask('cellar.check', {})).toMatchObject({ moveCount: 3, integrity: 'ok' })
    expect(readdirSync(disk.folder).filter((name) => name.includes('restoring'))).toEqual([])
    opened.service.close()
  })

  it('stops at the start with what to do, where nothing may be written', async () => {
    const opened = await kept()
    opened.service.close()
    const { ownFile } = opened.options
    const before = readFileSync(ownFile)
    disk.setReadOnly(true)
    const error: unknown = await trial({ ownFile }).catch((thrown: unknown) => thrown)
    disk.setReadOnly(false)
    expect(error).toBeInstanceOf(BookError)
    expect(error).toMatchObject({ kind: 'bookReadOnly' })
    const problem = startProblemOf(error, ownFile)
    expect(problem).toBeInstanceOf(StartProblem)
    expect(problem?.code).toBe('bookReadOnly')
    expect(readFileSync(ownFile).equals(before)).toBe(true)
  })

  it('tells of a backup folder that may not be written to', async () => {
    const opened = await trial()
    await withPantry(opened)
    const folder = join(disk.folder, 'backups')
    await opened.ask('backups.change', { folder })
    disk.setReadOnly(true)
    await opened.ask('backups.start', { jobId: 'locked' })
    expect(await ended(opened, 'locked')).toMatchObject({ failure: 'folderReadOnly' })
    expect(await opened.refusal('backups.change', { folder: `${folder}/more` })).toMatchObject({
      code: 'backupFailed',
      details: { failure: 'folderReadOnly' },
    })
    disk.setReadOnly(false)
    opened.service.close()
  })
})

describe('a stick that is pulled out', () => {
  it('is told, and the book goes on', async () => {
    const opened = await trial()
    await withPantry(opened)
    const { ownFile } = opened.options
    // Backups go to a stick that is pulled out.
    const stick = join(ownFile, '..', 'stick')
    mkdirSync(stick)
    await opened.ask('backups.change', { folder: stick })
    rmSync(stick, { recursive: true })
    await opened.ask('moves.record', remark(1))
    await opened.ask('backups.start', { jobId: 'gone' })
    expect(await ended(opened, 'gone')).toMatchObject({ failure: 'folderGone' })
    expect(await opened.ask('backups.list', {})).toMatchObject({ failure: 'folderGone' })
    expect(await opened.ask('cellar.check', {})).toMatchObject({ moveCount: 4, integrity: 'ok' })
    opened.service.close()
  })
})
