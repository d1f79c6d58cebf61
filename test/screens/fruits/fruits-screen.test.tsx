import { screen, waitFor, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { fruitLibrary, fruitOf } from '../../../main/engine/index.ts'
import { refused } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'
import { fruitPage } from './fruit-page-fixture.ts'

const library = {
  'fruits.list': [...fruitLibrary.values()],
  'fruits.origins': [{ fruitId: 'sloe', origin: 'edited' as const }],
}

describe('FruitsScreen', () => {
  it('lists every fruit by name, with its season, how it steeps and whose it is', async () => {
    showApp('/fruits', library)
    const table = await screen.findByRole('table', { name: 'Kinds of fruit' })
    expect(screen.getByText(/^50 kinds; \d+ in season this month\.$/)).toBeTruthy()
    const rows = within(table).getAllByRole('row')
    expect(rows).toHaveLength(51)
    expect(rows[1]?.textContent).toContain('Apple')
    const sloe = within(table).getByRole('row', { name: /Sloe/ })
    expect(sloe.textContent).toMatch(/September to November, best in October/)
    expect(sloe.textContent).toMatch(/waxy skin/)
    expect(sloe.textContent).toMatch(/your copy/)
    expect(within(sloe).getByRole('link').getAttribute('href')).toBe('#/fruits/sloe')
  })

  it('searches, says when nothing matches, and shows all again', async () => {
    const { user } = showApp('/fruits', library)
    const search = await screen.findByRole('searchbox', { name: 'Search by name or kind' })
    await user.type(search, 'moonfruit')
    expect(screen.getByText('No fruit matches.')).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Show all' }))
    expect(screen.getAllByRole('row')).toHaveLength(51)
    await user.click(screen.getByRole('radio', { name: 'Yours 1' }))
    expect(screen.getAllByRole('row')).toHaveLength(2)
  })

  it('says what “yours” would be while there is nothing', async () => {
    const { user } = showApp('/fruits', { ...library, 'fruits.origins': [] })
    await user.click(await screen.findByRole('radio', { name: 'Yours 0' }))
    expect(screen.getByText(/Nothing here is yours yet/)).toBeTruthy()
  })

  it('adds a fruit like another and goes to its page', async () => {
    const { bridge, user } = showApp('/fruits', {
      ...library,
      'fruits.keep': (fruit) => fruitPage({ fruit, origin: 'own' }),
      'fruits.page': () => fruitPage({ fruit: { ...fruitOf('sloe'), nameEn: 'Bullace' } }),
    })
    await user.click(await screen.findByRole('button', { name: 'Add a fruit' }))
    const dialog = within(screen.getByRole('dialog', { name: 'Add a fruit' }))
    await user.click(dialog.getByRole('button', { name: 'Add it' }))
    expect(dialog.getByText('Give it a name.')).toBeTruthy()
    expect(dialog.getByText('Choose the fruit most like it.')).toBeTruthy()
    expect(bridge.requests('fruits.keep')).toEqual([])
    await user.type(dialog.getByRole('textbox', { name: 'Name' }), 'Bullace')
    await user.selectOptions(dialog.getByRole('combobox', { name: /Like which/ }), 'Sloe')
    await user.click(dialog.getByRole('button', { name: 'Add it' }))
    const [kept] = bridge.requests('fruits.keep')
    expect(kept).toMatchObject({ nameEn: 'Bullace', drainedLPerKg: fruitOf('sloe').drainedLPerKg })
    expect(kept?.sources['drainedLPerKg']).toBe('like:sloe')
    await waitFor(() => expect(window.location.hash).toBe(`#/fruits/${kept?.id}`))
    expect(await screen.findByRole('heading', { name: 'Bullace', level: 1 })).toBeTruthy()
  })

  it('says when the list cannot be read', async () => {
    showApp('/fruits', { ...library, 'fruits.origins': () => refused('bookDamaged') })
    expect((await screen.findByRole('alert')).textContent).toContain('damaged')
  })
})
