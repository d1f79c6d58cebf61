import { screen, within } from '@testing-library/react'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { batches } from '../cellar-fixture.ts'
import { refused } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: new Date('2026-11-25T12:00:00Z') })
})
afterEach(() => {
  vi.useRealTimers()
})

describe('TodayScreen', () => {
  it('answers first: how many batches need hands, the latest first', async () => {
    showApp('/today')
    expect(await screen.findByText('2 batches need your hands.')).toBeTruthy()
    const section = within(screen.getByRole('region', { name: 'Wants hands' }))
    const links = section.getAllByRole('link').map(({ textContent }) => textContent)
    expect(links).toEqual(['Quince and ginger', 'Hedge damson'])
    expect(section.getByText('late since 23 Nov')).toBeTruthy()
    expect(section.getByText('Draw off the liquid')).toBeTruthy()
  })

  it('opens the batch’s page from its line', async () => {
    const { user } = showApp('/today')
    await user.click(await screen.findByRole('link', { name: 'Hedge damson' }))
    expect(window.location.hash).toBe('#/batches/damson')
  })

  it('tells cautions in words with their numbers, warnings first', async () => {
    showApp('/today', {
      'today.list': {
        batches,
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
      },
    })
    const section = within(await screen.findByRole('region', { name: 'Cautions' }))
    await section.findByText(/South jar/)
    const [first, second] = section.getAllByRole('listitem')
    expect(first?.textContent).toContain('It has stood 3 days without spirit; from 24 hours on')
    expect(first?.textContent).toContain('Quince and ginger, South jar')
    expect(second?.textContent).toContain('120\u00a0g of sugar has not dissolved yet')
  })

  it('is quiet when nothing is due, and says what is next', async () => {
    const [damson] = batches
    if (!damson) throw new Error('the fixture has no batch')
    const later = {
      ...damson,
      next: {
        ...damson.next,
        early: '2026-12-02T08:00:00Z',
        due: '2026-12-20T08:00:00Z',
        late: '2027-01-20T08:00:00Z',
      },
    }
    showApp('/today', { 'today.list': { batches: [later], cautions: [] } })
    expect(
      await screen.findByText('Nothing needs your hands today. Next: Hedge damson, in 7 days.'),
    ).toBeTruthy()
    expect(screen.queryByRole('region', { name: 'Wants hands' })).toBeNull()
  })

  it('leads to Batches while no batch is in hand', async () => {
    showApp('/today', { 'today.list': { batches: [], cautions: [] } })
    expect(await screen.findByText(/No batch is in hand/)).toBeTruthy()
    expect(screen.getByRole('link', { name: 'Go to Batches' }).getAttribute('href')).toBe(
      '#/batches',
    )
  })

  it('says what to do when the book does not answer, and asks again', async () => {
    const { bridge, user } = showApp('/today', { 'today.list': () => refused('bookBusy') })
    expect((await screen.findByRole('alert')).textContent).toContain('Another program has the book')
    bridge.answer({ 'today.list': { batches, cautions: [] } })
    await user.click(screen.getByRole('button', { name: 'Try again' }))
    expect(await screen.findByText('2 batches need your hands.')).toBeTruthy()
  })
})
