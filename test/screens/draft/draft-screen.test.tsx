import { screen, waitFor, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import type { Draft } from '../../../shared/schemas/drafts.ts'
import {
  fruitLibrary,
  fruitOf,
  outcomeOf,
  solveDraft,
  usualDraft,
} from '../../../main/engine/index.ts'
import { jar } from '../cellar-fixture.ts'
import type { Answers } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'

const facts = { fruitOf }
const spec = usualDraft({
  fruit: fruitOf('sour_cherry'),
  fruitG: 2000,
  spiritPctVol: 96,
  startAt: '2026-07-01T08:00:00.000Z',
})
const wishes = { bottles: 6, strengthPctVol: 30, sugarGPerL: 200 }
const draft: Draft = { id: 'd1', name: 'Cherries', spec, pins: [], wishes, note: '' }
const at = '2026-11-20T18:00:00.000Z'

/** The engine itself answers, as it does behind the service. */
const answers: Answers = {
  'fruits.list': [...fruitLibrary.values()],
  'drafts.list': [{ draft, createdAt: at, changedAt: at }],
  'drafts.page': { draft, createdAt: at, changedAt: at },
  'drafts.keep': (kept) => ({ draft: kept, createdAt: at, changedAt: at }),
  'drafts.usual': { spec, wishes },
  'drafts.reckon': ({ spec: asked }) => outcomeOf(asked, facts),
  'drafts.solve': (asked) => solveDraft(asked, facts),
  'drafts.start': ({ batchId, name, colour }) => ({
    id: batchId,
    name,
    colour,
    note: '',
    openedAt: at,
  }),
  'recipes.list': [],
  'recipes.keep': (kept) => ({ ...kept, version: 3, keptAt: at, batchIds: [] }),
}

describe('the list of drafts', () => {
  it('says what each is for, and that no recipe is kept yet', async () => {
    showApp('/draft', answers)
    const row = await screen.findByRole('row', { name: /Cherries/ })
    expect(row.textContent).toContain('6 bottles at 30.0')
    expect(screen.getByText(/can be kept here for next year/)).toBeTruthy()
  })

  it('asks which fruit before it begins', async () => {
    const { user, bridge } = showApp('/draft', answers)
    await user.click(await screen.findByRole('button', { name: 'Draft it' }))
    expect(await screen.findByText('Which fruit is it to be?')).toBeTruthy()
    expect(bridge.requests('drafts.usual')).toEqual([])
    await user.selectOptions(screen.getByLabelText('Fruit'), 'sour_cherry')
    await user.click(screen.getByRole('button', { name: 'Draft it' }))
    await waitFor(() => expect(bridge.requests('drafts.keep')).toHaveLength(1))
    expect(bridge.requests('drafts.keep')[0]).toMatchObject({ name: 'Sour cherry', wishes })
  })
})

describe('a draft', () => {
  it('answers first with bottles, strength and sugar, then stage by stage', async () => {
    showApp('/draft/d1', answers)
    expect(await screen.findByText(/^6 bottles at 30\.0\s% vol with 200\sg\/L sugar$/)).toBeTruthy()
    const chain = screen.getByRole('list', { name: 'Stages of the draft' })
    const names = within(chain)
      .getAllByRole('heading')
      .map(({ textContent }) => textContent)
    expect(names).toEqual([
      'Under sugar',
      'Under spirit',
      'Sugar draw',
      'Married',
      'Filtered',
      'Bottled',
    ])
  })

  it('holds a number set by hand, and lets the others follow', async () => {
    const { user, bridge } = showApp('/draft/d1', answers)
    await screen.findByText(/^6 bottles at/)
    const field = screen.getByRole('textbox', { name: /^Sugar in layers/ })
    await user.clear(field)
    await user.type(field, '100')
    await waitFor(() => {
      const last = bridge.requests('drafts.solve').at(-1)
      expect(last?.pins).toEqual(['layeringSugar'])
      expect(last?.spec.layeringSugarG).toBe(100)
    })
    expect((field as HTMLInputElement).value).toBe('100')
    expect(
      screen.getByRole('button', { name: 'Held: Sugar in layers' }).getAttribute('aria-pressed'),
    ).toBe('true')
    expect(await screen.findByText(/^6 bottles at 30\.0\s% vol with 200\sg\/L sugar$/)).toBeTruthy()
  })

  it('says why a wish cannot be met, with the limit and the nearest', async () => {
    const { user } = showApp('/draft/d1', answers)
    await screen.findByText(/^6 bottles at/)
    const field = screen.getAllByRole('textbox', { name: 'Sugar' })[0] as HTMLElement
    await user.clear(field)
    await user.type(field, '900')
    const said = /Sugar 900\sg\/L does not dissolve.*is the most.*Nearest/
    expect(await screen.findByText(said, {}, { timeout: 10_000 })).toBeTruthy()
  })

  it('starts as a batch in the jars that are free and hold it', async () => {
    const { user, bridge } = showApp('/draft/d1', answers)
    await screen.findByText(/^6 bottles at/)
    await user.click(screen.getByRole('button', { name: 'Start as a batch' }))
    const dialog = await screen.findByRole('dialog')
    const steep = within(dialog).getByLabelText('To steep in') as HTMLSelectElement
    expect(steep.value).toBe('south')
    await user.selectOptions(steep, 'north')
    await user.click(within(dialog).getByRole('button', { name: 'Start it' }))
    await waitFor(() => expect(bridge.requests('drafts.start')).toHaveLength(1))
    const [started] = bridge.requests('drafts.start')
    expect(started?.spec.vessels.steep).toEqual([
      { jarId: 'north', name: 'North jar', shape: 'jar', capacityMl: 4000 },
    ])
  })

  it('reckons anew how full the chosen jars get, and marks the one that runs over', async () => {
    const tiny = jar({ id: 'tiny', name: 'Tiny jar', capacityMl: 2500 })
    const { user, bridge } = showApp('/draft/d1', {
      ...answers,
      'jars.list': [
        { jar: tiny },
        { jar: jar({ id: 'south', name: 'South jar', capacityMl: 10_000 }) },
      ],
    })
    await screen.findByText(/^6 bottles at/)
    await user.click(screen.getByRole('button', { name: 'Start as a batch' }))
    const dialog = within(await screen.findByRole('dialog'))
    const steep = dialog.getByLabelText('To steep in') as HTMLSelectElement
    await user.selectOptions(steep, 'tiny')
    expect(await dialog.findAllByText(/which overflows it/)).not.toHaveLength(0)
    await waitFor(() =>
      expect(bridge.requests('drafts.reckon').at(-1)?.spec.vessels.steep).toMatchObject([
        { jarId: 'tiny', capacityMl: 2500 },
      ]),
    )
    expect(await dialog.findAllByText(/overflows .*Tiny jar/)).not.toHaveLength(0)

    // One jar for both extracts gets fuller than either of two.
    const fillOf = (label: string) => {
      const described = dialog.getByLabelText(label).getAttribute('aria-describedby')
      const id = described?.split(' ')[0] ?? ''
      return document.querySelector(`[id="${id}"]`)?.textContent
    }
    const apart = fillOf('For extract 1')
    await user.selectOptions(dialog.getByLabelText('For extract 1'), 'south')
    await user.selectOptions(dialog.getByLabelText('For extract 2'), 'south')
    await waitFor(() => expect(fillOf('For extract 1')).not.toBe(apart))
    await waitFor(() => expect(fillOf('For extract 1')).toBe(fillOf('For extract 2')))
  })

  it('is kept as the next version of a recipe', async () => {
    const { user, bridge } = showApp('/draft/d1', answers)
    await screen.findByText(/^6 bottles at/)
    await user.click(screen.getByRole('button', { name: 'Keep as a recipe' }))
    expect(await screen.findByText(/version 3 of the house recipe/)).toBeTruthy()
    expect(bridge.requests('recipes.keep')[0]?.name).toBe('Cherries')
  })
})
