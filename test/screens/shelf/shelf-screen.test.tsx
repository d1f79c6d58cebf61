import { screen, within } from '@testing-library/react'
import { beforeAll, describe, expect, it } from 'vitest'
import { refused } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'
import { bigBatches, bigFruits, bigShelf } from './big-shelf.ts'
import { shelfAnswers, shelfLots } from './shelf-fixture.ts'

// The screen is fetched when it is first opened; here that would count against the first test.
beforeAll(() => import('../../../renderer/screens/shelf/shelf-screen.tsx'))

const show = (path = '/shelf', answers = {}) => showApp(path, { ...shelfAnswers, ...answers })

const spaced = (element: Element) => element.textContent?.replaceAll('\u00a0', ' ') ?? ''
const rows = () => screen.getAllByRole('row').slice(1)
/** An option by its words, whatever kind of space they hold. */
const optionOf = (select: string, words: string) => {
  const options = within(screen.getByRole('combobox', { name: select })).getAllByRole('option')
  return options.find((option) => spaced(option) === words) ?? words
}
const names = () => rows().map((row) => row.getAttribute('aria-label'))

describe('the shelf', () => {
  it('answers first: how much there is, how it stands, what to drink first', async () => {
    show()
    expect(await screen.findByText('26 bottles of 4 lots')).toBeTruthy()
    expect(screen.getAllByText('2 ready').length).toBeGreaterThan(0)
    const lead = screen.getByText(/Drink these first/)
    expect(within(lead).getByRole('link', { name: 'Raspberry 2024' }).getAttribute('href')).toBe(
      '#/shelf/raspberry-lot',
    )
    expect(spaced(lead)).toBe('Drink these first: Raspberry 2024, Quince 2023')
  })

  it('shows each lot in a row, what fades first at the top', async () => {
    show()
    await screen.findByText('26 bottles of 4 lots')
    expect(names()).toEqual(['Raspberry 2024', 'Quince 2023', 'Damson 2021', 'Damson 2025'])
    const row = screen.getByRole('row', { name: 'Raspberry 2024' })
    for (const words of [
      '500 ml',
      '7of 12',
      'Cellar rack 5, Kitchen dresser 2',
      '28.0 % vol',
      '€6.50',
    ])
      expect(spaced(row)).toContain(words)
    expect(spaced(row)).toContain('since about Aug 2026')
    expect(screen.getByText(/4 lots: 26 bottles/).textContent).toMatch(
      /13\.65.L, at least €162\.50/,
    )
  })

  it('says how bottles come here while there are none, and what failed', async () => {
    const { bridge } = show('/shelf', { 'shelf.lots': shelfLots({ lots: [], drinkFirst: [] }) })
    expect(await screen.findByText(/No bottles yet/)).toBeTruthy()
    bridge.answer({ 'shelf.lots': () => refused('bookBusy') })
    bridge.bookChanged()
    expect((await screen.findByRole('alert')).textContent).toContain('Another program')
  })

  it('filters by phase, kind, vintage, size and place, and by words', async () => {
    const { user } = show()
    await screen.findByText('26 bottles of 4 lots')
    await user.click(screen.getByRole('radio', { name: '2 ready' }))
    expect(names()).toEqual(['Quince 2023', 'Damson 2021'])
    await user.selectOptions(
      screen.getByRole('combobox', { name: 'Size' }),
      optionOf('Size', '700 ml'),
    )
    expect(names()).toEqual(['Damson 2021'])
    expect(screen.getByText(/^1 lot: 4 bottles/)).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Show all' }))
    await user.selectOptions(screen.getByRole('combobox', { name: 'Place' }), 'Kitchen dresser')
    expect(names()).toEqual(['Raspberry 2024'])
    // Only what stands there counts.
    expect(screen.getByText(/^1 lot: 2 bottles/)).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Show all' }))
    await user.selectOptions(screen.getByRole('combobox', { name: 'Vintage' }), '2025')
    expect(names()).toEqual(['Damson 2025'])
    await user.click(screen.getByRole('button', { name: 'Show all' }))
    await user.type(screen.getByRole('searchbox'), 'dresser RASP')
    expect(names()).toEqual(['Raspberry 2024'])
    await user.type(screen.getByRole('searchbox'), ' nowhere')
    expect(screen.getByText('No lot matches.')).toBeTruthy()
  })

  it('sorts by its headings and says which', async () => {
    const { user } = show()
    await screen.findByText('26 bottles of 4 lots')
    await user.click(screen.getByRole('button', { name: /^Left/ }))
    expect(names()).toEqual(['Quince 2023', 'Damson 2021', 'Raspberry 2024', 'Damson 2025'])
    await user.click(screen.getByRole('button', { name: /^Left/ }))
    expect(names()[0]).toBe('Damson 2025')
    expect(screen.getByRole('columnheader', { name: /^Left/ }).getAttribute('aria-sort')).toBe(
      'descending',
    )
  })

  it('keeps lots that are gone out of sight until asked', async () => {
    const { user } = show()
    await screen.findByText('26 bottles of 4 lots')
    expect(screen.queryByRole('row', { name: 'Damson 2019' })).toBeNull()
    await user.click(screen.getByRole('checkbox', { name: 'Lots that are gone too' }))
    const row = await screen.findByRole('row', { name: 'Damson 2019' })
    expect(row.textContent).toContain('all gone')
    expect(within(row).queryByRole('button', { name: /Draw/ })).toBeNull()
  })

  it('is walked by arrows and opens a lot by Enter', async () => {
    const { user } = show()
    await screen.findByText('26 bottles of 4 lots')
    const [first, second] = rows()
    first?.focus()
    await user.keyboard('{ArrowDown}')
    expect(document.activeElement).toBe(second)
    expect([first?.tabIndex, second?.tabIndex]).toEqual([-1, 0])
    await user.keyboard('{ArrowRight}{ArrowRight}')
    expect(document.activeElement?.getAttribute('aria-label')).toBe('Draw: Quince 2023')
    await user.keyboard('{End}')
    expect(document.activeElement?.getAttribute('aria-label')).toBe('Damson 2025')
    await user.keyboard('{Home}{Enter}')
    expect(window.location.hash).toBe('#/shelf/raspberry-lot')
  })

  it('draws only the rows in sight of two thousand lots, and counts them all', async () => {
    const lots = bigShelf(2000)
    show('/shelf', {
      'shelf.lots': { lots, opened: [], drinkFirst: [] },
      'batches.list': bigBatches(),
      'fruits.list': bigFruits(),
    })
    expect(await screen.findByText('40,000 bottles of 2,000 lots')).toBeTruthy()
    const grid = screen.getByRole('grid')
    expect(grid.getAttribute('aria-rowcount')).toBe('2001')
    const drawn = within(grid).getAllByRole('row').length
    expect(drawn).toBeGreaterThan(5)
    expect(drawn).toBeLessThan(60)
  })

  it('lists what to drink first with the reason, an opened bottle by its level', async () => {
    show('/shelf/view/first')
    await screen.findByText('What loses by waiting, the soonest first.')
    const [opened, fading, soon] = screen
      .getAllByRole('listitem')
      .filter((item) => item.querySelector('svg') && item.querySelector('button'))
    expect(spaced(opened as Element)).toContain(
      'It is open: air gets at it. Best by about 1 Jan 2027.',
    )
    expect(
      within(opened as HTMLElement)
        .getByRole('img')
        .getAttribute('aria-label'),
    ).toContain('filled to 210')
    expect(spaced(fading as Element)).toContain('It is fading already. Was best by about 1 Aug.')
    expect(spaced(soon as Element)).toContain('It begins to fade soon.')
  })
})

