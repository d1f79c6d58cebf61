import { screen, waitFor, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { plainName } from '../../../shared/plain.ts'
import type { Sheet } from '../../../shared/schemas/sheets.ts'
import type { Answers } from '../fake-bridge.ts'
import { refused } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'

const bottlesOf = ({ rows: asked }: Sheet) => asked.flatMap((row) => ('goods' in row ? [] : row))

/** Judges as the service does, as far as these rows need it. */
const book: Answers = {
  'shelves.list': [],
  'shelf.lots': { lots: [], opened: [], drinkFirst: [] } as never,
  'bottles.list': [],
  'pantry.list': [],
  'sheets.look': ({ sheet }) => ({
    verdicts: bottlesOf(sheet).map(({ name }, index) => {
      const earlier = bottlesOf(sheet).findIndex((row) => plainName(row.name) === plainName(name))
      if (name === 'Old sloe') return { verdict: 'twin', of: { lotId: 'old' } }
      if (earlier < index) return { verdict: 'twin', of: { rowIndex: earlier } }
      return { verdict: 'ready', batchId: null }
    }),
  }),
  'sheets.bringIn': { groupId: 'g', changes: [] },
}

const heads = 'Name;Bottled;Bottles;Size (ml);Strength;Sugar\n'
const rows = [
  'Sloe on rye;2021-12-04;6;500;31;160',
  'Quince with honey;2022;nine;350;28;190',
  'Sloe on rye;2021-12-04;6;500;31;160',
  'Old sloe;2019;3;500;31;160',
  'Damson;31.02.2021;5;500;30;150',
]

async function choose(shown: ReturnType<typeof showApp>, text: string) {
  await shown.user.upload(await screen.findByLabelText('CSV file'), new File([text], 'list.csv'))
}

async function toRows(shown: ReturnType<typeof showApp>, text: string) {
  await choose(shown, text)
  const next = await screen.findByRole('button', { name: 'Go on to the columns' })
  await waitFor(() => expect(next).toHaveProperty('disabled', false))
  await shown.user.click(next)
  await shown.user.click(await screen.findByRole('button', { name: 'Look at the rows' }))
}

describe('coming from a spreadsheet', () => {
  it('shows what becomes of each row; mends one, leaves one out, and sends the rest as one', async () => {
    const shown = showApp('/bring-in', book)
    const { user, bridge } = shown
    await toRows(shown, heads + rows.join('\n'))
    await screen.findByText(/1 row ready: 6 bottles, 3\.00\sL/)
    expect(screen.getByText('2 to mend')).toBeTruthy()
    expect(screen.getByText('2 left out')).toBeTruthy()
    expect(
      screen.getByText(/^6 bottles of 500\sml, .* in a new batch “Sloe on rye”\.$/),
    ).toBeTruthy()
    expect(screen.getByText('The same as row 2. Left out unless you tick it.')).toBeTruthy()
    expect(screen.getByText(/^In the book already/)).toBeTruthy()
    expect(screen.getByText(/^Bottled: There is no such day/)).toBeTruthy()
    const accept = () => screen.getByRole('button', { name: /^Bring in \d+ rows?$/ })
    expect(accept()).toHaveProperty('disabled', true)

    const count = screen.getByLabelText('Row 3: Bottles')
    expect(count.getAttribute('aria-invalid')).toBe('true')
    await user.clear(count)
    await user.type(count, '9{Enter}')
    await screen.findByText(/2 rows ready: 15 bottles/)
    await user.click(screen.getByRole('checkbox', { name: '6' }))
    await screen.findByText('0 to mend')
    await user.click(screen.getByRole('checkbox', { name: '5' }))
    await screen.findByText(/3 rows ready: 18 bottles/)

    await user.click(accept())
    await screen.findByText(/^Brought in: 18 bottles/)
    const sent = bridge.requests('sheets.bringIn')
    expect(sent).toHaveLength(1)
    expect(
      sent
        .flatMap(({ sheet }) => bottlesOf(sheet))
        .map(({ name, count: bottles, evenIfThere }) => [name, bottles, evenIfThere]),
    ).toEqual([
      ['Sloe on rye', 6, undefined],
      ['Quince with honey', 9, undefined],
      ['Old sloe', 3, true],
    ])
  })

  it('keeps what was chosen and mended when going back and forth', async () => {
    const shown = showApp('/bring-in', book)
    const { user } = shown
    await toRows(shown, heads + rows.join('\n'))
    const count = await screen.findByLabelText('Row 3: Bottles')
    await user.clear(count)
    await user.type(count, '9{Enter}')
    await screen.findByText(/2 rows ready/)
    await user.click(screen.getByRole('button', { name: 'Back' }))
    await user.selectOptions(screen.getByLabelText('What “Size (ml)” is'), 'Bottle size')
    await user.click(screen.getByRole('button', { name: 'Back' }))
    await screen.findByText(/^Chosen: list\.csv/)
    await user.click(screen.getByRole('button', { name: 'Go on to the columns' }))
    await user.click(await screen.findByRole('button', { name: 'Look at the rows' }))
    await screen.findByText(/2 rows ready/)
    expect(screen.getByLabelText('Row 3: Bottles')).toHaveProperty('value', '9')
  })

  it('begins anew with another file: nothing mended or left out in one touches the next', async () => {
    const shown = showApp('/bring-in', book)
    const { user } = shown
    await toRows(shown, heads + rows[0])
    await screen.findByText(/1 row ready: 6 bottles/)
    const count = screen.getByLabelText('Row 2: Bottles')
    await user.clear(count)
    await user.type(count, '8{Enter}')
    await screen.findByText(/1 row ready: 8 bottles/)
    await user.click(screen.getByRole('checkbox', { name: '2' }))
    await screen.findByText('1 left out')
    await user.click(screen.getByRole('button', { name: 'Back' }))
    await user.click(screen.getByRole('button', { name: 'Back' }))
    await toRows(shown, `${heads}Quince with honey;2022;3;350;28;190`)
    expect(await screen.findByText(/1 row ready: 3 bottles/)).toBeTruthy()
  })

  it('asks what can be read two ways, and for what no column tells', async () => {
    const shown = showApp('/bring-in', book)
    const { user } = shown
    await choose(shown, 'Name;Bottled;Bottles;Size (ml);Strength\nSloe;4/12/2021;6;500;31\n')
    await user.click(await screen.findByRole('button', { name: 'Go on to the columns' }))
    const next = await screen.findByRole('button', { name: 'Look at the rows' })
    expect(next).toHaveProperty('disabled', true)
    expect(screen.getByText('Still needed: Sugar.')).toBeTruthy()
    const same = within(screen.getByRole('region', { name: 'Not in the file' }))
    await user.type(same.getByLabelText('Sugar'), '160')
    await screen.findByText('A column above can be read two ways: say which.')
    await user.selectOptions(screen.getByLabelText('Order of dates'), 'day, month, year')
    await waitFor(() => expect(next).toHaveProperty('disabled', false))
    await user.click(next)
    await screen.findByText(/^6 bottles of 500\sml, .*160\sg\/L, of 4 Dec 2021/)
  })

  it('brings in the stock of the pantry as well, and offers a cell for what lacks', async () => {
    const shown = showApp('/bring-in', {
      ...book,
      'sheets.look': ({ sheet }) => ({
        verdicts: sheet.rows.map(() => ({ verdict: 'ready', batchId: null })),
      }),
    })
    const { user, bridge } = shown
    await user.click(await screen.findByRole('radio', { name: 'Stock of the pantry' }))
    await toRows(
      shown,
      'Goods;Strength;Volume (l);Bought\nRye spirit;70;3;3.10.2026\nSugar;;;12.9.2026\n',
    )
    await screen.findByText(/^3\.00\sL of Rye spirit, bought 3 Oct/)
    await user.type(screen.getByLabelText('Row 3: Weight'), '2 kg{Enter}')
    await user.click(await screen.findByRole('button', { name: 'Bring in 2 rows' }))
    await screen.findByText('Brought in: 2 purchases.')
    expect(bridge.requests('sheets.bringIn')[0]?.sheet).toMatchObject({
      kind: 'stock',
      rows: [
        { goods: { kind: 'spirit', name: 'Rye spirit' }, volumeMl: 3000 },
        { goods: { kind: 'sweetener', sweetenerId: 'sugar' }, massG: 2000 },
      ],
    })
  })

  it('says what to do with a file that cannot be read', async () => {
    const shown = showApp('/bring-in', book)
    await choose(shown, 'name;x\n"never closed;1\n')
    await screen.findByText(/^A quotation mark is opened in row 2/)
    expect(screen.getByRole('button', { name: 'Go on to the columns' })).toHaveProperty(
      'disabled',
      true,
    )
  })

  it('stays with its rows when the book says no', async () => {
    const shown = showApp('/bring-in', {
      ...book,
      'sheets.bringIn': () => refused('diskFull'),
    })
    await toRows(shown, heads + rows[0])
    await screen.findByText(/1 row ready/)
    await shown.user.click(screen.getByRole('button', { name: 'Bring in 1 row' }))
    await screen.findByRole('alert')
    expect(screen.getByLabelText('Row 2: Name')).toHaveProperty('value', 'Sloe on rye')
    await shown.user.click(screen.getByRole('button', { name: 'Bring in 1 row' }))
    await waitFor(() => expect(shown.bridge.requests('sheets.bringIn')).toHaveLength(2))
    const [first, second] = shown.bridge.requests('sheets.bringIn')
    expect(second?.key).toBe(first?.key)
  })
})
