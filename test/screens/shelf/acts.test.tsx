import { screen, waitFor, within } from '@testing-library/react'
import { beforeAll, describe, expect, it } from 'vitest'
import type { Move } from '../../../shared/schemas/moves.ts'
import { refused } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'
import {
  opened,
  preview,
  shelfAnswers,
  shelfLots,
  shelfPage,
  wasRecorded,
} from './shelf-fixture.ts'

beforeAll(async () => {
  await import('../../../renderer/screens/shelf/shelf-screen.tsx')
  await import('../../../renderer/screens/shelf/lot/lot-screen.tsx')
})

const show = (path = '/shelf/raspberry-lot', answers = {}) =>
  showApp(path, { ...shelfAnswers, ...answers })

type Shown = ReturnType<typeof show>

async function choose(user: Shown['user'], act: string) {
  await user.click(await screen.findByRole('button', { name: 'More for Raspberry 2024' }))
  await user.click(screen.getByRole('menuitem', { name: act }))
  return screen.getByRole('dialog')
}

const asked = ({ bridge }: Shown): Move[] => bridge.requests('moves.record')[0]?.moves ?? []

async function fill(user: Shown['user'], name: RegExp, text: string) {
  const field = screen.getByRole('textbox', { name })
  await user.clear(field)
  await user.type(field, text)
}