describe('places', () => {
  it('tells how warm and light each is, and how many bottles stand there', async () => {
    show('/shelf/view/places')
    const table = await screen.findByRole('table', { name: 'Places on the shelf' })
    const told = within(table).getAllByRole('row').slice(1).map(spaced)
    expect(told[0]).toMatch(/^Cellar rack 12 °Cdark9/)
    expect(told[1]).toMatch(/^Kitchen dresser 21 °Cin daylight2/)
    expect(told[2]).toMatch(/^Without a place15/)
  })

  it('adds one, and refuses a name that is taken or missing', async () => {
    const { bridge, user } = show('/shelf/view/places', {
      'shelves.add': (asked: unknown) => asked,
    })
    await user.click(await screen.findByRole('button', { name: 'Add a place' }))
    await user.click(screen.getByRole('button', { name: 'Add it' }))
    expect(screen.getByText('Give it a name.')).toBeTruthy()
    await user.type(screen.getByRole('textbox', { name: /^Name/ }), 'cellar RACK')
    expect(screen.getByText('Another place has this name.')).toBeTruthy()
    await user.type(screen.getByRole('textbox', { name: /^Name/ }), ' two')
    const warmth = screen.getByRole('textbox', { name: /How warm/ })
    await user.clear(warmth)
    await user.type(warmth, '57 °C')
    await user.click(screen.getByRole('button', { name: 'Add it' }))
    expect(screen.getByText(/57.°C is out of range/)).toBeTruthy()
    expect(bridge.requests('shelves.add')).toEqual([])
    await user.clear(warmth)
    await user.type(warmth, '9')
    await user.click(screen.getByRole('radio', { name: 'dim' }))
    await user.click(screen.getByRole('button', { name: 'Add it' }))
    expect(bridge.requests('shelves.add')).toMatchObject([
      { name: 'cellar RACK two', temperatureC: 9, light: 'dim', isRetired: false },
    ])
  })

  it('does not retire a place where bottles stand', async () => {
    const { bridge, user } = show('/shelf/view/places')
    await user.click(await screen.findByRole('button', { name: 'Change Cellar rack' }))
    await user.click(screen.getByRole('checkbox', { name: 'No longer used' }))
    expect(screen.getByText('Bottles still stand there. Move them first.')).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Keep it' }))
    expect(bridge.requests('shelves.change')).toEqual([])
  })
})
