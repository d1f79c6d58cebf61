import { screen, within } from '@testing-library/react'
import { beforeAll, describe, expect, it } from 'vitest'
import { bottleLot } from '../cellar-fixture.ts'
import { refused } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'

const recorded = { groupId: 'g', moveIds: ['m'], warnings: [] }

// The screen is fetched when it is first opened; here that would count against the first test.
beforeAll(() => import('../../../renderer/screens/shelf/shelf-screen.tsx'))

describe('ShelfScreen', () => {
  it('counts the bottles and shows each lot', async () => {
    showApp('/shelf')
    expect(await screen.findByText('7 bottles laid down.')).toBeTruthy()
    const row = screen.getByRole('row', { name: /Raspberry 2024/ })
    expect(within(row).getByText('of 12')).toBeTruthy()
    expect(row.textContent?.replaceAll('\u00a0', ' ')).toContain('28.0 % vol')
    expect(await within(row).findByText('€6.50')).toBeTruthy()
    expect(within(row).getByText('€0.52 a glass')).toBeTruthy()
  })

  it('draws one bottle now unless told otherwise', async () => {
    const { bridge, user } = showApp('/shelf', { 'moves.record': recorded })
    await user.click(await screen.findByRole('button', { name: 'Draw a bottle of Raspberry 2024' }))
    await user.click(screen.getByRole('button', { name: 'Draw' }))
    const [asked] = bridge.requests('moves.record')
    expect(asked?.moves).toMatchObject([
      { kind: 'drawBottle', bottleLotId: 'raspberry-lot', count: 1 },
    ])
    expect(screen.queryByRole('dialog')).toBeNull()
  })

  it('tells a refusal with what is there, what was asked, and the nearest', async () => {
    const { user } = showApp('/shelf', {
      'moves.record': () =>
        refused('notEnough', {
          code: 'notEnough',
          place: 'bottles:raspberry-lot',
          unit: 'bottles',
          asked: 9,
          available: 7,
          nearest: 7,
          index: 0,
        }),
    })
    await user.click(await screen.findByRole('button', { name: 'Give away Raspberry 2024' }))
    const count = screen.getByRole('textbox', { name: /Bottles/ })
    await user.clear(count)
    await user.type(count, '9{Enter}')
    expect((await screen.findByRole('alert')).textContent).toBe(
      'The bottles of Raspberry 2024 holds 7 bottles; you asked for 9 bottles. The most that can be is 7 bottles.',
    )
    expect(screen.getByRole('dialog', { name: 'Give from Raspberry 2024' })).toBeTruthy()
  })

  it('keeps lots that are gone out of sight until asked', async () => {
    const gone = bottleLot({ id: 'gone', name: 'Drunk up', count: 0 })
    const { user } = showApp('/shelf', { 'bottles.list': [bottleLot(), gone] })
    await screen.findByText('7 bottles laid down.')
    expect(screen.queryByRole('row', { name: /Drunk up/ })).toBeNull()
    await user.click(screen.getByRole('button', { name: 'Show lots that are gone' }))
    expect(screen.getByRole('row', { name: /Drunk up/ }).textContent).toContain('all gone')
  })

  it('says how bottles come here while there are none', async () => {
    showApp('/shelf', { 'bottles.list': [] })
    expect(await screen.findByText(/No bottles yet/)).toBeTruthy()
  })
})
