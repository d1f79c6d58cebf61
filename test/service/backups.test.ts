import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, dirname, join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it, vi } from 'vitest'
import { dueReason, standingOf } from '../../main/service/backup-standing.ts'
import type { SafekeepingJob } from '../../shared/schemas/safekeeping.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

const water = (volumeMl: number) => ({
  key: `water-${volumeMl}`,
  moves: [
    {
      at: '2026-09-02T08:00:00Z',
      kind: 'pourWater' as const,
      batchId: 'damson',
      jarId: 'north',
      volumeMl,
    },
  ],
})

async function ended({ ask }: Trial, jobId: string): Promise<SafekeepingJob> {
  return vi.waitUntil(
    async () => {
      const job = await ask('backups.job', { jobId })
      return job.state === 'running' ? undefined : job
    },
    { timeout: 50_000, interval: 20 },
  )
}

async function backedUp(kept: Trial, jobId = 'backup'): Promise<string> {
  await kept.ask('backups.start', { jobId })
  const { backup, ...job } = await ended(kept, jobId)
  if (!backup) throw new Error(`no backup was made: ${JSON.stringify(job)}`)
  return backup.file
}

describe('backups of the open book', () => {
  it('are made, counted, and told', async () => {
    const kept = await trial()
    await withPantry(kept)
    expect(await kept.ask('backups.state', {})).toMatchObject({
      standing: 'nothingYet',
      isUsualFolder: true,
      lastMade: null,
      unsaved: { rows: 3 },
    })
    const file = await backedUp(kept)
    await kept.ask('moves.record', water(500))
    expect(await kept.ask('backups.state', {})).toMatchObject({
      standing: 'fresh',
      lastMade: { file, lastSeq: 3, madeAt: '2026-11-20T18:00:00.000Z' },
      unsaved: { rows: 1, since: '2026-11-20T18:00:00.000Z' },
    })
    const { backups } = await kept.ask('backups.list', {})
    expect(backups).toMatchObject([{ file, manifest: { counts: { moves: 3, jars: 3 } } }])
    // Nothing but the book and what belongs to it is left beside it.
    const folder = dirname(kept.options.ownFile)
    expect(readdirSync(folder).filter((name) => name.includes('at-work'))).toEqual([])
    kept.service.close()
  })

  it('are missed after two days, and a failed one is told until one is made', async () => {
    const kept = await trial()
    await withPantry(kept)
    kept.setNow('2026-11-23T18:00:00Z')
    expect(await kept.ask('backups.state', {})).toMatchObject({ standing: 'missed' })
    const stick = join(dirname(kept.options.ownFile), 'stick')
    await kept.ask('backups.change', { folder: stick })
    rmSync(stick, { recursive: true })
    await kept.ask('backups.start', { jobId: 'away' })
    expect(await ended(kept, 'away')).toMatchObject({ state: 'failed', failure: 'folderGone' })
    expect(existsSync(stick)).toBe(false)
    expect(await kept.ask('backups.state', {})).toMatchObject({
      standing: 'failed',
      lastFailure: { failure: 'folderGone' },
    })
    mkdirSync(stick)
    expect(dirname(await backedUp(kept, 'again'))).toBe(stick)
    expect(await kept.ask('backups.state', {})).toMatchObject({
      standing: 'fresh',
      lastFailure: null,
    })
    kept.service.close()
  })

  it('are stopped without a trace', async () => {
    const kept = await trial()
    await withPantry(kept)
    await kept.ask('backups.start', { jobId: 'stopped' })
    expect(await kept.ask('backups.cancel', { jobId: 'stopped' })).toMatchObject({
      state: 'cancelled',
    })
    await vi.waitFor(() =>
      expect(
        readdirSync(dirname(kept.options.ownFile)).filter((name) => name.includes('at-work')),
      ).toEqual([]),
    )
    expect((await kept.ask('backups.list', {})).backups).toEqual([])
    expect(await kept.ask('backups.state', {})).toMatchObject({ lastFailure: null, job: null })
    kept.service.close()
  })

  it('are refused for a folder that cannot be, and for the demo', async () => {
    const kept = await trial()
    const file = join(dirname(kept.options.ownFile), 'file')
    writeFileSync(file, '')
    expect(await kept.refusal('backups.change', { folder: join(file, 'x') })).toMatchObject({
      code: 'backupFailed',
      details: { failure: 'folderGone' },
    })
    expect(await kept.refusal('backups.change', { folder: 'not/from/root' })).toMatchObject({
      code: 'badInput',
    })
    await kept.ask('cellar.openDemo', {})
    expect(await kept.refusal('backups.start', { jobId: 'demo' })).toMatchObject({
      code: 'demoOpen',
    })
    expect(await kept.ask('backups.state', {})).toMatchObject({ standing: 'demo' })
    kept.service.close()
  })
})

