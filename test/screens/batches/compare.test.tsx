import { screen, waitFor, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { compareWithAkin } from '../../../renderer/parts/names/compare-path.ts'
import type { ComparedBatch } from '../../../shared/schemas/steeping.ts'
import { batch, batches, summary } from '../cellar-fixture.ts'
import { showApp } from '../show.tsx'

const compared = (batchId: string, restPctVol: number): ComparedBatch => ({
  batchId,
  points: Array.from({ length: 150 }, (_, day) => ({
    day,
    strengthPctVol: restPctVol + 20 * Math.exp(-day / 10),
    sugarGPerL: 150,
    acidGPerL: 5,
    volumeMl: 2000,
    ethanolInFruitMl: 90,
  })),
})

const showCompare = (path: string) =>
  showApp(path, {
    'batches.compare': ({ batchIds }) => batchIds.map((id, at) => compared(id, 30 + at)),
  })

describe('CompareScreen', () => {
  it('draws a line for each batch with its name, and links to them in the legend', async () => {
    showCompare('/compare/damson,raspberry')
    const figure = await screen.findByRole('figure', {}, { timeout: 10_000 })
    expect(figure.textContent).toContain(
      'Strength of Hedge damson, Raspberry, north hedge from day 0 to day 90.',
    )
    expect(figure.querySelectorAll('path.recharts-line-curve')).toHaveLength(2)
    const legend = screen.getByRole('list', { name: 'Batches compared' })
    expect(within(legend).getByRole('link', { name: 'Hedge damson' })).toHaveProperty(
      'hash',
      '#/batches/damson',
    )
  })

  it('switches the quantity, and has a table twin', async () => {
    const { user } = showCompare('/compare/damson,raspberry')
    await user.click(await screen.findByRole('radio', { name: 'Sugar' }))
    await screen.findByRole('figure', { name: /^Sugar of/ })
    await user.click(screen.getByRole('radio', { name: 'Strength' }))
    await user.click(screen.getByRole('button', { name: 'Show as table' }))
    const rows = within(screen.getByRole('table', { name: 'Strength by day' })).getAllByRole('row')
    expect(rows[0]?.textContent).toBe('DayHedge damsonRaspberry, north hedge')
    expect(rows[1]?.textContent.replaceAll('\u00a0', ' ')).toBe('Day 050.0 % vol51.0 % vol')
  })

  it('puts one more beside them, and takes one out', async () => {
    const { user, bridge } = showCompare('/compare/damson')
    await user.selectOptions(await screen.findByLabelText(/^Put beside them/), 'Quince and ginger')
    await waitFor(() =>
      expect(bridge.requests('batches.compare').at(-1)?.batchIds).toEqual(['damson', 'quince']),
    )
    await user.click(await screen.findByRole('button', { name: 'Take out Hedge damson' }))
    await waitFor(() =>
      expect(bridge.requests('batches.compare').at(-1)?.batchIds).toEqual(['quince']),
    )
  })

  it('says what to do when no batch is chosen', async () => {
    const { bridge } = showCompare('/compare')
    await screen.findByText(/No batch is chosen/)
    expect(bridge.requests('batches.compare')).toHaveLength(0)
  })
})

describe('choosing in the list', () => {
  it('compares the batches that are ticked, and opens none meanwhile', async () => {
    const { user } = showCompare('/batches')
    await user.click(await screen.findByRole('button', { name: 'Compare…' }))
    const table = screen.getByRole('grid', { name: 'Choose batches to compare' })
    await user.click(within(table).getByRole('row', { name: /Hedge damson/ }))
    await user.click(within(table).getByRole('row', { name: /Quince and ginger/ }))
    await user.click(screen.getByRole('button', { name: 'Compare 2 batches' }))
    await waitFor(() => expect(window.location.hash).toBe('#/compare/damson,quince'))
  })
})

describe('compareWithAkin', () => {
  it('puts the newest others of the same fruit beside a batch, four at most', () => {
    const years = [2020, 2021, 2022, 2023, 2024].map((year) =>
      summary({ batch: batch({ id: `damson-${year}` }), startedAt: `${year}-09-01T08:00:00Z` }),
    )
    expect(compareWithAkin(summary(), [...batches, ...years])).toBe(
      '/compare/damson,damson-2024,damson-2023,damson-2022,damson-2021',
    )
  })
})