describe('acts on a lot', () => {
  it('draws one bottle unless told otherwise, tells it, and takes it back', async () => {
    const shown = show('/shelf')
    const { user, bridge } = shown
    await user.click(await screen.findByRole('button', { name: 'Draw: Raspberry 2024' }))
    expect(screen.getByText('7 there; 6 left after this.')).toBeTruthy()
    await user.click(within(screen.getByRole('dialog')).getByRole('button', { name: 'Draw' }))
    expect(asked(shown)).toMatchObject([
      { kind: 'drawBottle', bottleLotId: 'raspberry-lot', count: 1 },
    ])
    const told = await screen.findByRole('status', { name: 'What was done last' })
    expect(told.textContent).toBe('Recorded: Drew 1 bottle of Raspberry 2024.')
    const changes = asked(shown).map((move) => ({ moveId: 'm', before: move, after: null }))
    bridge.answer({ 'moves.undo': { groupId: 'u', undoes: 'g', changes } })
    await user.click(screen.getByRole('button', { name: 'Undo' }))
    expect(bridge.requests('moves.undo')).toMatchObject([{ groupId: 'g' }])
    await waitFor(() =>
      expect(told.textContent).toBe('Taken back: Drew 1 bottle of Raspberry 2024.'),
    )
    expect(screen.queryByRole('button', { name: 'Undo' })).toBeNull()
  })

  it('gives from a place of choice, with a note', async () => {
    const shown = show()
    const { user } = shown
    await choose(user, 'Give away')
    await fill(user, /Bottles/, '2')
    await user.selectOptions(screen.getByRole('combobox', { name: /From/ }), 'Kitchen dresser (2)')
    expect(screen.getByText('2 there; 0 left after this.')).toBeTruthy()
    await user.click(screen.getByText('More about it'))
    await user.type(screen.getByRole('textbox', { name: /Note/ }), ' To Nan ')
    await user.click(screen.getByRole('button', { name: 'Give' }))
    expect(asked(shown)).toMatchObject([
      { kind: 'give', count: 2, shelfId: 'dresser', note: 'To Nan' },
    ])
  })

  it('carries bottles from where most stand, and asks where to', async () => {
    const shown = show()
    const { user } = shown
    const dialog = await choose(user, 'Move to another place')
    await user.click(within(dialog).getByRole('button', { name: 'Move' }))
    expect(screen.getByText('Choose where to.')).toBeTruthy()
    expect(asked(shown)).toEqual([])
    await user.selectOptions(screen.getByRole('combobox', { name: /^To/ }), 'Kitchen dresser')
    await user.click(within(dialog).getByRole('button', { name: 'Move' }))
    expect(asked(shown)).toMatchObject([
      { kind: 'shelve', count: 5, fromShelfId: 'rack', toShelfId: 'dresser' },
    ])
  })

  it.each([
    ['Broken or leaked', 'Write it off', { kind: 'breakBottle', count: 1 }],
    [
      'Throw away',
      'Throw away',
      { kind: 'discard', from: { bottleLotId: 'raspberry-lot', count: 1 } },
    ],
    ['Open a bottle', 'Open it', { kind: 'openBottle', bottleLotId: 'raspberry-lot' }],
  ])('records: %s', async (act, go, move) => {
    const shown = show()
    const dialog = await choose(shown.user, act)
    await shown.user.click(within(dialog).getByRole('button', { name: go }))
    expect(asked(shown)).toMatchObject([move])
  })

  it('says a refusal beside the count before anything is sent, and mends it in one press', async () => {
    const notEnough = {
      code: 'notEnough' as const,
      place: 'bottles:raspberry-lot',
      unit: 'bottles' as const,
      asked: 9,
      available: 7,
      nearest: 7,
    }
    const shown = show('/shelf/raspberry-lot', {
      'moves.preview': ({ moves }: { moves: Move[] }) => {
        const [move] = moves
        const isTooMuch = move?.kind === 'give' && move.count > 7
        return isTooMuch ? { ...preview, refusals: [{ index: 0, refusal: notEnough }] } : preview
      },
      'moves.record': wasRecorded,
    })
    const { user } = shown
    await choose(user, 'Give away')
    await fill(user, /Bottles/, '9')
    const count = screen.getByRole('textbox', { name: /Bottles/ })
    await waitFor(() => expect(count.getAttribute('aria-invalid')).toBe('true'))
    expect(
      screen.getByText(
        'The bottles of Raspberry 2024 holds 7 bottles; you asked for 9 bottles. The most that can be is 7 bottles.',
      ),
    ).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Use the nearest: 7 bottles' }))
    expect((count as HTMLInputElement).value).toBe('7')
    await waitFor(() => expect(count.getAttribute('aria-invalid')).toBeNull())
  })

  it('keeps what was filled in when the book refuses the record', async () => {
    const shown = show('/shelf/raspberry-lot', {
      'moves.record': () =>
        refused('beforeItExisted', {
          code: 'beforeItExisted',
          place: 'bottles:raspberry-lot',
          from: '2024-09-08T10:00:00Z',
          index: 0,
        }),
    })
    const { user } = shown
    await choose(user, 'Give away')
    await fill(user, /Bottles/, '2')
    await user.click(screen.getByRole('button', { name: 'Give' }))
    expect(await screen.findByText(/is there only from/)).toBeTruthy()
    expect(screen.getByLabelText(/When/).getAttribute('aria-invalid')).toBe('true')
    expect((screen.getByRole('textbox', { name: /Bottles/ }) as HTMLInputElement).value).toBe('2')
  })

  it.each(['0', '-1', '1.5', 'two'])('does not take %s for a count', async (text) => {
    const shown = show()
    await choose(shown.user, 'Give away')
    await fill(shown.user, /Bottles/, text)
    await shown.user.click(screen.getByRole('button', { name: 'Give' }))
    expect(asked(shown)).toEqual([])
    expect(screen.getByRole('textbox', { name: /Bottles/ }).getAttribute('aria-invalid')).toBe(
      'true',
    )
  })
})

describe('the one next act of the shelf', () => {
  it('drinks up the opened bottle that loses by waiting', async () => {
    const shown = show('/shelf')
    await shown.user.click(
      await screen.findByRole('button', { name: 'Pour a glass of Raspberry 2024' }),
    )
    await shown.user.click(screen.getByRole('button', { name: 'Pour' }))
    expect(asked(shown)).toMatchObject([{ kind: 'pourGlass', openedId: 'open-1', volumeMl: 40 }])
  })

  it('draws from the ready lot that fades first where nothing presses', async () => {
    show('/shelf', { 'shelf.lots': shelfLots({ opened: [], drinkFirst: [] }) })
    expect(await screen.findByRole('button', { name: 'Draw from Quince 2023' })).toBeTruthy()
  })
})

