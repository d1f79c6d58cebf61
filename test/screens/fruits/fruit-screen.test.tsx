import { screen, waitFor, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { fruitOf } from '../../../main/engine/index.ts'
import { refused } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'
import { fruitPage } from './fruit-page-fixture.ts'

const sloe = fruitOf('sloe')
const drier = { ...sloe, drainedLPerKg: 0.5, sources: { ...sloe.sources, drainedLPerKg: 'own' } }
const copy = fruitPage({ fruit: drier, origin: 'edited', library: sloe })

const show = (page = fruitPage({ library: sloe }), more: Parameters<typeof showApp>[1] = {}) =>
  showApp('/fruits/sloe', { 'fruits.page': page, ...more })

const row = async (table: string, name: RegExp) =>
  within(await screen.findByRole('table', { name: table })).getByRole('row', { name })

describe('FruitScreen', () => {
  it('shows facts with their ranges, and where each comes from', async () => {
    show()
    expect(await screen.findByRole('heading', { name: 'Sloe', level: 1 })).toBeTruthy()
    const held = await row('How it treats liquid', /Held after draining/)
    expect(held.textContent).toMatch(/0\.6.L\/kg/)
    expect(held.textContent).toContain('0.45 to 0.75')
    expect(held.textContent).toContain('engineering estimate, right in order of magnitude only')
    expect((await row('How it is steeped', /Best drunk within/)).textContent).toContain('6 years')
    expect((await row('What it is made of', /Water/)).textContent).toContain('%')
    expect(screen.getByText('September to November, best in October')).toBeTruthy()
    expect(screen.getByText(/Around the Mediterranean 3 weeks earlier/)).toBeTruthy()
    for (const hazard of sloe.hazards) expect(screen.getByText(hazard)).toBeTruthy()
  })

  it('tells the library’s figure beside one that was edited', async () => {
    show(copy)
    const held = await row('How it treats liquid', /Held after draining/)
    expect(held.textContent).toMatch(/0\.5.L\/kg/)
    expect(held.textContent).toMatch(/library: 0\.6.L\/kg/)
    expect(held.textContent).toContain('from the maker of this cellar')
    expect((await row('How it treats liquid', /Held after pressing/)).textContent).not.toContain(
      'library:',
    )
  })

  it('tells what batches taught, and links to them', async () => {
    const drained = { own: 0.42, library: 0.6, blended: 0.48, batchIds: ['damson', 'quince', 'x'] }
    show(fruitPage({ library: sloe, learned: { fruitId: 'sloe', drainedLPerKg: drained } }))
    const section = within(await screen.findByRole('region', { name: 'From your batches' }))
    expect(
      section.getByText(
        /Yours: 0\.42.L\/kg from 3 batches; library 0\.6.L\/kg; reckoned with 0\.48.L\/kg\./,
      ),
    ).toBeTruthy()
    await section.findByRole('link', { name: 'Hedge damson' })
    expect(section.getAllByRole('link').map((link) => link.getAttribute('href'))).toEqual([
      '#/batches/damson',
      '#/batches/quince',
      '#/batches/x',
    ])
  })

  it('says how to learn while nothing was learned', async () => {
    show()
    expect(await screen.findByText(/Nothing learned yet/)).toBeTruthy()
  })

  it('keeps a copy with one figure changed, and comes back to the page', async () => {
    const { bridge, user } = show(undefined, { 'fruits.keep': copy })
    await user.click(await screen.findByRole('button', { name: 'Edit' }))
    const form = within(screen.getByRole('form', { name: 'Edit Sloe' }))
    expect(document.activeElement).toBe(form.getByRole('textbox', { name: 'Name' }))
    const held = within(form.getByRole('group', { name: 'Held after draining' }))
    const typical = held.getByRole('textbox', { name: 'Typical' })
    await user.clear(typical)
    await user.type(typical, '0,5')
    await user.click(form.getByRole('button', { name: 'Save' }))
    const [kept] = bridge.requests('fruits.keep')
    expect(kept).toEqual({
      ...sloe,
      drainedLPerKg: 0.5,
      drainedRangeLPerKg: { ...sloe.drainedRangeLPerKg, typical: 0.5 },
    })
    const edit = await screen.findByRole('button', { name: 'Edit' })
    expect(document.activeElement).toBe(edit)
  })

  it('says beside the field what is wrong, and sends nothing', async () => {
    const { bridge, user } = show()
    await user.click(await screen.findByRole('button', { name: 'Edit' }))
    const form = within(screen.getByRole('form', { name: 'Edit Sloe' }))
    await user.clear(form.getByRole('textbox', { name: 'Name' }))
    const water = form.getByRole('textbox', { name: 'Water' })
    await user.clear(water)
    await user.type(water, '99')
    expect(form.getByText(/that is more than 100 %/)).toBeTruthy()
    const time = within(form.getByRole('group', { name: 'Time in the spirit' }))
    await user.clear(time.getByRole('textbox', { name: 'High' }))
    const pressed = within(form.getByRole('group', { name: 'Held after pressing' }))
    await user.clear(pressed.getByRole('textbox', { name: 'Low' }))
    await user.type(pressed.getByRole('textbox', { name: 'Low' }), '0.9')
    expect(pressed.getByText('Low, typical and high must rise.')).toBeTruthy()
    await user.click(form.getByRole('button', { name: 'Save' }))
    expect(form.getByText('Give it a name.')).toBeTruthy()
    expect(time.getByText('Fill in all three, or none.')).toBeTruthy()
    expect(form.getByText('Something above still needs a number.')).toBeTruthy()
    expect(bridge.requests('fruits.keep')).toEqual([])
  })

  it('goes back to the library after asking', async () => {
    const { bridge, user } = show(copy, { 'fruits.reset': {} })
    await user.click(await screen.findByRole('button', { name: 'Back to the library' }))
    const dialog = within(screen.getByRole('dialog', { name: 'Back to the library?' }))
    await user.click(dialog.getByRole('button', { name: 'Back to the library' }))
    expect(bridge.requests('fruits.reset')).toEqual([{ fruitId: 'sloe' }])
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull())
  })

  it('deletes a fruit of one’s own and returns to the list; one in use cannot go', async () => {
    const own = fruitPage({ fruit: sloe, origin: 'own' })
    const { user } = show(own, { 'fruits.reset': {}, 'fruits.origins': [] })
    await user.click(await screen.findByRole('button', { name: 'Delete' }))
    await user.click(within(screen.getByRole('dialog')).getByRole('button', { name: 'Delete' }))
    await waitFor(() => expect(window.location.hash).toBe('#/fruits'))
  })

  it('offers no deleting of a fruit that the book names, and says why', async () => {
    show(fruitPage({ origin: 'own', isUsed: true }))
    expect(await screen.findByText(/names it, so it stays/)).toBeTruthy()
    expect(screen.queryByRole('button', { name: 'Delete' })).toBeNull()
  })

  it('says when a fruit is no longer there', async () => {
    showApp('/fruits/gone', { 'fruits.page': () => refused('notFound') })
    expect((await screen.findByRole('alert')).textContent).toContain('no longer in the book')
  })
})
