import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { unzipSync, zipSync } from 'fflate'
import papa from 'papaparse'
import { afterAll, describe, expect, it, vi } from 'vitest'
import type { SafekeepingJob } from '../../shared/schemas/safekeeping.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

async function ended({ ask }: Trial, jobId: string): Promise<SafekeepingJob> {
  await vi.waitUntil(async () => (await ask('backups.job', { jobId })).state !== 'running', {
    timeout: 30_000,
    interval: 50,
  })
  return ask('backups.job', { jobId })
}

async function exported(t: Trial): Promise<string> {
  await t.ask('exports.start', { jobId: 'out' })
  const { exported: made } = await ended(t, 'out')
  if (!made) throw new Error('nothing was exported')
  return made.file
}

const filled = async (): Promise<Trial> => {
  const t = await trial()
  await withPantry(t)
  const at = '2026-09-02T08:00:00Z'
  const jar = { batchId: 'damson', jarId: 'north' }
  await t.ask('moves.record', {
    key: 'fill',
    moves: [
      { at, kind: 'charge', ...jar, lotId: 'damsons', massG: 1000, cut: 'whole' },
      { at, kind: 'pourSpirit', ...jar, lotId: 'spirit', volumeMl: 1000 / 3, note: '=1+1' },
      {
        at,
        kind: 'read',
        ...jar,
        reading: { instrument: 'refractometer', brix: -0.5, temperatureC: 20 },
      },
      { at, kind: 'taste', ...jar, scores: { heat: 9 }, note: '  @SUM(A1)' },
    ],
  })
  await t.ask('batches.open', {
    id: 'odd',
    name: `=HYPERLINK("http://x","y")`,
    colour: '#4a2545',
    note: '-2+3\n+cmd|',
    openedAt: at,
  })
  return t
}

/** What screens show of a cellar. */
const told = async ({ ask }: Trial) => [
  await ask('batches.list', {}),
  await ask('batches.page', { batchId: 'damson' }),
  await ask('jars.list', {}),
  await ask('pantry.list', {}),
  await ask('cellar.balance', {}),
]

const from = await filled()
const file = await exported(from)
afterAll(() => from.service.close())