describe('backups by themselves', () => {
  it('are made a little after the first moves, and again after as many as wished', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval'] })
    const kept = await trial({ backsUp: true })
    await withPantry(kept)
    await kept.ask('backups.change', { schedule: { isOn: true, everyMoves: 2 } })
    const dueNow = async () => {
      await vi.advanceTimersByTimeAsync(20_000)
      return (await kept.ask('backups.state', {})).job
    }
    const first = await dueNow()
    vi.useRealTimers()
    expect(await ended(kept, first?.jobId ?? '')).toMatchObject({
      backup: { manifest: { reason: 'daily' } },
    })

    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval'] })
    let told = 0
    kept.service.onChange(() => (told += 1))
    await kept.ask('moves.record', water(100))
    expect(await dueNow()).toBeNull()
    await kept.ask('moves.record', water(200))
    const second = await dueNow()
    vi.useRealTimers()
    expect(await ended(kept, second?.jobId ?? '')).toMatchObject({
      backup: { manifest: { reason: 'moves', counts: { moves: 5 } } },
    })
    // Two moves, and the backup.
    expect(told).toBe(3)
    kept.service.close()
  })
})

describe('backups.restore', () => {
  it('shows what differs, goes back, and keeps the book of before byte for byte', async () => {
    const kept = await trial()
    await withPantry(kept)
    const file = await backedUp(kept)
    await kept.ask('moves.record', water(500))
    const before = await kept.ask('cellar.balance', {})

    await kept.ask('backups.look', { jobId: 'look', file })
    expect((await ended(kept, 'look')).preview).toMatchObject({
      onlyHere: { count: 1, newest: [{ move: { kind: 'pourWater' } }] },
      onlyThere: { count: 0 },
      isAnotherCellar: false,
    })
    const { asideFile } = await kept.ask('backups.restore', { file })
    expect(await kept.ask('cellar.check', {})).toMatchObject({
      integrity: 'ok',
      moveCount: 3,
      lotsDiffering: [],
    })
    expect(await kept.ask('backups.state', {})).toMatchObject({ unsaved: { rows: 0 } })
    kept.service.close()

    // The book of before is whole, and can be gone back to in turn.
    renameSync(asideFile ?? '', kept.options.ownFile)
    const again = await trial({ ownFile: kept.options.ownFile })
    expect(await again.ask('cellar.balance', {})).toEqual(before)
    again.service.close()
  })

  it('works on another machine, in a cellar that is still empty', async () => {
    const kept = await trial()
    await withPantry(kept)
    const file = await backedUp(kept)
    const balance = await kept.ask('cellar.balance', {})
    kept.service.close()
    const other = await trial()
    const carried = join(mkdtempSync(join(tmpdir(), 'stick-')), basename(file))
    writeFileSync(carried, readFileSync(file))
    const { backups } = await other.ask('backups.list', { folder: dirname(carried) })
    expect(backups).toHaveLength(1)
    await other.ask('backups.restore', { file: carried })
    expect(await other.ask('cellar.balance', {})).toEqual(balance)
    expect(await other.ask('cellar.status', {})).toMatchObject({ isEmpty: false })
    other.service.close()
  })

  it('refuses what does not verify, and leaves the book as it is', async () => {
    const kept = await trial()
    await withPantry(kept)
    const file = await backedUp(kept)
    const bytes = readFileSync(file)
    // One bit may be padding of the packed stream; so many bytes are not.
    bytes.fill(0xa5, 2500, 2564)
    writeFileSync(file, bytes)
    expect(await kept.refusal('backups.restore', { file })).toMatchObject({
      code: 'backupFailed',
      details: { failure: 'notVerified', problem: 'damagedInside' },
    })
    expect(await kept.refusal('backups.restore', { file: `${file}.none` })).toMatchObject({
      code: 'backupFailed',
      details: { failure: 'folderGone' },
    })
    await kept.ask('moves.record', water(700))
    expect(await kept.ask('cellar.check', {})).toMatchObject({ moveCount: 4, integrity: 'ok' })
    const names = readdirSync(dirname(kept.options.ownFile))
    expect(names.filter((name) => /kept|restoring/.test(name))).toEqual([])
    kept.service.close()
  })
})

