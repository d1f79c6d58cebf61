import { screen, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { batch, summary } from '../cellar-fixture.ts'
import { showApp } from '../show.tsx'

const rows = () =>
  screen
    .getAllByRole('row')
    .slice(1)
    .map((row) => within(row).getByRole('rowheader').textContent)

describe('BatchesScreen', () => {
  it('lists what each batch is now and what comes next', async () => {
    showApp('/batches')
    const row = await screen.findByRole('row', { name: /Hedge damson/ })
    await within(row).findByText('North jar')
    const cells = within(row)
      .getAllByRole('gridcell')
      .map(({ textContent }) => textContent?.replaceAll('\u00a0', ' '))
    expect(cells).toContain('steeping')
    expect(cells).toContain('1.50 L')
    expect(cells).toContain('32.4 % vol')
    expect(cells).toContain('180 g/L')
    expect(within(row).getByRole('img', { name: /Jar of 4.L, filled to 2.32.L/ })).toBeTruthy()
  })

  it('sorts by a heading', async () => {
    const { user } = showApp('/batches')
    await user.click(await screen.findByRole('columnheader', { name: /Batch/ }))
    expect(rows()).toEqual(['Hedge damson', 'Quince and ginger', 'Raspberry, north hedge'])
    await user.click(screen.getByRole('columnheader', { name: /Batch/ }))
    expect(rows()).toEqual(['Raspberry, north hedge', 'Quince and ginger', 'Hedge damson'])
  })

  it('filters by stage and by words, and shows all again', async () => {
    const { user } = showApp('/batches')
    await user.click(await screen.findByRole('radio', { name: 'Resting 1' }))
    expect(rows()).toEqual(['Raspberry, north hedge'])
    await user.type(screen.getByRole('searchbox'), 'quince')
    expect(screen.getByText('No batch matches.')).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Show all' }))
    expect(rows()).toHaveLength(3)
  })

  it('draws forty rows at once, and more when asked', async () => {
    const many = Array.from({ length: 70 }, (_, nth) =>
      summary({ batch: batch({ id: `b${nth}`, name: `Batch ${nth}` }) }),
    )
    const { user } = showApp('/batches', { 'batches.list': many })
    await screen.findByText('Batch 0')
    expect(rows()).toHaveLength(40)
    await user.click(screen.getByRole('button', { name: 'Show 30 more' }))
    expect(rows()).toHaveLength(70)
    expect(screen.queryByRole('button', { name: /more$/ })).toBeNull()
    // What is searched for is found wherever it stands.
    await user.type(screen.getByRole('searchbox'), 'Batch 69')
    expect(rows()).toEqual([expect.stringContaining('Batch 69')])
  })

  it('is walked by arrows and opened by Enter', async () => {
    const { user } = showApp('/batches')
    const row = await screen.findByRole('row', { name: /Hedge damson/ })
    await user.tab()
    while (!screen.getByRole('grid').contains(document.activeElement)) await user.tab()
    await user.keyboard('{ArrowDown}{Home}')
    while (document.activeElement !== row) await user.keyboard('{ArrowDown}')
    await user.keyboard('{Enter}')
    expect(window.location.hash).toBe('#/batches/damson')
  })

  it('opens a new batch under its name and goes to its page', async () => {
    const { bridge, user } = showApp('/batches', { 'batches.open': (asked) => asked })
    await user.click(await screen.findByRole('button', { name: 'New batch' }))
    const dialog = within(screen.getByRole('dialog', { name: 'New batch' }))
    await user.click(dialog.getByRole('button', { name: 'Open the batch' }))
    expect(dialog.getByText('Give it a name.')).toBeTruthy()
    await user.type(dialog.getByRole('textbox', { name: /Name/ }), 'Sloe 2026')
    await user.click(dialog.getByRole('radio', { name: 'sloe' }))
    await user.click(dialog.getByRole('button', { name: 'Open the batch' }))
    const [asked] = bridge.requests('batches.open')
    expect(asked).toMatchObject({ name: 'Sloe 2026', colour: '#6b2036', note: '' })
    expect(window.location.hash).toBe(`#/batches/${asked?.id}`)
  })

  it('says what a batch is while there is none', async () => {
    showApp('/batches', { 'batches.list': [] })
    expect(await screen.findByText(/No batch yet/)).toBeTruthy()
    expect(screen.getByRole('button', { name: 'New batch' })).toBeTruthy()
  })

  it('follows the book when it changes elsewhere', async () => {
    const { bridge } = showApp('/batches', { 'batches.list': [] })
    await screen.findByText(/No batch yet/)
    const found = batch({ name: 'From another window' })
    bridge.answer({
      'batches.list': [
        {
          batch: found,
          stage: 'empty',
          jars: [],
          bottleLots: [],
          fruitIds: [],
          moveCount: 0,
        },
      ],
    })
    bridge.bookChanged()
    expect(await screen.findByRole('row', { name: /From another window/ })).toBeTruthy()
  })
})
