import { screen, waitFor, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import type { Move } from '../../../shared/schemas/moves.ts'
import { batchAnswers, noDifferences } from '../batch/batch-page-fixture.ts'
import type { Answers } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'

/** A long book: the further back, the more was bought. */
const buy = (index: number): Move => ({
  at: new Date(Date.UTC(2026, 10, 20) - index * 3_600_000).toISOString(),
  kind: 'buy',
  lotId: `lot-${index}`,
  goods: { kind: 'fruit', fruitId: 'damson' },
  massG: 1000 + 100 * index,
})
const recorded = (index: number, version = 1) => ({
  id: `move-${index}`,
  seq: 10_000 - index,
  groupId: `group-${index}`,
  recordedAt: buy(index).at,
  version,
  move: buy(index),
})

function book(total: number, changed: Answers = {}): Answers {
  return {
    ...batchAnswers,
    'moves.list': ({ filter, from, count }) => {
      const matching = filter.text === 'nothing' ? 0 : filter.isStruck ? 1 : total
      return {
        total: matching,
        years: [2026, 2025],
        rows: Array.from({ length: Math.max(0, Math.min(count, matching - from)) }, (_, at) => ({
          recorded: recorded(from + at, filter.isStruck ? 3 : 1),
          batchIds: ['damson'],
        })),
        last: { groupId: 'newest', moveIds: ['move-0'] },
      }
    },
    ...changed,
  }
}

const row = (name: RegExp) => screen.findByRole('row', { name })
async function choose(user: ReturnType<typeof showApp>['user'], of: RegExp, item: string) {
  await user.click(within(await row(of)).getByRole('button', { name: /^Change: / }))
  await user.click(await screen.findByRole('menuitem', { name: item }))
}

describe('the list of all moves', () => {
  it('asks for the part in sight, however long the book is', async () => {
    const { bridge } = showApp('/moves', book(154_000))
    const first = await row(/Bought 1\.00\skg of Damson/)
    expect(within(first).getByRole('link', { name: /Hedge damson/ })).toBeTruthy()
    expect(screen.getByText(/^154000 moves|^154,000 moves/)).toBeTruthy()
    expect(screen.getByRole('table').getAttribute('aria-rowcount')).toBe('154001')
    expect(screen.getAllByRole('row').length).toBeLessThan(120)
    expect(new Set(bridge.requests('moves.list').map(({ from }) => from))).toEqual(new Set([0]))
  })

  it('narrows by kind, year and words, and shows all again when nothing matches', async () => {
    const { bridge, user } = showApp('/moves', book(3))
    await row(/Bought 1\.00\skg/)
    await user.selectOptions(screen.getByLabelText('What'), 'Buy')
    await user.selectOptions(screen.getByLabelText('Year'), '2025')
    await screen.findByText('3 moves match')
    expect(bridge.requests('moves.list').at(-1)?.filter).toEqual({ kind: 'buy', year: 2025 })
    await user.type(screen.getByRole('searchbox'), 'nothing')
    await screen.findByText('No move matches.')
    await user.click(screen.getByRole('button', { name: 'Show all' }))
    await screen.findByText('3 moves')
  })

  it('amends a purchase, which names no batch, in the form it was recorded with', async () => {
    const { bridge, user } = showApp('/moves', book(3))
    await choose(user, /Bought 1\.00\skg/, 'Amend…')
    const dialog = within(await screen.findByRole('dialog', { name: 'Amend this move' }))
    const mass = await dialog.findByLabelText(/^Bought/)
    await user.clear(mass)
    await user.type(mass, '900 g')
    const save = dialog.getByRole('button', { name: 'Amend' })
    await waitFor(() => expect(save).toHaveProperty('disabled', false))
    await user.click(save)
    await waitFor(() =>
      expect(bridge.requests('moves.amend')).toMatchObject([
        { moveId: 'move-0', fromVersion: 1, move: { ...buy(0), massG: 900 } },
      ]),
    )
  })

  it('takes back what was done last, and offers that for nothing else', async () => {
    const { bridge, user } = showApp('/moves', book(3))
    await choose(user, /Bought 1\.00\skg/, 'Take back what was done last')
    await waitFor(() =>
      expect(bridge.requests('moves.undo')).toMatchObject([{ groupId: 'newest' }]),
    )
    await screen.findByText(/^Taken back: /)
    const others = within((await screen.findAllByRole('row'))[2]!)
    await user.click(others.getByRole('button', { name: /^Change: / }))
    await screen.findByRole('menuitem', { name: 'Strike…' })
    expect(screen.queryByRole('menuitem', { name: /^Take back/ })).toBeNull()
  })

  it('puts a struck move back after a look at what follows', async () => {
    const { bridge, user } = showApp(
      '/moves',
      book(3, {
        'moves.previewAmend': {
          refusals: [],
          steps: [],
          warnings: [],
          breaks: [],
          differences: {
            ...noDifferences,
            pantry: [
              {
                lotId: 'lot-0',
                goods: { kind: 'fruit', fruitId: 'damson' },
                before: null,
                after: { massG: 1000 },
              },
            ],
          },
        },
      }),
    )
    await row(/Bought 1\.00\skg/)
    await user.click(screen.getByRole('checkbox', { name: 'Struck ones instead' }))
    await screen.findByText('1 move struck or taken back')
    await choose(user, /Bought 1\.00\skg/, 'Put back…')
    const dialog = within(await screen.findByRole('dialog', { name: 'Put this back?' }))
    expect((await dialog.findByRole('row', { name: /^Damson/ })).textContent).toMatch(
      /none → 1\.00\skg/,
    )
    await user.click(dialog.getByRole('button', { name: 'Put it back' }))
    await waitFor(() =>
      expect(bridge.requests('moves.amend')).toMatchObject([
        { moveId: 'move-0', fromVersion: 3, move: buy(0) },
      ]),
    )
  })

  it('says what will be listed while the book is empty', async () => {
    showApp('/moves', book(0))
    expect(await screen.findByText(/^Nothing has been recorded yet/)).toBeTruthy()
  })

  it('is found by the finder', async () => {
    const { user } = showApp('/moves', book(1))
    await row(/Bought/)
    await user.keyboard('{Control>}k{/Control}')
    const finder = within(await screen.findByRole('dialog', { name: 'Find anything' }))
    await user.type(finder.getByRole('searchbox'), 'all moves')
    expect(await finder.findByRole('menuitem', { name: /All moves/ })).toBeTruthy()
  })
})
