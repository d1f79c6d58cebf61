import { screen, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import type { ExportManifest, ImportPreview } from '../../../shared/schemas/exports.ts'
import type { ExportFolder } from '../../../shared/schemas/safekeeping.ts'
import { refused, type Answers } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'
import { backupJob, backupState, noBackups, preview as backupPreview } from './backups-fixture.ts'

const file = '/home/maker/exports/a.cellar.zip'

const manifest: ExportManifest = {
  format: 'ratafia-cellar',
  version: 1,
  madeAt: '2026-11-24T18:00:00Z',
  programVersion: '0.1.0',
  schemaVersion: 70,
  bookName: 'cellar.ratafia',
  currency: 'EUR',
  counts: backupPreview.there.counts,
  firstMoveId: 'm1',
  lastMove: backupPreview.there.lastMove,
  ledgerDigest: 'b'.repeat(64),
  data: [],
  tables: [],
}

const { manifest: _, ...compared } = backupPreview
const importPreview: ImportPreview = { ...compared, file, manifest }

const twoExports: ExportFolder = {
  folder: '/home/maker/exports',
  failure: null,
  exports: [
    { file, bytes: 240_000, manifest, problem: null },
    { file: '/home/maker/exports/b.cellar.zip', bytes: 9, manifest: null, problem: 'unsafeNames' },
  ],
}

const show = (answers: Answers = {}) =>
  showApp('/safekeeping', {
    'backups.state': backupState(),
    'backups.list': noBackups,
    'exports.list': twoExports,
    ...answers,
  })

const section = async (name: string) => within(await screen.findByRole('region', { name }))
const outName = 'The whole cellar in an open form'
const inName = 'Bring in an exported cellar'

describe('writing the whole cellar out', () => {
  const job = { kind: 'export', jobId: 'job' } as const

  it('goes beside the book, shows how far it is, and says where it is', async () => {
    const { bridge, user } = show({
      'exports.start': ({ jobId }) => backupJob({ ...job, jobId }),
      'backups.job': ({ jobId }) => backupJob({ ...job, jobId }),
    })
    const out = await section(outName)
    await user.click(out.getByRole('button', { name: 'Export the whole cellar' }))
    expect(await out.findByRole('progressbar', { name: 'Exporting the cellar' })).toBeTruthy()
    bridge.answer({
      'backups.job': ({ jobId }) =>
        backupJob({ ...job, jobId, state: 'done', progress: 1, exported: twoExports.exports[0] }),
    })
    expect(await out.findByText(/the same to the last digit: 41 moves, 240.kB/)).toBeTruthy()
    expect(out.getByText(`It is ${file}.`)).toBeTruthy()
    expect(bridge.requests('exports.start')).toEqual([{ jobId: expect.any(String) as string }])
  })

  it('goes to the folder that was named, or says why not', async () => {
    const failed = { ...job, state: 'failed', failure: 'folderGone' } as const
    const { bridge, user } = show({
      'exports.start': ({ jobId }) => backupJob({ ...failed, jobId }),
      'backups.job': ({ jobId }) => backupJob({ ...failed, jobId }),
    })
    const out = await section(outName)
    await user.type(out.getByRole('textbox', { name: /Folder on this machine/ }), '/media/stick')
    await user.click(out.getByRole('button', { name: 'Export the whole cellar' }))
    expect((await out.findByRole('alert')).textContent).toContain('Plug in the stick')
    expect(bridge.requests('exports.start')).toMatchObject([{ folder: '/media/stick' }])
  })
})

describe('bringing an exported cellar in', () => {
  const looked = {
    kind: 'lookIntoExport',
    state: 'done',
    step: 'comparing',
    progress: 1,
    importPreview,
  } as const

  const begun = async (answers: Answers = {}) => {
    const shown = show({
      'exports.look': ({ jobId }) => backupJob({ jobId, ...looked }),
      'backups.job': ({ jobId }) => backupJob({ jobId, ...looked }),
      ...answers,
    })
    const bringIn = await section(inName)
    await shown.user.click(bringIn.getByRole('button', { name: 'Choose an export' }))
    return { ...shown, bringIn }
  }

  it('lists what is there, and what is wrong with what cannot be used', async () => {
    const { bringIn } = await begun()
    const [, sound, hostile] = await bringIn.findAllByRole('row')
    expect(sound?.textContent).toMatch(/24 Nov 2026.*cellar\.ratafia.*41.*240/)
    expect(hostile?.textContent).toContain('Do not use it')
    expect(within(hostile as HTMLElement).queryByRole('button')).toBeNull()
  })

  it('shows what would change before anything happens, then where the book of before is', async () => {
    const { bridge, user, bringIn } = await begun({
      'exports.import': { asideFile: '/home/maker/cellar kept.ratafia', manifest },
    })
    await user.click(await bringIn.findByRole('button', { name: /Look into it: the cellar/ }))
    const shown = within(await screen.findByRole('region', { name: /The cellar exported 24 Nov/ }))
    expect(shown.getByText(/It can be brought in/)).toBeTruthy()
    expect(shown.getByRole('row', { name: /Moves 41 43/ })).toBeTruthy()
    expect(shown.getByText(/2 moves are in the present book only/)).toBeTruthy()
    expect(bridge.requests('exports.import')).toEqual([])
    await user.click(shown.getByRole('button', { name: 'Bring in this cellar' }))
    expect(await screen.findByText(/kept as .*cellar kept\.ratafia/)).toBeTruthy()
    expect(bridge.requests('exports.import')).toEqual([{ file }])
  })

  it('says why a file will not do, looked into or at the last moment', async () => {
    const failed = { kind: 'lookIntoExport', state: 'failed', failure: 'notVerified' } as const
    const { user, bringIn, bridge } = await begun({
      'exports.look': ({ jobId }) => backupJob({ jobId, ...failed, exportProblem: 'tooLarge' }),
      'backups.job': ({ jobId }) => backupJob({ jobId, ...failed, exportProblem: 'tooLarge' }),
      'exports.import': () => refused('backupFailed', { exportProblem: 'checksum' }),
    })
    const look = await bringIn.findByRole('button', { name: /Look into it: the cellar/ })
    await user.click(look)
    expect((await bringIn.findByRole('alert')).textContent).toContain('nested too deep')
    bridge.answer({
      'exports.look': ({ jobId }) => backupJob({ jobId, ...looked }),
      'backups.job': ({ jobId }) => backupJob({ jobId, ...looked }),
    })
    await user.click(look)
    await user.click(await screen.findByRole('button', { name: 'Bring in this cellar' }))
    expect((await bringIn.findByRole('alert')).textContent).toContain('changed after it was made')
  })
})
