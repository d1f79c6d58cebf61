import { screen, waitFor, within } from '@testing-library/react'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import type { Today } from '../../../shared/schemas/schedule.ts'
import { batches, bottleLot, status } from '../cellar-fixture.ts'
import { refused } from '../fake-bridge.ts'
import { backupState } from '../safekeeping/backups-fixture.ts'
import { showApp } from '../show.tsx'
import { spiritTask, task, today } from '../task-fixture.ts'

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: new Date('2026-11-25T12:00:00Z') })
})
afterEach(() => {
  vi.useRealTimers()
})

const showToday = (changed: Partial<Today> = {}, answers = {}) =>
  showApp('/today', { 'today.list': today({ batches, ...changed }), ...answers })

const region = (name: string) => screen.findByRole('region', { name })

describe('TodayScreen', () => {
  it('answers first: how much wants hands, and what waiting loses', async () => {
    showToday()
    expect(await screen.findByText('2 things want your hands.')).toBeTruthy()
    const section = within(await region('Wants hands'))
    const links = section.getAllByRole('link').map(({ textContent }) => textContent)
    expect(links).toEqual(['Pour the spirit', 'Draw off the liquid'])
    expect(section.getByText('late since 23 Nov')).toBeTruthy()
    expect(section.getByText('Since 23 Nov it begins to ferment.')).toBeTruthy()
    expect(section.getByText('by the steeping forecast')).toBeTruthy()
    expect(await section.findByText('in South jar')).toBeTruthy()
  })

  it('warns of a backup that failed and of moves long without one, and of nothing else', async () => {
    const lastFailure = { at: '2026-11-25T07:00:00Z', failure: 'folderGone' as const }
    const { bridge } = showToday(
      {},
      { 'backups.state': backupState({ standing: 'failed', lastFailure }) },
    )
    const note = await screen.findByRole('alert')
    expect(note.textContent).toMatch(/The last backup failed. .*Plug in the stick/)
    expect(within(note).getByRole('link').getAttribute('href')).toBe('#/safekeeping')
    bridge.answer({ 'backups.state': backupState({ standing: 'missed' }) })
    bridge.bookChanged()
    expect(await screen.findByText(/in no backup for more than two days/)).toBeTruthy()
    bridge.answer({ 'backups.state': backupState() })
    bridge.bookChanged()
    await waitFor(() => expect(screen.queryByRole('alert')).toBeNull())
  })

  it('opens the form of a task by one press', async () => {
    const { user } = showToday({}, { 'schedule.task': task() })
    await user.click(await screen.findByRole('link', { name: 'Draw off the liquid' }))
    expect(window.location.hash).toBe('#/batches/damson/do/damson.drawOff.north.1')
  })

  it('tells the same by batch, and by what has to be out', async () => {
    const filter = (batchId: string, state: 'due' | 'open') =>
      task({
        id: `${batchId}.filter.1`,
        kind: 'filter',
        batchId,
        jarIds: [batchId],
        effort: 'filters',
        state,
      })
    const { user } = showToday({
      now: [spiritTask(), filter('damson', 'due'), filter('raspberry', 'open')],
    })
    expect((await region('In one go')).textContent).toContain('Filters out: 2 jars can be filtered')
    await user.click(screen.getByRole('button', { name: 'Show them together' }))
    const filters = within(await region('Filters out: 2 jars can be filtered'))
    expect(filters.getAllByRole('link', { name: 'Filter' })).toHaveLength(2)
    await user.click(screen.getByRole('radio', { name: 'By batch' }))
    const quince = within(await region('Quince and ginger'))
    expect(quince.getByRole('link', { name: 'Pour the spirit' })).toBeTruthy()
  })

  it('goes from line to line by the arrows, and puts off by P', async () => {
    const { user, bridge } = showToday({}, { 'schedule.putOff': { before: null } })
    const spirit = await screen.findByRole('link', { name: 'Pour the spirit' })
    spirit.focus()
    await user.keyboard('{ArrowDown}')
    expect(document.activeElement?.textContent).toBe('Draw off the liquid')
    await user.keyboard('{Home}')
    expect(document.activeElement).toBe(spirit)
    await user.keyboard('p')
    expect(await screen.findByRole('menuitem', { name: /Until tomorrow, 26 Nov/ })).toBeTruthy()
    await user.keyboard('{ArrowDown}{Enter}')
    await waitFor(() =>
      expect(bridge.requests('schedule.putOff')).toEqual([
        { taskId: 'quince.addSpirit.south.1', until: '2026-11-28' },
      ]),
    )
  })

  it('puts a task off until another day, and takes that back', async () => {
    const { user, bridge } = showToday(
      {},
      { 'schedule.putOff': { before: null }, 'schedule.bringBack': { before: '2026-12-24' } },
    )
    const open = { name: 'Put off: Draw off the liquid, Hedge damson' }
    await user.click(await screen.findByRole('button', open))
    await user.click(await screen.findByRole('menuitem', { name: 'Until another day…' }))
    const dialog = within(await screen.findByRole('dialog', { name: 'Put off until' }))
    await user.click(dialog.getByRole('button', { name: 'Put off' }))
    expect(dialog.getByText('A day after today.')).toBeTruthy()
    await user.type(dialog.getByLabelText('Day'), '2026-12-24')
    await user.click(dialog.getByRole('button', { name: 'Put off' }))
    expect(
      await screen.findByText('Put off until 24 Dec: Draw off the liquid, Hedge damson.'),
    ).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Undo' }))
    expect(
      await screen.findByText('Back on its own day: Draw off the liquid, Hedge damson.'),
    ).toBeTruthy()
    expect(bridge.requests('schedule.bringBack')).toEqual([{ taskId: 'damson.drawOff.north.1' }])
  })

  it('undoes to the day it was put off until before', async () => {
    const { user, bridge } = showToday({}, { 'schedule.putOff': { before: '2026-11-30' } })
    const open = { name: 'Put off: Draw off the liquid, Hedge damson' }
    await user.click(await screen.findByRole('button', open))
    await user.click(await screen.findByRole('menuitem', { name: /A week/ }))
    await user.click(await screen.findByRole('button', { name: 'Undo' }))
    await waitFor(() =>
      expect(bridge.requests('schedule.putOff').map(({ until }) => until)).toEqual([
        '2026-12-02',
        '2026-11-30',
      ]),
    )
  })

  it('shows what is put off, and warns of what could not wait', async () => {
    const off = task({ putOff: { until: '2026-12-24', isBack: false } })
    const back = spiritTask({ putOff: { until: '2026-12-20', isBack: true } })
    const { user, bridge } = showToday(
      { now: [back], putOff: [off] },
      { 'schedule.bringBack': { before: '2026-12-24' } },
    )
    expect(
      await screen.findByText('You had put it off until 20 Dec. It cannot wait for that.'),
    ).toBeTruthy()
    const section = within(await region('Put off'))
    expect(section.getByText('until 24 Dec')).toBeTruthy()
    await user.click(section.getByRole('button', { name: /^Bring back/ }))
    expect(bridge.requests('schedule.bringBack')).toHaveLength(1)
  })

  it('logs a round of turning at once, and takes it back', async () => {
    const turn = (batchId: string, jarId: string) =>
      task({
        id: `${batchId}.turn.${jarId}.3`,
        kind: 'turn',
        batchId,
        jarIds: [jarId],
        effort: 'turning',
      })
    const at = '2026-11-25T12:00:00.000Z'
    const before = { at, kind: 'stir' as const, batchId: 'damson', jarId: 'north' }
    const { user, bridge } = showToday(
      { now: [turn('damson', 'north'), turn('quince', 'south')] },
      {
        'moves.record': { groupId: 'g', moveIds: ['a', 'b'], warnings: [] },
        'moves.undo': {
          groupId: 'u',
          undoes: 'g',
          changes: [{ moveId: 'a', before, after: null }],
        },
      },
    )
    expect(await screen.findByText('Turn 2 jars')).toBeTruthy()
    expect(screen.getByText('1 thing wants your hands.')).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Log as turned' }))
    expect(await screen.findByText(/^Recorded: .*North jar, and 1 more\.$/)).toBeTruthy()
    const [{ moves } = { moves: [] }] = bridge.requests('moves.record')
    expect(moves).toEqual([
      { at: '2026-11-25T12:00:00.000Z', kind: 'stir', batchId: 'damson', jarId: 'north' },
      { at: '2026-11-25T12:00:00.000Z', kind: 'stir', batchId: 'quince', jarId: 'south' },
    ])
    await user.click(screen.getByRole('button', { name: 'Undo' }))
    expect(await screen.findByText(/^Taken back: .*North jar\.$/)).toBeTruthy()
    expect(bridge.requests('moves.undo')).toMatchObject([{ groupId: 'g' }])
  })

  it('asks whether an opened spirit is shut, and takes the answer back', async () => {
    const { bridge, user } = showToday(
      {
        cautions: [
          {
            code: 'openedSpirit',
            severity: 'note',
            lotId: 'spirit',
            since: '2026-09-02T08:00:00Z',
            value: 1000,
          },
        ],
      },
      { 'pantry.sayShut': {} },
    )
    const section = within(await region('Cautions'))
    const shut = await section.findByRole('button', { name: /^It is shut: Spirit 96/ })
    expect(section.getByRole('listitem').textContent).toMatch(
      /Is it shut\?Spirit 96.*It was opened 2 Sept?, and 1\.00\sL is left/,
    )
    await user.click(shut)
    expect(
      await screen.findByText(/^Spirit 96.*is shut\. It is asked about again once/),
    ).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Undo' }))
    expect(await screen.findByText(/^Taken back: Spirit 96/)).toBeTruthy()
    expect(bridge.requests('pantry.sayShut')).toEqual([
      { lotId: 'spirit', isShut: true },
      { lotId: 'spirit', isShut: false },
    ])
  })

  it('tells cautions in words with their numbers, warnings first', async () => {
    showToday({
      cautions: [
        { code: 'sugarUndissolved', severity: 'note', jarId: 'north', value: 120, limit: 0 },
        {
          code: 'sugarOnlyTooLong',
          severity: 'warning',
          batchId: 'quince',
          jarId: 'south',
          value: 75,
          limit: 24,
        },
      ],
    })
    const section = within(await region('Cautions'))
    await section.findByText(/South jar/)
    const [first, second] = section.getAllByRole('listitem')
    expect(first?.textContent).toContain('It has stood 3 days without spirit; from 24 hours on')
    expect(first?.textContent).toContain('Quince and ginger, South jar')
    expect(second?.textContent).toContain('120\u00a0g of sugar has not dissolved yet')
  })

  it('is quiet when nothing is due, and says what is next', async () => {
    const later = task({
      state: 'coming',
      early: '2026-12-10T08:00:00Z',
      due: '2026-12-20T08:00:00Z',
    })
    showToday({ now: [], after: later })
    expect(
      await screen.findByText(
        'Nothing needs your hands today. Next: Draw off the liquid, Hedge damson, in 2 weeks.',
      ),
    ).toBeTruthy()
    expect(screen.queryByRole('region', { name: 'Wants hands' })).toBeNull()
    expect(screen.queryByRole('radio')).toBeNull()
  })

  it('tells what came ready, with the way to taste it', async () => {
    const tasting = task({
      id: 'raspberry.taste.1',
      kind: 'taste',
      batchId: 'raspberry',
      jarIds: [],
      bottleLotId: 'raspberry-lot',
      state: 'open',
      due: '2026-11-20T08:00:00Z',
    })
    showToday({ now: [], cameReady: [{ task: tasting, lot: bottleLot() }] })
    const section = within(await region('Came ready'))
    expect(section.getByText(/7 bottles, ready since 20 Nov/)).toBeTruthy()
    expect(
      section.getByRole('link', { name: 'Taste it: Raspberry 2024' }).getAttribute('href'),
    ).toBe('#/batches/raspberry/do/raspberry.taste.1')
  })

  it('names a few bottles that are best drunk soon, and counts the rest', async () => {
    const fading = Array.from({ length: 8 }, (_, index) => ({
      task: task({ id: `b.drinkUp.lot${index}.1`, kind: 'drinkUp', due: '2027-01-06T08:00:00Z' }),
      lot: bottleLot({ id: `lot${index}`, name: `Lot ${index}` }),
    }))
    showToday({ now: [], fading })
    const section = within(await region('Best drunk before long'))
    expect(section.getAllByRole('listitem')).toHaveLength(5)
    expect(section.getAllByText('7 bottles, begins to fade about 6 Jan 2027')).toHaveLength(5)
    expect(section.getByText('3 more on the shelf.')).toBeTruthy()
  })

  it('leads to Batches while no batch is in hand', async () => {
    showToday({ now: [], batches: [] })
    expect(await screen.findByText(/No batch is in hand/)).toBeTruthy()
    expect(screen.getByRole('link', { name: 'Go to Batches' }).getAttribute('href')).toBe(
      '#/batches',
    )
  })

  it('says what to do when the book does not answer, and asks again', async () => {
    const { bridge, user } = showApp('/today', { 'today.list': () => refused('bookBusy') })
    expect((await screen.findByRole('alert')).textContent).toContain('Another program has the book')
    bridge.answer({ 'today.list': today({ batches }) })
    await user.click(screen.getByRole('button', { name: 'Try again' }))
    expect(await screen.findByText('2 things want your hands.')).toBeTruthy()
  })
})

