import { screen, within } from '@testing-library/react'
import { beforeAll, describe, expect, it } from 'vitest'
import { showApp } from '../show.tsx'
import { bigShelf } from './big-shelf.ts'
import { shelfAnswers } from './shelf-fixture.ts'

beforeAll(() => import('../../../renderer/screens/shelf/shelf-screen.tsx'))

const show = (path: string, answers = {}) => showApp(path, { ...shelfAnswers, ...answers })
const spaced = (element: Element) => element.textContent?.replaceAll('\u00a0', ' ') ?? ''

describe('the ageing of the shelf', () => {
  it('names each bar by its lot and window, and tells it when the keyboard reaches it', async () => {
    show('/shelf/view/ageing')
    const bar = await screen.findByRole('link', { name: /^Damson 2025, 14 bottles: young now/ })
    expect(bar.getAttribute('href')).toBe('#/shelf/damson-new')
    bar.focus()
    expect(
      await screen.findByText(/^Damson 2025, 14 bottles: young now\. Ready about Apr 2027/),
    ).toBeTruthy()
    expect(screen.getByRole('heading', { name: 'Damson' })).toBeTruthy()
  })

  it('looks at some years, and moves on and back', async () => {
    const { user } = show('/shelf/view/ageing')
    await user.click(await screen.findByRole('radio', { name: 'Three years' }))
    const before = spaced(document.body)
    await user.click(screen.getByRole('button', { name: 'Later' }))
    expect(spaced(document.body)).not.toBe(before)
    await user.click(screen.getByRole('button', { name: 'Earlier' }))
    expect(spaced(document.body)).toBe(before)
  })

  it('has a table twin with the bands', async () => {
    const { user } = show('/shelf/view/ageing')
    await user.click(await screen.findByRole('button', { name: 'Show as table' }))
    const table = screen.getByRole('table', { name: 'Lots and their windows' })
    const row = within(table).getByRole('row', { name: /Raspberry 2024/ })
    expect(spaced(row)).toContain('Aug 2026 (May 2026 – Nov 2026)')
    expect(within(table).getAllByRole('row')).toHaveLength(5)
  })

  it('draws only the bars in sight of two thousand', async () => {
    show('/shelf/view/ageing', {
      'shelf.lots': { lots: bigShelf(2000), opened: [], drinkFirst: [] },
    })
    const list = await screen.findByRole('list', { name: 'Lots and their windows' })
    const drawn = within(list).getAllByRole('link').length
    expect(drawn).toBeGreaterThan(5)
    expect(drawn).toBeLessThan(80)
  })
})

describe('the stock of the shelf', () => {
  it('answers for everything, then for a kind, and says when history is borrowed', async () => {
    const { user } = show('/shelf/view/stock')
    expect(
      await screen.findByText(/^13\.65.L in bottles, and about 2\.76.L gone in a year\./),
    ).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Show Damson in the chart' }))
    expect(screen.getByText(/^9\.80.L in bottles.*Too little of it was ever taken/)).toBeTruthy()
  })

  it('tells each kind’s gifts and when it runs out', async () => {
    show('/shelf/view/stock')
    const table = await screen.findByRole('table', { name: 'Stock by kind' })
    const [damson, raspberry, all] = within(table).getAllByRole('row').slice(1).map(spaced)
    expect(damson).toContain('30%lasts beyond the forecast')
    expect(raspberry).toContain('30%about Feb 2028')
    expect(all).toContain('Everything26')
  })

  it('asks for as many years as are looked back at', async () => {
    const { bridge, user } = show('/shelf/view/stock')
    await user.click(await screen.findByRole('radio', { name: '10 years' }))
    expect(bridge.requests('shelf.stock').map(({ pastMonths }) => pastMonths)).toEqual([60, 120])
  })

  it('has a table twin, the forecast with its band', async () => {
    const { user } = show('/shelf/view/stock')
    await screen.findByRole('table', { name: 'Stock by kind' })
    await user.click(screen.getByRole('button', { name: 'Show as table' }))
    const table = screen.getByRole('table', { name: 'Stock by month' })
    const [, newest] = within(table).getAllByRole('row')
    expect(spaced(newest as Element)).toMatch(/forecast.*ml|forecast.*L/)
    expect(within(newest as HTMLElement).getAllByRole('cell')[1]?.textContent).not.toBe('')
    const [first] = within(table).getAllByRole('row').slice(-1)
    expect(within(first as HTMLElement).getAllByRole('cell')[1]?.textContent).toBe('')
  })
})
