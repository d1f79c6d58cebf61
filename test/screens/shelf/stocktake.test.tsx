import { screen, waitFor, within } from '@testing-library/react'
import { beforeAll, describe, expect, it } from 'vitest'
import type { Move } from '../../../shared/schemas/moves.ts'
import {
  corrections,
  mostAtOnce,
  stocktakeRows,
} from '../../../renderer/screens/shelf/stocktake/stocktake.ts'
import { bottleLot } from '../cellar-fixture.ts'
import { showApp } from '../show.tsx'
import { preview, shelfAnswers } from './shelf-fixture.ts'

beforeAll(() => import('../../../renderer/screens/shelf/stocktake/stocktake-screen.tsx'))

const show = (answers = {}, path = '/shelf/stocktake/rack') =>
  showApp(path, { ...shelfAnswers, ...answers })

const there = (name: string) => screen.findByRole('textbox', { name: `There: ${name}` })

describe('a stocktake', () => {
  it('lists what is booked on the place, and records only what differs, as one group', async () => {
    const { bridge, user } = show()
    expect(await screen.findByText(/2 lots are booked here/)).toBeTruthy()
    await user.type(await there('Damson 2021'), '4{Enter}')
    expect(document.activeElement).toBe(await there('Raspberry 2024'))
    await user.keyboard('3')
    expect(screen.getByText('−2')).toBeTruthy()
    expect(screen.getByText('as booked')).toBeTruthy()
    expect(screen.getByText('2 of 2 counted, 1 differs.')).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Record the differences' }))
    const [asked, ...more] = bridge.requests('moves.record')
    expect(more).toEqual([])
    expect(asked?.moves).toMatchObject([
      {
        kind: 'correct',
        note: 'Stocktake of Cellar rack',
        found: { bottleLotId: 'raspberry-lot', count: 3, shelfId: 'rack' },
      },
    ])
    const told = await screen.findByRole('status', { name: 'What was done last' })
    await waitFor(() =>
      expect(told.textContent).toBe(
        'Recorded: Counted 3 bottles of Raspberry 2024 on Cellar rack.',
      ),
    )
    await user.click(screen.getByRole('button', { name: 'Undo' }))
    expect(bridge.requests('moves.undo')).toMatchObject([{ groupId: 'g' }])
  })

  it('takes the rest as booked in one press, and has nothing to record then', async () => {
    const { user } = show()
    await there('Damson 2021')
    await user.click(screen.getByRole('button', { name: 'The others are as booked' }))
    expect(screen.getByText('2 of 2 counted, none differs.')).toBeTruthy()
    expect(
      screen.getByRole('button', { name: 'Record the differences' }).getAttribute('data-disabled'),
    ).toBe('true')
  })

  it('adds a lot that is not booked here, and takes it out again', async () => {
    const { bridge, user } = show()
    await there('Damson 2021')
    const add = screen.getByRole('combobox', { name: /A lot found/ })
    await user.selectOptions(add, 'gone')
    await user.type(await there('Damson 2019'), '2')
    expect(screen.getByText('+2')).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Take out Damson 2019' }))
    expect(screen.queryByText('+2')).toBeNull()
    await user.selectOptions(screen.getByRole('combobox', { name: /A lot found/ }), 'gone')
    await user.type(await there('Damson 2019'), '1')
    await user.click(screen.getByRole('button', { name: 'Record the differences' }))
    expect(bridge.requests('moves.record')[0]?.moves).toMatchObject([
      { found: { bottleLotId: 'gone', count: 1, shelfId: 'rack' } },
    ])
  })

  it('says at the row that more were found than were ever filled, and sends nothing', async () => {
    const { bridge, user } = show({
      'moves.preview': ({ moves }: { moves: Move[] }) => ({
        ...preview,
        refusals: moves.flatMap((move, index) =>
          move.kind === 'correct' && 'bottleLotId' in move.found && move.found.count > 10
            ? [
                {
                  index,
                  refusal: {
                    code: 'neverFilled' as const,
                    place: `bottles:${move.found.bottleLotId}`,
                    unit: 'bottles' as const,
                    asked: move.found.count,
                    available: 12,
                    nearest: 10,
                  },
                },
              ]
            : [],
        ),
      }),
    })
    await user.type(await there('Damson 2021'), '3')
    await user.type(await there('Raspberry 2024'), '31')
    const row = screen.getByRole('row', { name: /Raspberry 2024/ })
    await waitFor(() => expect(row.textContent).toMatch(/\+26.*12 bottles/))
    const field = await there('Raspberry 2024')
    expect(field.getAttribute('aria-invalid')).toBe('true')
    expect(
      within(screen.getByRole('row', { name: /Damson 2021/ })).queryByText(/12 bottles/),
    ).toBeNull()
    expect(screen.getByText(/1 count cannot be/)).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Record the differences' }))
    await user.keyboard('{Enter}')
    expect(bridge.requests('moves.record')).toEqual([])
  })

  it.each(['many', '-2', '3.5'])('does not take %s for a count', async (text) => {
    const { user } = show()
    const field = await there('Damson 2021')
    await user.type(field, text)
    expect(field.getAttribute('aria-invalid')).toBe('true')
    expect(screen.getByText(/1 count cannot be/)).toBeTruthy()
  })

  it('counts what has no place, and knows no place that is not there', async () => {
    show({}, '/shelf/stocktake')
    expect(await screen.findByRole('heading', { name: 'Stocktake: Without a place' })).toBeTruthy()
    expect(await there('Quince 2023')).toBeTruthy()
    window.location.hash = '/shelf/stocktake/attic'
    expect(await screen.findByText(/There is no such place/)).toBeTruthy()
  })
})

describe('corrections', () => {
  const lots = Array.from({ length: 60 }, (_, index) =>
    bottleLot({ id: `lot-${index}`, count: 5, places: [{ shelfId: 'rack', count: 5 }] }),
  )
  const rows = stocktakeRows(lots, 'rack', [], 'en-GB')
  const counts = new Map(lots.map(({ id }) => [id, 4]))

  it('go at most as many at once as the book takes', () => {
    const moves = corrections(rows, counts, {
      shelfId: 'rack',
      at: '2026-11-25T10:00:00Z',
      note: '',
    })
    expect(moves).toHaveLength(mostAtOnce)
  })

  it('leave out what is as booked and what was not counted', () => {
    const some = new Map([
      ['lot-1', 5],
      ['lot-2', 0],
    ])
    const moves = corrections(rows, some, { shelfId: null, at: '2026-11-25T10:00:00Z', note: '' })
    expect(moves.map(({ found }) => found)).toEqual([
      { bottleLotId: 'lot-2', count: 0, shelfId: null },
    ])
  })
})
