import { screen, waitFor, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import type { Answers } from '../fake-bridge.ts'
import { summary } from '../cellar-fixture.ts'
import { refused } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'
import { batchAnswers, doubted, noDifferences, page, pour, step } from './batch-page-fixture.ts'

async function showBatch(answers: Answers = {}) {
  const shown = showApp('/batches/damson', { ...batchAnswers, ...answers })
  // The first test also waits for the screen's own chunk.
  await screen.findByRole('heading', { name: 'Hedge damson', level: 1 }, { timeout: 10_000 })
  return shown
}

const ledger = () => screen.getByRole('region', { name: 'Ledger' })

describe('BatchScreen', () => {
  it('answers first: strength, sugar, volume, and the one next action', async () => {
    await showBatch()
    const now = screen.getByRole('region', { name: 'The liquid now' })
    expect(now.textContent).toMatch(/32\.4\s% vol/)
    expect(now.textContent).toMatch(/180\sg\/L/)
    expect(now.textContent).toMatch(/1\.50\sL free liquid now/)
    screen.getByRole('button', { name: 'Draw off the liquid' })
    const vessels = screen.getByRole('list', { name: 'Vessels of this batch, drawn to scale' })
    expect(vessels.textContent).toMatch(/comes to rest at31\.0\s% vol/)
  })

  it('opens the next move prefilled: from the jar with fruit into the empty demijohn', async () => {
    const { user } = await showBatch()
    await user.click(screen.getByRole('button', { name: 'Draw off the liquid' }))
    const form = await screen.findByRole('form', { name: 'Draw off' })
    expect(within(form).getByRole('checkbox', { name: /North jar/ })).toHaveProperty(
      'checked',
      true,
    )
    expect(within(form).getByRole('radio', { name: /South jar/ })).toHaveProperty('checked', true)
  })

  it('logs a pour by keyboard alone: L, P, an amount, Enter', async () => {
    const { user, bridge } = await showBatch()
    await user.keyboard('l')
    expect(document.activeElement?.textContent).toBe('Draw off')
    await user.keyboard('p')
    await waitFor(() => expect(document.activeElement).toBe(screen.getByLabelText(/^How much/)))
    await user.keyboard('0.25 l')
    await screen.findByText(/41\.2/)
    await user.keyboard('{Enter}')
    await screen.findByText(/^Recorded: Poured 250\sml of Spirit 96\.0\s% vol into North jar\.$/)
    expect(bridge.requests('moves.record')[0]?.moves).toMatchObject([
      { kind: 'pourSpirit', batchId: 'damson', jarId: 'north', lotId: 'spirit', volumeMl: 250 },
    ])
    expect(document.activeElement?.textContent).toBe('Draw off')
  })

  it('takes the last moves of the batch back by the button, tells what, and puts them back', async () => {
    const { user, bridge } = await showBatch()
    await user.click(within(ledger()).getByRole('button', { name: 'Undo the last move' }))
    await screen.findByText(/^Taken back: Poured 500\sml of Spirit 96\.0\s% vol into North jar\.$/)
    await user.keyboard('{Control>}y{/Control}')
    await waitFor(() =>
      expect(bridge.requests('moves.undo')).toMatchObject([
        { batchId: 'damson' },
        { groupId: 'u' },
      ]),
    )
  })

  it('leaves Ctrl+Z to the field that is being typed in', async () => {
    const { user, bridge } = await showBatch()
    await user.keyboard('lp')
    await user.type(await screen.findByLabelText(/^How much/), '250')
    await user.keyboard('{Enter}')
    await screen.findByText(/^Recorded: Poured/)
    await user.keyboard('lp')
    await user.type(await screen.findByLabelText(/^How much/), '5')
    await user.keyboard('{Control>}z{/Control}')
    expect(bridge.requests('moves.undo')).toHaveLength(0)
  })

  it('says what is missing when recording too early, and records nothing', async () => {
    const { user, bridge } = await showBatch()
    await user.keyboard('lp')
    const form = await screen.findByRole('form', { name: 'Pour spirit' })
    await user.click(within(form).getByRole('button', { name: 'Record' }))
    await within(form).findByText('Fill this in.')
    expect(bridge.requests('moves.record')).toHaveLength(0)
  })

  it('shows a refusal while typing, and mends it with one press', async () => {
    const { user } = await showBatch({
      'moves.preview': ({ moves: [move] }) => ({
        refusals:
          move?.kind === 'pourSpirit' && move.volumeMl > 1000
            ? [
                {
                  index: 0,
                  refusal: {
                    code: 'notEnough',
                    place: 'lot:spirit',
                    unit: 'ml',
                    asked: move.volumeMl,
                    available: 1000,
                    nearest: 1000,
                  },
                },
              ]
            : [],
        steps: [],
        warnings: [],
        breaks: [],
      }),
    })
    await user.keyboard('lp')
    await user.type(await screen.findByLabelText(/^How much/), '2 l')
    await screen.findByText(/holds 1\.00\sL; you asked for 2\.00\sL/)
    await user.click(screen.getByRole('button', { name: /^Use the nearest: 1\.00\sL$/ }))
    expect(screen.getByLabelText(/^How much/)).toHaveProperty('value', '1000')
    await waitFor(() => expect(screen.queryByText('This can’t be')).toBeNull())
  })

  it('keeps the form, and says why, when the book refuses to record', async () => {
    const { user } = await showBatch({ 'moves.record': () => refused('diskFull') })
    await user.keyboard('lp')
    await user.type(await screen.findByLabelText(/^How much/), '250{Enter}')
    const form = screen.getByRole('form', { name: 'Pour spirit' })
    expect((await within(form).findByRole('alert')).textContent).toContain('The disk is full')
  })

  it('leaves the form by Escape and goes back to the moves', async () => {
    const { user } = await showBatch()
    await user.keyboard('lp')
    await screen.findByRole('form', { name: 'Pour spirit' })
    await user.keyboard('{Escape}')
    expect(screen.queryByRole('form')).toBeNull()
    expect(document.activeElement?.textContent).toBe('Draw off')
  })

  it('adds a vessel on the way, without sending the form', async () => {
    const { user, bridge } = await showBatch()
    await user.keyboard('ld')
    const form = await screen.findByRole('form', { name: 'Draw off' })
    const into = within(form).getByRole('group', { name: 'Into' })
    await user.click(within(into).getByRole('button', { name: 'New vessel…' }))
    await user.type(within(into).getByLabelText('Name of the vessel'), 'Carboy')
    await user.type(within(into).getByLabelText('Holds to the brim'), '5 l{Enter}')
    await waitFor(() => expect(bridge.requests('jars.add')).toHaveLength(1))
    expect(bridge.requests('jars.add')[0]?.jars).toMatchObject([
      { name: 'Carboy', shape: 'jar', capacityMl: 5000, isRetired: false },
    ])
    expect(bridge.requests('moves.record')).toHaveLength(0)
  })
})

describe('the ledger', () => {
  it('tells each move with the composition right after it, newest first', async () => {
    const { user } = await showBatch()
    const rows = () => within(ledger()).getAllByRole('row').slice(1)
    expect(rows()[0]?.textContent).toContain('Read the alcoholometer in North jar')
    expect(rows()[1]?.textContent).toMatch(/Poured 500\sml of Spirit 96\.0\s% vol into North jar/)
    expect(rows()[1]?.textContent).toMatch(/North jar32\.4\s% vol180\sg\/L1\.50\sL/)
    await user.click(within(ledger()).getByRole('radio', { name: 'Oldest first' }))
    expect(rows()[0]?.textContent).toContain('Poured')
  })

  it('shows what a move carried in grams', async () => {
    const { user } = await showBatch()
    await user.click(within(ledger()).getByRole('button', { name: 'In grams' }))
    const grams = within(ledger()).getByRole('table', { name: 'What this move carried, in grams' })
    expect(within(grams).getByRole('row', { name: /379\.0/ }).textContent).toMatch(
      /in the pantry.*North jar.*379\.0.*24\.5/,
    )
  })

  it('confirms a doubted reading', async () => {
    const { user, bridge } = await showBatch()
    within(ledger()).getByText('Not used until confirmed.')
    await user.click(within(ledger()).getByRole('button', { name: 'Confirm it' }))
    expect(bridge.requests('moves.amend')[0]).toMatchObject({
      moveId: 'read',
      fromVersion: 1,
      move: { ...doubted.recorded.move, isConfirmed: true },
    })
  })

  it('amends in the same form, prefilled', async () => {
    const { user, bridge } = await showBatch()
    await user.click(within(ledger()).getByRole('button', { name: /^Change: Poured/ }))
    await user.click(await screen.findByRole('menuitem', { name: 'Amend…' }))
    const dialog = await screen.findByRole('dialog', { name: 'Amend this move' })
    const amount = within(dialog).getByLabelText(/^How much/)
    expect(amount).toHaveProperty('value', '500')
    await user.clear(amount)
    await user.type(amount, '450')
    const save = within(dialog).getByRole('button', { name: 'Amend' })
    await waitFor(() => expect(save).toHaveProperty('disabled', false))
    await user.click(save)
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull())
    expect(bridge.requests('moves.amend')[0]).toMatchObject({
      moveId: 'pourSpirit',
      move: { ...pour.recorded.move, volumeMl: 450 },
    })
  })

  it('shows what striking would break, and does not strike', async () => {
    const later = step({ ...pour.recorded.move, at: '2026-09-20T08:00:00Z' }, {}, 'stir')
    const { user } = await showBatch({
      'moves.previewAmend': {
        refusals: [],
        steps: [],
        warnings: [],
        breaks: [
          { recorded: later.recorded, refusal: { code: 'nothingThere', place: 'jar:north' } },
        ],
        differences: noDifferences,
      },
    })
    await user.click(within(ledger()).getByRole('button', { name: /^Change: Poured/ }))
    await user.click(await screen.findByRole('menuitem', { name: 'Strike…' }))
    const dialog = await screen.findByRole('dialog', { name: 'Strike this move?' })
    await within(dialog).findByText(/would make 1 later move impossible/)
    expect(within(dialog).getByRole('button', { name: 'Strike it' })).toHaveProperty(
      'disabled',
      true,
    )
  })

  it('invites the first charge when nothing has been logged', async () => {
    const empty = page({
      summary: summary({ stage: 'empty', jars: [] }),
      steps: [],
      bands: [],
      jarSpans: [],
    })
    const { user } = await showBatch({ 'batches.page': empty })
    expect(ledger().textContent).toContain('Charge the first jar with fruit')
    await user.click(within(ledger()).getByRole('button', { name: 'Charge fruit' }))
    await screen.findByRole('form', { name: 'Charge fruit' })
  })
})

