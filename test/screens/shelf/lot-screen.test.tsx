import { screen, waitFor, within } from '@testing-library/react'
import { beforeAll, describe, expect, it } from 'vitest'
import { refused } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'
import { goneLot, lineage, recorded, shelfAnswers, shelfPage, taste } from './shelf-fixture.ts'

beforeAll(async () => {
  await import('../../../renderer/screens/shelf/lot/lot-screen.tsx')
  await import('../../../renderer/screens/lineage/lineage-screen.tsx')
})

const show = (path = '/shelf/raspberry-lot', answers = {}) =>
  showApp(path, { ...shelfAnswers, ...answers })

const spaced = (element: Element) => element.textContent?.replaceAll('\u00a0', ' ') ?? ''
const region = (name: string) => screen.findByRole('region', { name })

describe('a lot’s page', () => {
  it('says what is left and how its window stands, and what it is', async () => {
    show()
    expect(await screen.findByRole('heading', { name: 'Raspberry 2024', level: 1 })).toBeTruthy()
    expect(screen.getByText('7 of 12 left; fading since about Aug 2026.')).toBeTruthy()
    const whole = spaced(document.body)
    for (const words of ['28.0 % vol', '210 g/L', 'Acid 9.0 g/L', '€6.50 a bottle, €0.52 a glass'])
      expect(whole).toContain(words)
    expect(spaced(await region('Where it stands'))).toContain('5 bottles on Cellar rack')
    expect(spaced(await region('How it was kept'))).toContain(
      'From 8 Jan 2025: 2 bottles on Kitchen dresser',
    )
    expect(screen.getByRole('link', { name: 'Print labels' }).getAttribute('href')).toBe(
      '#/labels?lots=raspberry-lot',
    )
  })

  it('tells its window in a sentence, with the reasons', async () => {
    show()
    const own = await region('Its window')
    expect(spaced(own)).toContain(
      'fading now. Ready about Jan 2025 (Oct 2024 to Apr 2025); fades from about Aug 2026 (May 2026 to Nov 2026).',
    )
    expect(within(own).getByText('it stood in the light, which bleaches it')).toBeTruthy()
    expect(within(own).getByText('you tasted it fading')).toBeTruthy()
  })

  it('tells how much colour is left, and as a table', async () => {
    const { user } = show()
    const own = await region('Fresh colour left')
    expect(spaced(own)).toContain(
      'About 62% of the fresh red it was bottled with is left now (50% to 72%). Brick red and brown stay.',
    )
    await user.click(within(own).getByRole('button', { name: 'Show as table' }))
    const table = within(own).getByRole('table', { name: 'Fresh colour left over time' })
    expect(within(table).getAllByRole('row')).toHaveLength(14)
  })

  it('says nothing of colour where it fades little', async () => {
    show('/shelf/raspberry-lot', { 'shelf.page': shelfPage({ colour: [] }) })
    await region('Its window')
    expect(screen.queryByRole('region', { name: 'Fresh colour left' })).toBeNull()
  })

  it('draws a panel for each axis that was judged, and tells it in words', async () => {
    show()
    const own = await region('Tastings')
    const panels = within(own).getAllByRole('figure')
    expect(panels.map((panel) => panel.getAttribute('aria-label')?.split(':')[0])).toEqual([
      'Aroma',
      'Fruit',
      'Sweetness',
      'Heat',
      'Colour',
    ])
    expect(panels[3]?.getAttribute('aria-label')).toBe(
      'Heat: Raspberry 2024 6 on 20 Dec 2024, 3 on 20 Dec 2025',
    )
    const [newest] = within(within(own).getByRole('list', { name: 'Tastings' })).getAllByRole(
      'listitem',
    )
    expect(spaced(newest as Element)).toContain('The fruit steps back.')
  })

  it('puts another lot on the same axes, in panels, in the table and in numbers', async () => {
    const other = shelfPage({
      shelfLot: { ...goneLot, costPerBottle: 480 },
      tastings: [
        recorded(
          taste({ bottleLotId: 'gone', at: '2021-01-10T18:00:00Z', scores: { aroma: 9 } }),
          1,
        ),
      ],
    })
    const { user } = show('/shelf/raspberry-lot', {
      'shelf.page': ({ bottleLotId }: { bottleLotId: string }) =>
        bottleLotId === 'gone' ? other : shelfPage(),
    })
    const own = await region('Tastings')
    await user.selectOptions(within(own).getByRole('combobox', { name: /Compare with/ }), 'gone')
    await waitFor(() =>
      expect(within(own).getAllByRole('figure')[0]?.getAttribute('aria-label')).toContain(
        'Damson 2019 9 on 10 Jan 2021',
      ),
    )
    const numbers = within(own).getByRole('table', { name: 'Both lots in numbers' })
    expect(spaced(within(numbers).getByRole('row', { name: /Cost/ }))).toContain('€6.50€4.80')
    await user.click(within(own).getByRole('button', { name: 'Show as table' }))
    const table = within(own).getByRole('table', { name: 'Scores of each tasting, 0 to 10' })
    expect(within(table).getAllByRole('row')).toHaveLength(5)
    await user.click(within(own).getByRole('button', { name: 'Stop comparing' }))
    expect(within(own).queryByRole('table', { name: 'Both lots in numbers' })).toBeNull()
  })

  it('draws where it came from, each place named with what came and went', async () => {
    const { user } = show()
    const own = await region('Where it came from')
    const jar = within(own).getByRole('button', { name: /^North jar, Raspberry, north hedge/ })
    expect(spaced(jar)).toContain('1.35 kg')
    expect(spaced(jar)).toContain('From Spirit 96.0 % vol 600 g')
    expect(spaced(jar)).toContain('To Bottles: Raspberry 2024 1.35 kg.')
    await user.click(within(own).getByRole('radio', { name: 'Sugar' }))
    expect(within(own).queryByRole('button', { name: /^Spirit/ })).toBeNull()
    await user.click(within(own).getByRole('button', { name: 'Show as table' }))
    const table = within(own).getByRole('table', { name: 'What passed from place to place' })
    expect(within(table).getAllByRole('row')).toHaveLength(lineage.links.length + 1)
    const origins = spaced(await region('What is in it'))
    expect(origins).toContain('The tap500 g0 g0 g37%')
  })

  it('lists its moves, the newest first', async () => {
    show()
    const own = await region('Moves')
    const told = within(own).getAllByRole('rowheader').map(spaced)
    expect(told[0]).toContain('Tasted Raspberry 2024: fading')
    expect(told.at(-1)).toBe('Filled 12 bottles of 500 ml from North jar')
  })

  it('offers only a tasting once all is gone', async () => {
    show('/shelf/gone', { 'shelf.page': shelfPage({ shelfLot: goneLot, opened: [] }) })
    expect(await screen.findByText('All of it is gone.')).toBeTruthy()
    expect(screen.queryByRole('button', { name: 'Draw' })).toBeNull()
    expect(screen.getAllByRole('button', { name: 'Taste' }).length).toBeGreaterThan(0)
  })

  it('says when there is no such lot', async () => {
    show('/shelf/nothing', { 'shelf.page': () => refused('notFound') })
    expect((await screen.findByRole('alert')).textContent).toContain('no longer in the book')
  })
})

describe('a purchase followed forward', () => {
  it('is led to from the pantry, and tells where it is now', async () => {
    const { user } = show('/cellar-room')
    await user.click(
      await screen.findByRole('link', { name: /^Where did it go\? Spirit 96\.0.% vol$/ }),
    )
    const table = await screen.findByRole('table', { name: 'Where the purchase is now' })
    expect(within(table).getAllByRole('row').slice(1).map(spaced)).toEqual([
      'Bottles: Raspberry 2024450 g300 g0 g75%',
      'Drunk150 g100 g0 g25%',
    ])
  })

  it('says so where none of it has gone anywhere yet', async () => {
    show('/lineage/lot/spirit', {
      'lineage.of': { nodes: [], links: [], origins: [], destinations: [] },
    })
    expect(await screen.findByText('None of it has gone anywhere yet.')).toBeTruthy()
  })
})
