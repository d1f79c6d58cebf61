import { screen, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { status } from '../cellar-fixture.ts'
import { refused } from '../fake-bridge.ts'
import { backupJob, manifest, preview, twoBackups } from '../safekeeping/backups-fixture.ts'
import { showApp } from '../show.tsx'

const settings = status().settings
const empty = { 'cellar.status': status({ isEmpty: true }) }

describe('FirstRunScreen', () => {
  it('starts a cellar with the vessels chosen, then shows Batches', async () => {
    const { bridge, user } = showApp('/', {
      ...empty,
      'batches.list': [],
      'cellar.changeSettings': settings,
      'jars.add': {},
    })
    await screen.findByRole('heading', { name: 'Ratafia' })
    await user.click(screen.getByRole('button', { name: 'Start my cellar' }))
    expect(screen.getByText('Choose at least one vessel.')).toBeTruthy()
    const vessels = within(screen.getByRole('list', { name: 'Vessels' }))
    const demijohn = vessels
      .getAllByRole('listitem')
      .find(({ textContent }) => textContent?.includes('Demijohn10'))
    if (!demijohn) throw new Error('no demijohn of 10 L is offered')
    const more = within(demijohn).getByRole('button', { name: /More/ })
    await user.click(more)
    await user.click(more)
    expect(screen.getByText('2 vessels')).toBeTruthy()
    bridge.answer({ 'cellar.status': status() })
    await user.click(screen.getByRole('button', { name: 'Start my cellar' }))
    expect(await screen.findByText(/No batch yet/)).toBeTruthy()
    expect(bridge.requests('jars.add')[0]?.jars).toMatchObject([
      { name: 'Demijohn 1', shape: 'demijohn', capacityMl: 10_000 },
      { name: 'Demijohn 2', shape: 'demijohn', capacityMl: 10_000 },
    ])
    expect(bridge.requests('cellar.changeSettings')).toEqual([
      {
        units: 'metric',
        temperature: 'celsius',
        strength: 'pctVol',
        locale: 'en-GB',
        currency: 'EUR',
      },
    ])
  })

  it('offers the sizes of the units chosen', async () => {
    const { user } = showApp('/', empty)
    await user.click(await screen.findByRole('radio', { name: /gal/ }))
    const vessels = within(screen.getByRole('list', { name: 'Vessels' }))
    expect(vessels.getByText(/^5.gal$/)).toBeTruthy()
  })

  it('opens the demo, and says that it takes a moment', async () => {
    let isMade = () => {}
    const made = new Promise<void>((done) => {
      isMade = done
    })
    const demo = status({ isDemo: true, hasDemo: true })
    const { bridge, user } = showApp('/', {
      ...empty,
      'cellar.openDemo': async () => {
        await made
        return demo
      },
    })
    await user.click(await screen.findByRole('button', { name: 'Look round the demo' }))
    expect(screen.getByRole('progressbar', { name: 'Laying down six seasons…' })).toBeTruthy()
    bridge.answer({ 'cellar.status': demo })
    isMade()
    expect(await screen.findByText(/Demo cellar ‘Alder End’/)).toBeTruthy()
  })

  it('begins with the book of a backup, when one is chosen', async () => {
    const looked = { kind: 'look', state: 'done', progress: 1, preview } as const
    const { bridge, user } = showApp('/', {
      ...empty,
      'batches.list': [],
      'backups.list': twoBackups,
      'backups.look': ({ jobId }) => backupJob({ jobId, ...looked }),
      'backups.job': ({ jobId }) => backupJob({ jobId, ...looked }),
      'backups.restore': { asideFile: null, manifest },
    })
    await user.click(await screen.findByRole('button', { name: 'Choose a backup' }))
    await user.click(await screen.findByRole('button', { name: /Look into it: the backup of/ }))
    bridge.answer({ 'cellar.status': status() })
    await user.click(await screen.findByRole('button', { name: 'Go back to this backup' }))
    expect(await screen.findByText(/No batch yet/)).toBeTruthy()
    expect(bridge.requests('backups.restore')).toHaveLength(1)
  })

  it('says what to do when the demo can’t be made', async () => {
    const { user } = showApp('/', { ...empty, 'cellar.openDemo': () => refused('diskFull') })
    await user.click(await screen.findByRole('button', { name: 'Look round the demo' }))
    expect((await screen.findByRole('alert')).textContent).toContain('The disk is full')
  })
})