describe('exports', () => {
  it('bring the cellar into another book, and keep that one aside', async () => {
    const to = await trial()
    await to.ask('jars.add', {
      jars: [{ id: 'mine', name: 'Mine', shape: 'jar', capacityMl: 4000, isRetired: false }],
    })
    await to.ask('exports.look', { jobId: 'look', file })
    const { importPreview } = await ended(to, 'look')
    expect(importPreview).toMatchObject({
      there: { counts: { moves: 7, jars: 3, batches: 2 } },
      here: { counts: { moves: 0, jars: 1 } },
      onlyThere: { count: 7 },
    })
    const { asideFile } = await to.ask('exports.import', { file })
    expect(existsSync(asideFile ?? '')).toBe(true)
    expect(await told(to)).toEqual(await told(from))
    expect(await to.ask('cellar.check', {})).toMatchObject({
      integrity: 'ok',
      moveCount: 7,
      lotsDiffering: [],
      bottleLotsDiffering: [],
    })
    // No backup that there was is of this book.
    expect((await to.ask('backups.state', {})).lastMade).toBeNull()
    to.service.close()
  })

  it('have tables with units in their heads, and no cell that runs', () => {
    const entries = unzipSync(readFileSync(file))
    const tables = Object.entries(entries).filter(([name]) => name.startsWith('tables/'))
    expect(tables.map(([name]) => name)).toEqual(
      ['batches', 'vessels', 'pantry', 'bottles', 'moves', 'readings', 'tastings'].map(
        (name) => `tables/${name}.csv`,
      ),
    )
    const rowsOf = (bytes: Uint8Array) =>
      papa.parse<string[]>(Buffer.from(bytes).toString('utf8').slice(1), { skipEmptyLines: true })
        .data
    const cells = tables.flatMap(([, bytes]) => rowsOf(bytes).flat())
    expect(
      cells.filter((cell) => /^[\s\u00a0]*[=+\-@]/.test(cell) && Number.isNaN(Number(cell))),
    ).toEqual([])
    expect(cells).toContain(`'=HYPERLINK("http://x","y")`)
    expect(cells).toContain(`'-2+3\n+cmd|`)
    expect(cells).toContain(`'  @SUM(A1)`)
    const [head = [], ...rows] = rowsOf(entries['tables/moves.csv'] ?? new Uint8Array())
    expect(head).toContain('Volume (mL)')
    expect(rows.map((row) => row[head.indexOf('What')])).toEqual([
      'Bought',
      'Bought',
      'Bought',
      'Charged fruit',
      'Poured spirit',
      'Took a reading',
      'Tasted',
    ])
    expect(rows[0]?.[head.indexOf('Price (EUR)')]).toBe('12')
    expect(rows[4]?.[head.indexOf('Volume (mL)')]).toBe(String(1000 / 3))
    const readings = rowsOf(entries['tables/readings.csv'] ?? new Uint8Array())
    expect(readings[1]?.[readings[0]?.indexOf('Read (Brix)') ?? -1]).toBe('-0.5')
  })

  it('that were tampered with leave everything as it was', async () => {
    const entries = unzipSync(readFileSync(file))
    const bad = join(mkdtempSync(join(tmpdir(), 'bad-')), 'bad.cellar.zip')
    writeFileSync(bad, zipSync({ ...entries, '../up': new Uint8Array() }))
    const filesBeside = () =>
      readdirSync(dirname(from.options.ownFile))
        .filter((name) => !name.includes('.at-work-'))
        .sort()
    const before = [await told(from), filesBeside()]
    await from.ask('exports.look', { jobId: 'look', file: bad })
    const looked = await ended(from, 'look')
    expect(looked).toMatchObject({ state: 'failed', exportProblem: 'unsafeNames' })
    expect(await from.refusal('exports.import', { file: bad })).toMatchObject({
      code: 'backupFailed',
      details: { exportProblem: 'unsafeNames' },
    })
    expect([await told(from), filesBeside()]).toEqual(before)
    expect(await from.ask('exports.list', { folder: dirname(bad) })).toMatchObject({
      exports: [{ problem: 'unsafeNames', manifest: null }],
    })
  })

  it('hold one instant still while the book is written to', async () => {
    const t = await filled()
    await t.ask('exports.start', { jobId: 'out' })
    for (let index = 0; index < 5; index += 1)
      await t.ask('moves.record', {
        key: `more${index}`,
        moves: [{ at: '2026-09-03T08:00:00Z', kind: 'stir', batchId: 'damson', jarId: 'north' }],
      })
    const { state, exported: made } = await ended(t, 'out')
    expect(state).toBe('done')
    expect(made?.manifest?.counts.moves).toBeGreaterThanOrEqual(7)
    t.service.close()
  })

  it('that are stopped, or have nowhere to go, leave nothing behind', async () => {
    const t = await filled()
    await t.ask('exports.start', { jobId: 'out' })
    expect(await t.ask('backups.cancel', { jobId: 'out' })).toMatchObject({ state: 'cancelled' })
    await t.ask('exports.start', { jobId: 'gone', folder: '/nowhere/at/all' })
    expect(await ended(t, 'gone')).toMatchObject({ state: 'failed', failure: 'folderGone' })
    expect((await t.refusal('exports.list', { folder: 'here' })).code).toBe('badInput')
    const folder = dirname(t.options.ownFile)
    await vi.waitFor(() =>
      expect(
        readdirSync(folder, { recursive: true }).filter((name) => /zip|work/.test(String(name))),
      ).toEqual([]),
    )
    t.service.close()
  })

  it('are not taken for backups, nor backups for exports', async () => {
    const folder = dirname(file)
    copyFileSync(file, join(folder, 'a.ratafia.zip'))
    const { backups } = await from.ask('backups.list', { folder })
    expect(backups).toMatchObject([{ problem: 'notABackup' }])
    expect((await from.ask('exports.list', {})).exports).toMatchObject([{ file, problem: null }])
  })
})
