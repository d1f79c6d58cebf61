import { screen, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { showApp } from '../show.tsx'

const recorded = { groupId: 'g', moveIds: ['m'], warnings: [] }

describe('CellarRoomScreen', () => {
  it('shows each vessel with what stands in it', async () => {
    showApp('/cellar-room')
    expect(await screen.findByText('1 of 2 vessels stands empty.')).toBeTruthy()
    expect(screen.getByRole('img', { name: /Jar of 4.L, filled to 2.32.L/ })).toBeTruthy()
    expect(screen.getByRole('img', { name: /Demijohn of 10.L, empty/ })).toBeTruthy()
  })

  it('adds a vessel', async () => {
    const { bridge, user } = showApp('/cellar-room', { 'jars.add': {} })
    await user.click(await screen.findByRole('button', { name: 'Add a vessel' }))
    const dialog = within(screen.getByRole('dialog', { name: 'Add a vessel' }))
    await user.type(dialog.getByRole('textbox', { name: /Name/ }), 'Attic crock')
    await user.selectOptions(dialog.getByRole('combobox', { name: /Kind/ }), 'Crock')
    await user.type(dialog.getByRole('textbox', { name: /Holds/ }), '7,5')
    await user.click(dialog.getByRole('button', { name: 'Add it' }))
    expect(bridge.requests('jars.add')[0]?.jars).toMatchObject([
      { name: 'Attic crock', shape: 'crock', capacityMl: 7500, isRetired: false },
    ])
  })

  it('leads to a spreadsheet of the pantry’s stock', async () => {
    const { user } = showApp('/cellar-room')
    await user.click(await screen.findByRole('link', { name: 'From a spreadsheet…' }))
    expect(await screen.findByRole('heading', { name: 'From a spreadsheet' })).toBeTruthy()
    const stock = screen.getByRole('radio', { name: 'Stock of the pantry' })
    expect(stock).toHaveProperty('checked', true)
  })

  it('does not retire a jar that holds a batch', async () => {
    const { bridge, user } = showApp('/cellar-room')
    await user.click(await screen.findByRole('button', { name: 'Change North jar' }))
    await user.click(screen.getByRole('checkbox', { name: /Retired/ }))
    await user.click(screen.getByRole('button', { name: 'Save' }))
    expect(screen.getByText(/It holds a batch/)).toBeTruthy()
    expect(bridge.requests('jars.change')).toEqual([])
  })

  it('renames a jar', async () => {
    const { bridge, user } = showApp('/cellar-room', { 'jars.change': (jar) => jar })
    await user.click(await screen.findByRole('button', { name: 'Change South jar' }))
    const name = screen.getByRole('textbox', { name: /Name/ })
    await user.clear(name)
    await user.type(name, 'Big one{Enter}')
    expect(bridge.requests('jars.change')).toMatchObject([{ id: 'south', name: 'Big one' }])
  })

  it('buys spirit by volume and strength, read in the maker’s own writing', async () => {
    const { bridge, user } = showApp('/cellar-room', { 'moves.record': recorded })
    await user.click(await screen.findByRole('button', { name: 'Buy goods' }))
    const dialog = within(screen.getByRole('dialog', { name: 'Buy goods' }))
    await user.click(dialog.getByRole('radio', { name: 'Spirit' }))
    await user.click(dialog.getByRole('button', { name: 'Put in the pantry' }))
    expect(dialog.getAllByText('Fill this in.')).toHaveLength(2)
    await user.type(dialog.getByRole('textbox', { name: /Strength/ }), '192 proof')
    await user.type(dialog.getByRole('textbox', { name: /Volume/ }), '1½ l')
    await user.type(dialog.getByRole('textbox', { name: /Price/ }), '28,40')
    await user.click(dialog.getByRole('button', { name: 'Put in the pantry' }))
    expect(bridge.requests('moves.record')[0]?.moves).toMatchObject([
      {
        kind: 'buy',
        goods: { kind: 'spirit', strengthPctVol: 96 },
        volumeMl: 1500,
        priceMinor: 2840,
      },
    ])
  })

  it('buys citric acid by the gram', async () => {
    const { bridge, user } = showApp('/cellar-room', { 'moves.record': recorded })
    await user.click(await screen.findByRole('button', { name: 'Buy goods' }))
    const dialog = within(screen.getByRole('dialog'))
    await user.click(dialog.getByRole('radio', { name: 'Citric acid' }))
    await user.type(dialog.getByRole('textbox', { name: /Mass/ }), '100{Enter}')
    expect(bridge.requests('moves.record')[0]?.moves).toMatchObject([
      { kind: 'buy', goods: { kind: 'acid' }, massG: 100 },
    ])
  })

  it('buys fruit of the library by mass', async () => {
    const { bridge, user } = showApp('/cellar-room', { 'moves.record': recorded })
    await user.click(await screen.findByRole('button', { name: 'Buy goods' }))
    const dialog = within(screen.getByRole('dialog'))
    await user.selectOptions(dialog.getByRole('combobox', { name: /Which fruit/ }), 'Damson')
    await user.type(dialog.getByRole('textbox', { name: /Mass/ }), '2 lb{Enter}')
    const [move] = bridge.requests('moves.record')[0]?.moves ?? []
    expect(move).toMatchObject({ kind: 'buy', goods: { kind: 'fruit', fruitId: 'damson' } })
    expect(move?.kind === 'buy' && move.massG).toBeCloseTo(907.18474, 5)
  })
})