describe('the calendar', () => {
  const openDialog = async (answers = {}) => {
    const shown = showToday({}, { 'calendar.feed': { path: null }, ...answers })
    await shown.user.click(await screen.findByRole('button', { name: 'Calendar' }))
    const dialog = within(
      await screen.findByRole('dialog', { name: 'What is to be done, in your calendar' }),
    )
    return { ...shown, dialog }
  }

  it('is served at an address that can be renewed and closed', async () => {
    const { dialog, user, bridge } = await openDialog({
      'calendar.openFeed': { path: '/calendar/S.ics' },
    })
    await dialog.findByRole('button', { name: 'Serve it at an address' })
    bridge.answer({ 'calendar.feed': { path: '/calendar/S.ics' } })
    await user.click(dialog.getByRole('button', { name: 'Serve it at an address' }))
    const address = await dialog.findByLabelText('Address for the calendar program')
    expect((address as HTMLInputElement).value).toBe(`${window.location.origin}/calendar/S.ics`)
    bridge.answer({ 'calendar.feed': { path: null }, 'calendar.closeFeed': { path: null } })
    await user.click(dialog.getByRole('button', { name: 'Close the address' }))
    expect(await dialog.findByRole('button', { name: 'Serve it at an address' })).toBeTruthy()
    expect(bridge.requests('calendar.closeFeed')).toHaveLength(1)
  })

  it('is a file only where no address can be served', async () => {
    const { dialog } = await openDialog({ 'cellar.status': status({ host: 'electron' }) })
    expect(await dialog.findByText(/Only Ratafia in a browser window serves/)).toBeTruthy()
    expect(dialog.queryByRole('button', { name: 'Serve it at an address' })).toBeNull()
    expect(dialog.getByRole('button', { name: 'Save the calendar file' })).toBeTruthy()
  })

  it('says when the file cannot be made', async () => {
    const { dialog, user } = await openDialog({ 'calendar.file': () => refused('bookBusy') })
    await user.click(dialog.getByRole('button', { name: 'Save the calendar file' }))
    expect((await dialog.findByRole('alert')).textContent).toContain('Another program has the book')
  })
})
