import { act, screen, waitFor, within } from '@testing-library/react'
import { navigate } from 'wouter/use-hash-location'
import { beforeAll, describe, expect, it } from 'vitest'
import type { LabelJob, LabelProblem, LabelStyle } from '../../../shared/schemas/labels.ts'
import { refused, type Answers } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'

const sheet = {
  id: 'a4-2x4-99x68',
  name: '',
  pageWidthMm: 210,
  pageHeightMm: 297,
  columns: 2,
  rows: 4,
  labelWidthMm: 99.1,
  labelHeightMm: 67.7,
  marginLeftMm: 4.65,
  marginTopMm: 13.1,
  gapXMm: 2.5,
  gapYMm: 0,
}
const own = { ...sheet, id: 'mine', name: 'The yellow box', rows: 3 }

const style: LabelStyle = {
  design: 'parlour',
  part: 'front',
  shown: ['name', 'strength'],
  hasCode: true,
  hasEmblem: true,
  hasCutMarks: false,
  strengthPrefix: 'none',
  sheetId: sheet.id,
}

const text = {
  name: 'Raspberry',
  kind: '',
  vintage: '2024',
  strength: '28 % vol',
  volume: '500 ml',
  batch: '',
  bottled: '',
  ingredients: '',
  allergens: '',
  energy: '',
  drinks: '',
  cautions: '',
  note: '',
}

const problems: LabelProblem[] = [
  { code: 'doesNotFit', severity: 'warning', labelIndex: 0, field: 'name', value: 0.4 },
  {
    code: 'noLetters',
    severity: 'warning',
    labelIndex: 0,
    field: 'name',
    characters: ['樱', '🍒'],
  },
  {
    code: 'smallLetters',
    severity: 'note',
    labelIndex: 0,
    field: 'strength',
    value: 0.87,
    limit: 1.2,
  },
]

/** One letter a label, and as many pages as the copies need. */
function drawn({ labels, sheet: on, firstPosition }: LabelJob, found: LabelProblem[] = []) {
  const copies = labels.flatMap((label, labelIndex) =>
    Array.from({ length: label.copies }, () => ({ labelIndex, xMm: 4.65, yMm: 13.1 })),
  )
  const perPage = on.columns * on.rows
  const pages = Math.ceil((copies.length + firstPosition - 1) / perPage)
  return {
    drawings: labels.map(({ text: { name } }) => [
      {
        op: 'text' as const,
        field: 'name' as const,
        face: 'serif' as const,
        sizePt: 20,
        xMm: 5,
        baselineMm: 20,
        widthMm: 10,
        trackingMm: 0,
        colour: '#8f1d2c',
        text: name,
        glyphs: [{ key: 'serif:1', xMm: 0, yMm: 0 }],
      },
    ]),
    pages: Array.from({ length: pages }, (_, page) => ({
      placements: copies.slice(page * perPage, (page + 1) * perPage),
    })),
    cutMarks: '',
    glyphs: { 'serif:1': 'M0 0L0.5 0L0.5 -0.5Z' },
    problems: found,
  }
}

const usual = {
  bottleLotId: 'raspberry-lot',
  text,
  colour: '#b32448',
  bottleSizeMl: 500,
  count: 7,
  strengthPctVol: 28.04,
  tolerancePctVol: 1.5,
}

const open = (path: string, answers: Answers = {}) =>
  showApp(path, {
    'labels.style': style,
    'labels.sheets': { usual: [sheet], own: [own] },
    'labels.usual': [usual],
    'labels.draw': (asked) => drawn(asked),
    'labels.keepStyle': (kept) => kept,
    ...answers,
  })

const link = '/labels?lots=raspberry-lot'

beforeAll(async () => {
  await import('../../../renderer/screens/labels/labels-screen.tsx')
})

