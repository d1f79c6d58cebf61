import { screen, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import type { RescueState, SalvageReport } from '../../../shared/schemas/safekeeping.ts'
import { status } from '../cellar-fixture.ts'
import { refused, type Answers } from '../fake-bridge.ts'
import { backupJob, manifest, noBackups } from '../safekeeping/backups-fixture.ts'
import { showApp } from '../show.tsx'

const state: RescueState = {
  file: '/home/maker/cellar.ratafia',
  trouble: 'damaged',
  message: 'the book is damaged',
  folder: '/home/maker/backups',
}

const show = (answers: Answers = {}) =>
  showApp('/today', {
    'cellar.status': () => refused('bookDamaged'),
    'rescue.state': state,
    'backups.list': noBackups,
    ...answers,
  })

const salvage: SalvageReport = {
  tables: [
    { table: 'batch', rows: 3, isWhole: true },
    { table: 'move', rows: 38, isWhole: false },
    { table: 'draft', rows: 0, isWhole: true },
  ],
  movesRead: 38,
  lostMoves: [
    { seq: 17, why: 'gone', after: '2026-03-01T10:00:00Z', before: '2026-03-04T10:00:00Z' },
  ],
  lostCount: 1,
  refusedMoves: [],
  refusedCount: 0,
  madeAgain: { batches: 0, jars: 2, shelves: 0 },
  counts: manifest.counts,
}

describe('RescueScreen', () => {
  it('takes the place of all screens while the book cannot be opened', async () => {
    show()
    expect(await screen.findByRole('heading', { name: 'Your book cannot be opened' })).toBeTruthy()
    expect(screen.getByText(/It has not been touched/)).toBeTruthy()
    expect(screen.getByText('/home/maker/cellar.ratafia')).toBeTruthy()
    expect(screen.queryByRole('navigation')).toBeNull()
  })

  it('reads what is left, reports what is lost, and goes on with it when asked', async () => {
    const done = { kind: 'salvage', state: 'done', progress: 1, salvage } as const
    const { bridge, user } = show({
      'rescue.salvage': ({ jobId }) => backupJob({ jobId, ...done }),
      'backups.job': ({ jobId }) => backupJob({ jobId, ...done }),
      'rescue.accept': { asideFile: '/home/maker/cellar kept.ratafia' },
      'today.list': () => refused('notFound'),
    })
    await user.click(await screen.findByRole('button', { name: 'Read what is left' }))
    const report = within(await screen.findByRole('region', { name: 'What could be read' }))
    expect(report.getByText('38 lines of the ledger were read.')).toBeTruthy()
    expect(report.getByText('1 line is lost:')).toBeTruthy()
    expect(report.getByText(/Number 17, recorded between 1 Mar 2026.* and 4 Mar 2026/)).toBeTruthy()
    expect(report.getByText(/because moves speak of them: 2 vessels/)).toBeTruthy()
    expect(report.getByRole('row', { name: 'move 38 parts are lost' })).toBeTruthy()
    expect(report.queryByRole('row', { name: /draft/ })).toBeNull()
    bridge.answer({ 'cellar.status': status() })
    await user.click(report.getByRole('button', { name: 'Go on with what was read' }))
    expect(await screen.findByRole('navigation', { name: 'Screens' })).toBeTruthy()
    expect(bridge.requests('rescue.accept')).toHaveLength(1)
  })

  it('offers no reading of an empty file, but a new book', async () => {
    const { bridge, user } = show({
      'rescue.state': { ...state, trouble: 'empty' },
      'rescue.beginAnew': { asideFile: '/home/maker/cellar kept.ratafia' },
    })
    await user.click(await screen.findByRole('button', { name: 'Begin a new book' }))
    expect(bridge.requests('rescue.beginAnew')).toHaveLength(1)
    expect(screen.queryByRole('button', { name: 'Read what is left' })).toBeNull()
  })

  it('leaves damage met later to the note, where there is nothing to rescue', async () => {
    show({ 'rescue.state': null })
    expect((await screen.findByRole('alert')).textContent).toContain('damaged')
  })
})