describe('the curve and the jars', () => {
  it('draws both lines and says in a sentence where they go', async () => {
    await showBatch()
    const section = screen.getByRole('region', { name: 'Curve' })
    const figure = await within(section).findByRole('figure')
    expect(figure.textContent).toMatch(
      /strength 0\.0\s% vol to 32\.4\s% vol, sugar 640\sg\/L to 180\sg\/L/,
    )
    for (const name of ['Strength', 'Sugar'])
      expect(figure.querySelector(`path.recharts-line-curve[name="${name}"]`)).not.toBeNull()
  })

  it('has a table twin with the doubted reading', async () => {
    const { user } = await showBatch()
    const section = screen.getByRole('region', { name: 'Curve' })
    await user.click(await within(section).findByRole('button', { name: 'Show as table' }))
    const readings = within(section).getByRole('table', { name: 'Readings' })
    expect(
      within(readings).getByRole('row', { name: /not used until confirmed/ }).textContent,
    ).toMatch(/14\.0\s% vol/)
  })

  it('tells a bar of the timeline when the keyboard reaches it', async () => {
    await showBatch()
    const jars = screen.getByRole('region', { name: 'Jars' })
    within(jars)
      .getByRole('button', {
        name: /^North jar: layered, 10 Sept? to 11 Sept?, 1 day\. 300\sml at 0\.0\s% vol/,
      })
      .focus()
    await waitFor(() => expect(jars.textContent).toMatch(/North jar: layered, .*640\sg\/L/))
  })

  it('has a table twin of the timeline', async () => {
    const { user } = await showBatch()
    const jars = screen.getByRole('region', { name: 'Jars' })
    await user.click(within(jars).getByRole('button', { name: 'Show as table' }))
    expect(within(jars).getAllByRole('row')).toHaveLength(3)
  })
})
