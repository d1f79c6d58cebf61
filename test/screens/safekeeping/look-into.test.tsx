import { screen, waitFor } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { lookIntoPath } from '../../../main/hosts/file-to-open.ts'
import type { SafekeepingJob } from '../../../shared/schemas/safekeeping.ts'
import type { Answers } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'
import { backupJob, preview } from './backups-fixture.ts'

const answering = (
  channel: 'backups.look' | 'exports.look',
  job: Partial<SafekeepingJob>,
): Answers => ({
  [channel]: ({ jobId }: { jobId: string }) => backupJob({ jobId, ...job }),
  'backups.job': ({ jobId }) => backupJob({ jobId, ...job }),
})
const looked = { kind: 'look', state: 'done', step: 'comparing', progress: 1, preview } as const

describe('a file that Ratafia was opened with', () => {
  it('is looked into once, and shown before anything changes', async () => {
    const { bridge, user } = showApp(lookIntoPath(preview.file), answering('backups.look', looked))
    expect(await screen.findByRole('region', { name: /^The backup of 24 Nov 2026/ })).toBeTruthy()
    expect(screen.getByText(preview.file)).toBeTruthy()
    expect(bridge.requests('backups.look')).toMatchObject([{ file: preview.file }])
    expect(bridge.requests('backups.restore')).toEqual([])
    await user.click(screen.getByRole('button', { name: 'Leave it' }))
    await waitFor(() => expect(window.location.hash).toBe('#/today'))
  })

  it('is an export when its name says so', async () => {
    const file = '/stick/50 % #1.cellar.zip'
    const { bridge } = showApp(
      lookIntoPath(file),
      answering('exports.look', {
        kind: 'lookIntoExport',
        state: 'failed',
        exportProblem: 'checksum',
      }),
    )
    expect((await screen.findByRole('alert')).textContent).toContain('changed after it was made')
    expect(bridge.requests('exports.look')).toMatchObject([{ file }])
  })

  it('may be gone', async () => {
    const gone = { kind: 'look', state: 'failed', failure: 'folderGone' } as const
    showApp(lookIntoPath('/stick/gone.zip'), answering('backups.look', gone))
    expect((await screen.findByRole('alert')).textContent).toContain('Check that it is there')
  })
})