describe('LabelsScreen', () => {
  it('says what labels are for while there are no bottles', async () => {
    open('/labels', { 'bottles.list': [] })
    expect(await screen.findByText(/none have been filled yet/)).toBeTruthy()
    expect(screen.getByRole('link', { name: 'To the batches' })).toBeTruthy()
  })

  it('says what failed, and reads again', async () => {
    const { bridge, user } = open(link, { 'labels.style': () => refused('bookBusy') })
    const again = await screen.findByRole('button', { name: 'Try again' })
    bridge.answer({ 'labels.style': style })
    await user.click(again)
    expect(await screen.findByText('7 labels on 1 sheet')).toBeTruthy()
  })

  it('asks which bottles where the link names none, and draws them once chosen', async () => {
    const { bridge, user } = open('/labels')
    expect(await screen.findByText('Choose which bottles get labels.')).toBeTruthy()
    expect(bridge.requests('labels.draw')).toEqual([])
    await user.selectOptions(await screen.findByLabelText(/Add bottles/), 'raspberry-lot')
    expect(await screen.findByText('7 labels on 1 sheet')).toBeTruthy()
  })

  it('says when a link names bottles that are not in the book', async () => {
    open('/labels?lots=raspberry-lot,gone')
    expect(await screen.findByText(/not in the book/)).toBeTruthy()
  })

  it('finds its bottles too where the router followed the link itself', async () => {
    open('/shelf')
    act(() => navigate(link))
    expect(await screen.findByText('7 labels on 1 sheet')).toBeTruthy()
    window.history.replaceState(null, '', '/')
  })

  it('begins with a label for each bottle, and prints as many as are asked for', async () => {
    const { bridge, user } = open(link)
    const copies = await screen.findByRole('textbox', { name: 'Labels for Raspberry 2024' })
    await waitFor(() => expect((copies as HTMLInputElement).value).toBe('7'))
    await user.clear(copies)
    await user.type(copies, '20')
    expect(await screen.findByText('20 labels on 3 sheets')).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Next sheet' }))
    expect(screen.getByText('Sheet 2 of 3')).toBeTruthy()
    expect(bridge.requests('labels.draw').at(-1)?.labels[0]?.copies).toBe(20)
    await user.clear(copies)
    await user.type(copies, '1.5')
    await user.tab()
    expect(await screen.findByText('A whole number from 1 to 2000.')).toBeTruthy()
  })

  it('draws anew with every word, and goes back to the book’s words', async () => {
    const { bridge, user } = open(link)
    const name = await screen.findByRole('textbox', { name: 'Name' })
    await user.type(name, ' of the hill')
    await screen.findByRole('img', { name: 'The label of Raspberry of the hill' })
    expect(bridge.requests('labels.draw').at(-1)?.labels[0]?.text.name).toBe(
      'Raspberry of the hill',
    )
    await user.click(screen.getByRole('button', { name: 'As the book has it' }))
    await screen.findByRole('img', { name: 'The label of Raspberry' })
  })

  it('shows only the words of what the label says', async () => {
    const { user } = open(link)
    await screen.findByRole('textbox', { name: 'Name' })
    expect(screen.queryByRole('textbox', { name: /Note/ })).toBeNull()
    await user.click(screen.getByRole('checkbox', { name: 'Note' }))
    expect(await screen.findByRole('textbox', { name: /Note/ })).toBeTruthy()
    expect(screen.getByText(/In the book 28\.0\s% vol/)).toBeTruthy()
  })

  it('tells what goes wrong in words, what is worth knowing apart', async () => {
    open(link, { 'labels.draw': (asked) => drawn(asked, problems) })
    const list = await screen.findByRole('list', { name: 'To look at before printing' })
    const lines = within(list).getAllByRole('listitem')
    expect(lines.map(({ textContent }) => textContent)).toEqual([
      'Name: at the smallest letters only 40% has room. Shorten it, or leave something out.',
      'Name: there are no letters for “樱” “🍒”. Each is printed as an empty box.',
    ])
    expect(screen.getByText('Worth knowing')).toBeTruthy()
    expect(screen.getByText(/small letters are 0\.87 mm high/)).toBeTruthy()
  })

  it('begins at a label of a part-used sheet, and keeps to the sheet', async () => {
    const { bridge, user } = open(link)
    const first = await screen.findByRole('textbox', { name: 'Begin at label' })
    await user.clear(first)
    await user.type(first, '5')
    await waitFor(() => expect(bridge.requests('labels.draw').at(-1)?.firstPosition).toBe(5))
    await user.clear(first)
    await user.type(first, '9')
    await user.tab()
    expect(await screen.findByText('The sheet has labels 1 to 8.')).toBeTruthy()
    expect(bridge.requests('labels.draw').every(({ firstPosition }) => firstPosition <= 8)).toBe(
      true,
    )
  })

  it('keeps a sheet of the maker’s own, and says when its grid is larger than the paper', async () => {
    const { bridge, user } = open(link, { 'labels.keepSheet': (kept) => kept })
    await user.click(await screen.findByRole('button', { name: 'A sheet of my own' }))
    const dialog = await screen.findByRole('dialog', { name: 'A sheet of my own' })
    const across = within(dialog).getByRole('textbox', { name: 'Labels across' })
    await user.clear(across)
    await user.type(across, '3')
    expect(
      await within(dialog).findByText(/The columns need 30\d(?:\.\d)? mm; the paper has 210 mm\./),
    ).toBeTruthy()
    await user.click(within(dialog).getByRole('button', { name: 'Keep the sheet' }))
    expect(bridge.requests('labels.keepSheet')).toEqual([])
    await user.clear(across)
    await user.type(across, '1')
    await user.type(within(dialog).getByRole('textbox', { name: /Name/ }), 'Wide box')
    await user.click(within(dialog).getByRole('button', { name: 'Keep the sheet' }))
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull())
    expect(bridge.requests('labels.keepSheet').at(-1)).toMatchObject({
      name: 'Wide box',
      columns: 1,
      pageWidthMm: 210,
    })
  })

  it('keeps what was chosen when the PDF is made', async () => {
    const made: Answers = { 'labels.paper': { fileName: 'Raspberry.pdf', pdfBase64: 'JVBERi0=' } }
    const { bridge, user } = open(link, made)
    URL.createObjectURL = () => 'blob:labels'
    URL.revokeObjectURL = () => undefined
    await user.click(await screen.findByText('Lamplight'))
    await user.click(screen.getByRole('button', { name: 'Save PDF' }))
    expect(await screen.findByText(/The PDF is made/)).toBeTruthy()
    expect(bridge.requests('labels.paper').at(-1)).toMatchObject({ design: 'lamplight' })
    expect(bridge.requests('labels.keepStyle').at(-1)).toMatchObject({ design: 'lamplight' })
  })
})
