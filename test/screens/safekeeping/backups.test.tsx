import { screen, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { refused, type Answers } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'
import {
  backupJob,
  backupState,
  manifest,
  noBackups,
  preview,
  twoBackups,
} from './backups-fixture.ts'

const show = (answers: Answers = {}) =>
  showApp('/safekeeping', {
    'backups.state': backupState(),
    'backups.list': noBackups,
    ...answers,
  })

const section = async (name: string) => within(await screen.findByRole('region', { name }))

describe('the backups of the book', () => {
  it('says when the last one was made and what is in none yet', async () => {
    show()
    const backups = await section('Backups')
    expect(backups.getByText('The book is backed up.')).toBeTruthy()
    expect(backups.getByText(/The last one is of 24 Nov 2026.*, 123.kB/)).toBeTruthy()
    expect(backups.getByText('2 changes since are in no backup yet.')).toBeTruthy()
  })

  it('warns of a backup that failed, with what to do', async () => {
    const lastFailure = { at: '2026-11-25T07:00:00Z', failure: 'folderGone' as const }
    show({ 'backups.state': backupState({ standing: 'failed', lastFailure }) })
    const note = await screen.findByRole('alert')
    expect(note.textContent).toMatch(/The last backup failed.*Plug in the stick/)
  })

  it('warns of moves that have been without one for too long', async () => {
    show({ 'backups.state': backupState({ standing: 'missed' }) })
    expect((await screen.findByRole('alert')).textContent).toContain('more than two days')
  })

  it('backs up at a press, shows how far it is, and what came of it', async () => {
    const { bridge, user } = show({
      'backups.start': ({ jobId }) => backupJob({ jobId }),
      'backups.job': ({ jobId }) => backupJob({ jobId }),
    })
    const backups = await section('Backups')
    await user.click(backups.getByRole('button', { name: 'Back up now' }))
    const bar = await backups.findByRole('progressbar', { name: 'Backups' })
    expect(bar.getAttribute('value')).toBe('0.5')
    expect(backups.getByText('Packing')).toBeTruthy()
    const backup = twoBackups.backups[0]
    if (!backup) throw new Error('the fixture has no backup')
    bridge.answer({
      'backups.job': ({ jobId }) => backupJob({ jobId, state: 'done', progress: 1, backup }),
    })
    expect(await backups.findByText(/found the same: 41 moves, 123.kB/)).toBeTruthy()
    expect(backups.queryByRole('progressbar')).toBeNull()
  })

  it('stops when asked, and says that nothing was made', async () => {
    const { bridge, user } = show({
      'backups.start': ({ jobId }) => backupJob({ jobId }),
      'backups.job': ({ jobId }) => backupJob({ jobId }),
      'backups.cancel': ({ jobId }) => backupJob({ jobId, state: 'cancelled' }),
    })
    const backups = await section('Backups')
    await user.click(backups.getByRole('button', { name: 'Back up now' }))
    await user.click(await backups.findByRole('button', { name: 'Stop' }))
    expect(await backups.findByText('Stopped. No backup was made.')).toBeTruthy()
    expect(bridge.requests('backups.cancel')).toHaveLength(1)
  })

  it('says why a backup failed, beside the button', async () => {
    const failed = { state: 'failed', failure: 'diskFull' } as const
    const { user } = show({
      'backups.start': ({ jobId }) => backupJob({ jobId, ...failed }),
      'backups.job': ({ jobId }) => backupJob({ jobId, ...failed }),
    })
    const backups = await section('Backups')
    await user.click(backups.getByRole('button', { name: 'Back up now' }))
    expect((await backups.findByRole('alert')).textContent).toContain('Make room')
  })

  it('takes another folder once it will do', async () => {
    const { bridge, user } = show({
      'backups.change': () => refused('backupFailed', { failure: 'folderReadOnly' }),
    })
    const backups = await section('Backups')
    const field = backups.getByRole('textbox', { name: 'Folder on this machine' })
    await user.clear(field)
    await user.type(field, '/media/stick')
    await user.click(backups.getByRole('button', { name: 'Use this folder' }))
    expect((await backups.findByRole('alert')).textContent).toContain('Nothing may be written')
    expect(bridge.requests('backups.change')).toEqual([{ folder: '/media/stick' }])
  })

  it('is switched off, and set to fewer changes', async () => {
    const { bridge, user } = show({ 'backups.change': backupState() })
    const backups = await section('Backups')
    await user.click(backups.getByRole('checkbox', { name: 'Make backups by themselves' }))
    const field = backups.getByRole('textbox', { name: /after so many changes/ })
    await user.clear(field)
    await user.type(field, '9')
    expect(bridge.requests('backups.change')).toEqual([
      { schedule: { isOn: false, everyMoves: 25 } },
      { schedule: { isOn: true, everyMoves: 9 } },
    ])
  })

  it('says that the demo has none', async () => {
    show({ 'backups.state': backupState({ standing: 'demo' }) })
    const backups = await section('Backups')
    expect(backups.getByText(/This is the demo/)).toBeTruthy()
    expect(backups.queryByRole('button')).toBeNull()
  })
})

describe('going back to a backup', () => {
  const looked = { kind: 'look', state: 'done', step: 'comparing', progress: 1, preview } as const

  it('lists what is in the folder, and what is wrong with what cannot be used', async () => {
    show({ 'backups.list': twoBackups })
    const restore = await section('Go back to a backup')
    const [, sound, cut] = await restore.findAllByRole('row')
    expect(sound?.textContent).toMatch(/24 Nov 2026.*daily.*41.*12/)
    expect(cut?.textContent).toContain('cut short')
    expect(within(cut as HTMLElement).queryByRole('button')).toBeNull()
  })

  it('shows what would be gone before anything happens, then says where the book of before is', async () => {
    const { bridge, user } = show({
      'backups.list': twoBackups,
      'backups.look': ({ jobId }) => backupJob({ jobId, ...looked }),
      'backups.job': ({ jobId }) => backupJob({ jobId, ...looked }),
      'backups.restore': { asideFile: '/home/maker/cellar kept.ratafia', manifest },
    })
    const restore = await section('Go back to a backup')
    await user.click(await restore.findByRole('button', { name: /Look into it: the backup of/ }))
    const shown = within(await screen.findByRole('region', { name: /The backup of 24 Nov 2026/ }))
    expect(shown.getByText(/2 moves are in the present book only and would be gone/)).toBeTruthy()
    expect(shown.getByText('and 1 more')).toBeTruthy()
    expect(shown.getByRole('row', { name: /Moves 41 43/ })).toBeTruthy()
    expect(bridge.requests('backups.restore')).toEqual([])
    await user.click(shown.getByRole('button', { name: 'Go back to this backup' }))
    expect(await screen.findByText(/kept as .*cellar kept\.ratafia/)).toBeTruthy()
    expect(bridge.requests('backups.restore')).toEqual([{ file: preview.file }])
    expect(screen.queryByRole('button', { name: 'Go back to this backup' })).toBeNull()
  })

  it('refuses a backup that does not verify, with the reason', async () => {
    const failed = {
      ...looked,
      state: 'failed',
      failure: 'notVerified',
      problem: 'checksum',
    } as const
    const { preview: _preview, ...bad } = failed
    const { user } = show({
      'backups.list': twoBackups,
      'backups.look': ({ jobId }) => backupJob({ jobId, ...bad }),
      'backups.job': ({ jobId }) => backupJob({ jobId, ...bad }),
    })
    const restore = await section('Go back to a backup')
    await user.click(await restore.findByRole('button', { name: /Look into it: the backup of/ }))
    expect((await restore.findByRole('alert')).textContent).toContain('changed after it was made')
    expect(restore.queryByRole('button', { name: 'Go back to this backup' })).toBeNull()
  })

  it('looks in another folder when told one', async () => {
    const { bridge, user } = show({
      'backups.list': ({ folder }) =>
        folder === undefined ? noBackups : { folder, failure: 'folderGone', backups: [] },
    })
    const restore = await section('Go back to a backup')
    const field = await restore.findByRole('textbox', { name: 'Look in folder' })
    await user.clear(field)
    await user.type(field, '/media/stick{Enter}')
    expect((await restore.findByRole('alert')).textContent).toContain('Plug in the stick')
    expect(bridge.requests('backups.list')).toContainEqual({ folder: '/media/stick' })
  })
})