describe('acts on an opened bottle', () => {
  it('pours a glass of what is left', async () => {
    const shown = show()
    await shown.user.click(await screen.findByRole('button', { name: /^Pour a glass/ }))
    await fill(shown.user, /How much/, '2 cl')
    await shown.user.click(screen.getByRole('button', { name: 'Pour' }))
    expect(asked(shown)).toMatchObject([{ kind: 'pourGlass', openedId: 'open-1', volumeMl: 20 }])
  })

  it('pours all of it where nothing is said', async () => {
    const shown = show()
    await shown.user.click(await screen.findByRole('button', { name: /^Pour a glass/ }))
    await shown.user.clear(screen.getByRole('textbox', { name: /How much/ }))
    await shown.user.click(screen.getByRole('button', { name: 'Pour' }))
    expect(Object.keys(asked(shown)[0] ?? {})).not.toContain('volumeMl')
  })

  it('tops up only while another bottle stands open', async () => {
    const other = opened({ id: 'open-2', name: 'Damson 2021' })
    const shown = show('/shelf/raspberry-lot', {
      'shelf.lots': { lots: [], opened: [opened(), other], drinkFirst: [] },
    })
    await shown.user.click(await screen.findByRole('button', { name: /^Top up/ }))
    await shown.user.click(
      within(screen.getByRole('dialog')).getByRole('button', { name: 'Top up' }),
    )
    expect(asked(shown)).toMatchObject([
      { kind: 'topUp', openedId: 'open-1', fromOpenedId: 'open-2' },
    ])
  })

  it('throws the rest away, and corrects the level down to nothing', async () => {
    const shown = show()
    await shown.user.click(await screen.findByRole('button', { name: /^Throw the rest away/ }))
    await shown.user.click(
      within(screen.getByRole('dialog')).getByRole('button', { name: 'Throw away' }),
    )
    expect(asked(shown)).toMatchObject([{ kind: 'discard', from: { openedId: 'open-1' } }])
    await shown.user.click(screen.getByRole('button', { name: /^Correct the level/ }))
    await fill(shown.user, /What is in it/, '0')
    await shown.user.click(screen.getByRole('button', { name: 'Correct' }))
    expect(shown.bridge.requests('moves.record')[1]?.moves).toMatchObject([
      { kind: 'correct', found: { openedId: 'open-1', volumeMl: 0 } },
    ])
  })
})

describe('a tasting', () => {
  it('is scored by keys alone: digits, ten, arrows, Delete', async () => {
    const shown = show('/shelf/raspberry-lot', { 'shelf.page': shelfPage({ tastings: [] }) })
    const { user } = shown
    await user.click((await screen.findAllByRole('button', { name: 'Taste' }))[0]!)
    const aroma = screen.getByRole('slider', { name: 'Aroma' })
    expect(document.activeElement).toBe(aroma)
    expect(aroma.getAttribute('aria-valuetext')).toBe('not scored')
    await user.keyboard('7{Tab}10{Tab}5{ArrowRight}{Tab}3{Delete}{Tab}{Tab}{Tab}{Tab}{Tab}0')
    await user.click(screen.getByRole('radio', { name: 'ready' }))
    await user.type(screen.getByRole('textbox', { name: /Glass/ }), 'tulip')
    await user.type(screen.getByRole('textbox', { name: /In words/ }), 'Plum stone at the end.')
    await user.click(screen.getByRole('button', { name: 'Keep the tasting' }))
    expect(asked(shown)).toMatchObject([
      {
        kind: 'taste',
        batchId: 'raspberry',
        bottleLotId: 'raspberry-lot',
        scores: { aroma: 7, fruit: 10, sweetness: 6, colour: 0 },
        verdict: 'ready',
        glass: 'tulip',
        note: 'Plum stone at the end.',
      },
    ])
    expect(Object.keys((asked(shown)[0] as { scores: object }).scores)).not.toContain('sourness')
  })

  it('says nothing at all is no tasting', async () => {
    const shown = show()
    await shown.user.click((await screen.findAllByRole('button', { name: 'Taste' }))[0]!)
    await shown.user.click(screen.getByRole('button', { name: 'Keep the tasting' }))
    expect(screen.getByText('Score an axis, give a verdict, or say it in words.')).toBeTruthy()
    expect(asked(shown)).toEqual([])
  })
})