describe('a book of an older schema', () => {
  it('is backed up as it was before it is brought up to date', async () => {
    const kept = await trial()
    await withPantry(kept)
    kept.service.close()
    const { ownFile } = kept.options
    const db = new Database(ownFile)
    db.exec('DROP TABLE put_off; DROP TABLE calendar_entry; DROP TABLE calendar_feed')
    db.exec('DROP TABLE reminder; DROP TABLE spirit_shut; DROP TABLE batch_with_moves')
    db.pragma('user_version = 60')
    db.close()
    const again = await trial({ ownFile, backsUp: true })
    const { backups } = await again.ask('backups.list', {})
    expect(backups).toMatchObject([
      { manifest: { reason: 'migration', schemaVersion: 60, counts: { moves: 3 } }, problem: null },
    ])
    await again.ask('backups.restore', { file: backups[0]?.file ?? '' })
    expect(await again.ask('cellar.check', {})).toMatchObject({ moveCount: 3 })
    expect(await again.ask('schedule.list', {})).toBeDefined()
    again.service.close()
  })

  it('stays as it is when it cannot be backed up', async () => {
    const kept = await trial()
    await withPantry(kept)
    kept.service.close()
    const { ownFile } = kept.options
    const db = new Database(ownFile)
    db.pragma('user_version = 60')
    db.pragma('journal_mode = DELETE')
    db.close()
    const before = readFileSync(ownFile)
    // A file where the folder should be.
    writeFileSync(join(dirname(ownFile), 'backups'), '')
    await expect(trial({ ownFile, backsUp: true })).rejects.toMatchObject({ code: 'backupFailed' })
    expect(readFileSync(ownFile).equals(before)).toBe(true)
  })
})

describe('when a backup is due', () => {
  const now = Date.parse('2026-11-25T18:00:00Z')
  const hoursAgo = (hours: number) => new Date(now - hours * 3_600_000).toISOString()
  const made = (hours: number) => ({ madeAt: hoursAgo(hours), file: 'f', lastSeq: 1, bytes: 1 })
  const known = {
    schedule: { isOn: true, everyMoves: 10 },
    lastMade: made(5),
    lastFailure: null,
    unsaved: { rows: 3, since: hoursAgo(4) },
  }
  const failure = (hours: number) => ({ at: hoursAgo(hours), failure: 'diskFull' as const })

  it.each([
    ['little is new, and the last one is of today', {}, undefined],
    ['a day has gone by', { lastMade: made(24) }, 'daily'],
    ['as many moves as wished are new', { unsaved: { rows: 10, since: hoursAgo(1) } }, 'moves'],
    ['there never was one', { lastMade: null }, 'daily'],
    ['nothing is new', { lastMade: made(900), unsaved: { rows: 0, since: null } }, undefined],
    [
      'the maker wants none',
      { lastMade: null, schedule: { isOn: false, everyMoves: 1 } },
      undefined,
    ],
    ['the last try failed just now', { lastMade: null, lastFailure: failure(0.5) }, undefined],
    ['the last try failed an hour ago', { lastMade: null, lastFailure: failure(1) }, 'daily'],
  ])('%s', (_what, change, reason) => {
    expect(dueReason({ ...known, ...change }, now)).toBe(reason)
  })

  it.each([
    ['fresh', {}],
    ['fresh', { lastFailure: failure(1), unsaved: { rows: 0, since: null } }],
    ['failed', { lastFailure: failure(1) }],
    ['missed', { unsaved: { rows: 1, since: hoursAgo(49) } }],
    ['nothingYet', { lastMade: null }],
    ['missed', { lastMade: null, unsaved: { rows: 1, since: hoursAgo(49) } }],
    ['off', { schedule: { isOn: false, everyMoves: 10 }, lastFailure: failure(1) }],
  ])('stands as %s', (standing, change) => {
    expect(standingOf({ ...known, ...change }, now)).toBe(standing)
  })
})
