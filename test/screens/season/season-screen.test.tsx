import { screen, waitFor, within } from '@testing-library/react'
import { beforeAll, describe, expect, it } from 'vitest'
import { refused } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'
import {
  calendar,
  fruits,
  job,
  keptPlan,
  kind,
  line,
  purchases,
  season,
  seasonPlan,
  weekAt,
  wishes,
} from './season-fixture.ts'

// The screen is fetched when it is first opened; here that would count against the first test.
beforeAll(() => import('../../../renderer/screens/season/season-screen.tsx'))

const show = (path: string, answers = {}) => showApp(path, { ...season, ...answers })
const kept = { 'season.lastPlan': keptPlan(), 'purchases.list': purchases() }
const plain = (element: Element | null | undefined) =>
  (element?.textContent ?? '').replaceAll('\u00a0', ' ')

describe('SeasonScreen', () => {
  it('says what a plan is for and makes one with the wishes kept', async () => {
    const done = job({ plan: seasonPlan() })
    const { bridge, user } = show('/season', {
      'season.startPlan': job({ state: 'running', step: 'recipes', progress: 0 }),
      'season.planState': done,
    })
    const make = await screen.findByRole('button', { name: 'Make the plan' })
    // The region is there before it has an answer, so that what comes into it is read out.
    const region = screen.getByText(/No plan is made yet/).closest('[aria-live="polite"]')
    await user.click(make)
    const answer = await screen.findByText(/Lay down 19 bottles \(9\.80/)
    expect(region?.contains(answer)).toBe(true)
    expect(bridge.requests('season.startPlan')).toMatchObject([
      { wishes: wishes(), isExplained: true, timeLimitSeconds: 30 },
    ])
    expect(screen.getByRole('button', { name: 'Keep this plan' })).toBeTruthy()
  })

  it('answers with what it takes, what is short and why', async () => {
    show('/season', kept)
    const answer = await screen.findByText(/It takes/)
    expect(plain(answer)).toBe(
      'It takes 7.00 kg of fruit and 4.60 L of spirit at 96.0 % vol, and €142.50 to pay.',
    )
    expect(plain(screen.getByText(/less than wanted: no fitting jar is free/))).toContain('2.00 L')
  })

  it('keeps the earlier plan in sight while a new one is made, and can stop it', async () => {
    const running = job({ state: 'running', step: 'saving', progress: 0.4, gapShare: 0.07 })
    const { bridge, user } = show('/season', {
      ...kept,
      'season.startPlan': running,
      'season.planState': running,
      'season.cancelPlan': () => {
        bridge.answer({ 'season.planState': job({ state: 'cancelled' }) })
        return job({ state: 'cancelled', progress: 0.4 })
      },
    })
    await user.click(await screen.findByRole('button', { name: 'Make the plan anew' }))
    const bar = await screen.findByRole('progressbar')
    await waitFor(() => expect(bar.getAttribute('value')).toBe('0.4'))
    expect(screen.getByText('Looking for a cheaper way')).toBeTruthy()
    expect(screen.getByText(/Lay down 19 bottles/)).toBeTruthy()
    const regions = screen.getAllByRole('status')
    await user.click(screen.getByRole('button', { name: 'Stop' }))
    expect(regions).toContain(await screen.findByText(/Stopped/))
    expect(bridge.requests('season.cancelPlan')).toEqual([{ jobId: 'job' }])
    expect(screen.getByText(/Lay down 19 bottles/)).toBeTruthy()
  })

  it('asks on until the plan is made', async () => {
    const states = [
      job({ state: 'running', step: 'covering', progress: 0.1 }),
      job({
        state: 'running',
        step: 'explaining',
        progress: 0.8,
        plan: seasonPlan({ reliefs: [] }),
      }),
      job({ plan: seasonPlan() }),
    ]
    const { bridge, user } = show('/season', {
      'season.startPlan': states[0],
      'season.planState': () => states[Math.min(2, bridge.requests('season.planState').length)],
    })
    await user.click(await screen.findByRole('button', { name: 'Make the plan' }))
    expect(await screen.findByText('Still being worked out.')).toBeTruthy()
    expect(await screen.findByText(/One more jar of 10/)).toBeTruthy()
    const asked = bridge.requests('season.planState').length
    await new Promise((later) => setTimeout(later, 900))
    expect(bridge.requests('season.planState')).toHaveLength(asked)
  })

  it('remembers the plan that is made while another screen is open', async () => {
    const { user } = show('/season', {
      'season.startPlan': job({ plan: seasonPlan() }),
      'season.planState': job({ plan: seasonPlan() }),
    })
    await user.click(await screen.findByRole('button', { name: 'Make the plan' }))
    await screen.findByText(/Lay down 19 bottles/)
    await user.click(screen.getByRole('link', { name: 'Batches' }))
    await screen.findByRole('heading', { name: 'Batches', level: 1 })
    await user.click(screen.getByRole('link', { name: 'Season' }))
    expect(await screen.findByText(/Lay down 19 bottles/)).toBeTruthy()
    expect(screen.getByText(/Not kept yet/)).toBeTruthy()
  })

  it('keeps a plan under the id of its job, so that it is kept once', async () => {
    const done = job({ plan: seasonPlan() })
    const { bridge, user } = show('/season', {
      'season.startPlan': done,
      'season.planState': done,
      'season.keepPlan': () => {
        bridge.answer(kept)
        return keptPlan()
      },
    })
    await user.click(await screen.findByRole('button', { name: 'Make the plan' }))
    await user.click(await screen.findByRole('button', { name: 'Keep this plan' }))
    expect(await screen.findByRole('button', { name: 'Buy this week: 1 thing' })).toBeTruthy()
    expect(bridge.requests('season.keepPlan')).toEqual([{ id: 'job', jobId: 'job' }])
  })

  it('says what failed and leaves the plan before', async () => {
    const { user } = show('/season', { ...kept, 'season.startPlan': () => refused('bookBusy') })
    await user.click(await screen.findByRole('button', { name: 'Make the plan anew' }))
    expect(await screen.findByRole('alert')).toBeTruthy()
    expect(screen.getByText(/Lay down 19 bottles/)).toBeTruthy()
  })

  it('has nothing to plan without jars', async () => {
    show('/season', { 'jars.list': [] })
    expect(await screen.findByText(/No jar is here to steep in/)).toBeTruthy()
    expect(screen.getByRole('button', { name: 'Add your jars' })).toBeTruthy()
  })

  it('leads to the wishes where nothing is wanted', async () => {
    const plan = seasonPlan({
      kinds: [kind({ needs: [], wantedMl: 0, plannedMl: { value: 0, low: 0, high: 0 } })],
      batches: [],
      spans: [],
      binding: [],
      notices: [{ code: 'noHistory' }, { code: 'nothingWanted' }],
      totals: { ...seasonPlan().totals, batches: 0, bottles: 0, shortMl: 0 },
    })
    show('/season', { 'season.lastPlan': keptPlan(plan) })
    expect(await screen.findByText(/Nothing is wanted yet/)).toBeTruthy()
    expect(screen.getByRole('button', { name: 'Say what you want' })).toBeTruthy()
    expect(screen.getByText(/only your wishes count/)).toBeTruthy()
    expect(await screen.findByText(/Nothing is asked of Damson/)).toBeTruthy()
  })

  it('says how far from the best a plan may be when time was up, and looks for longer', async () => {
    const plan = seasonPlan({
      proof: { isProven: false, gapShare: 0.043, seconds: 30.2 },
      notices: [{ code: 'timeUp' }],
    })
    const { bridge, user } = show('/season', {
      'season.lastPlan': keptPlan(plan),
      'season.startPlan': job({ state: 'running', step: 'recipes' }),
      'season.planState': job({ state: 'running', step: 'recipes' }),
    })
    expect(
      await screen.findByText(/The time was up after 30 seconds: .* more than 4%/),
    ).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Look for longer' }))
    await waitFor(() =>
      expect(bridge.requests('season.startPlan')).toMatchObject([{ timeLimitSeconds: 120 }]),
    )
  })
})

describe('the plan', () => {
  it('tells each kind with its band, and why it is short', async () => {
    show('/season', kept)
    const cherry = await screen.findByRole('row', { name: /^Sour cherry.*for drinking/ })
    expect(plain(cherry)).toContain('4.90 L to 6.30 L')
    expect(plain(cherry)).toContain('by the recipe alone')
    const quince = screen.getByRole('row', { name: /^Quince.*for gifts/ })
    expect(plain(quince)).toContain('2.00 Lno fitting jar is free and the money does not reach')
  })

  it('names what binds, and what easing it would bring', async () => {
    show('/season', kept)
    await screen.findAllByText('Quince')
    const section = screen.getByRole('region', { name: 'What stands in the way' })
    expect(plain(section)).toContain('Every jar of 10 L is taken in')
    expect(plain(section)).toContain(
      'Because no fitting jar is free and the money does not reach: Quince 2.00 L less than wanted.',
    )
    const row = within(section).getByRole('row', { name: /One more jar of 10/ })
    expect(plain(row)).toContain('Quince +2.00 L')
    expect(plain(within(section).getByRole('row', { name: /€100\.00 more to spend/ }))).toContain(
      'nothing',
    )
  })

  it('tells a jar’s weeks when its bar has the focus, and arrows go from bar to bar', async () => {
    const { user } = show('/season', kept)
    const section = await screen.findByRole('region', { name: 'Jars over the year' })
    await within(section).findAllByText('Hedge damson')
    const bars = within(section).getAllByRole('button', {
      name: /^(Old crock|South jar|North jar|Spare):/,
    })
    expect(bars.filter(({ tabIndex }) => tabIndex === 0)).toHaveLength(1)
    await user.tab()
    for (let tabs = 0; document.activeElement !== bars[0] && tabs < 60; tabs += 1) await user.tab()
    expect(plain(section)).toContain('Old crock: Hedge damson, settles, of today’s')
    await user.keyboard('{ArrowRight}')
    expect(plain(document.activeElement)).toBe('Sour cherry')
    expect(plain(section)).toMatch(/Old crock: Sour cherry, steeps, .*\(6 weeks\), 8\.20 L\./)
    expect(within(section).getByRole('button', { name: 'Open as a draft' })).toBeTruthy()
  })

  it('has the jars’ year as a table, too', async () => {
    const { user } = show('/season', kept)
    const section = await screen.findByRole('region', { name: 'Jars over the year' })
    await user.click(within(section).getByRole('button', { name: 'Show as table' }))
    const rows = within(section).getAllByRole('row')
    // A line a span, one for the jar that is never used, and the head.
    expect(rows).toHaveLength(8 + 1)
    expect(plain(within(section).getByRole('row', { name: /South jar/ }))).toContain('7.60 L')
  })

  it('opens a batch as a draft with its numbers', async () => {
    const { bridge, user } = show('/season', kept)
    await user.click(await screen.findByRole('button', { name: /Open as a draft: Damson/ }))
    await waitFor(() => expect(bridge.requests('drafts.keep')).toHaveLength(1))
    const [draft] = bridge.requests('drafts.keep')
    const [batch] = seasonPlan().batches
    expect(draft).toMatchObject({
      name: /^Damson 20/.exec(draft?.name ?? '') && draft?.name,
      pins: [],
    })
    expect(draft?.spec).toEqual(batch?.spec)
  })
})

describe('wishes and limits', () => {
  it('tells what drinking asks for, kind by kind, in words', async () => {
    show('/season/wishes', kept)
    const name = await screen.findByRole('heading', { name: 'Damson' })
    expect(plain(name.closest('li'))).toContain(
      'So 4.20 L is wanted: 2.20 L for drinking and 2.00 L for reserve.',
    )
  })

  it('keeps a wish once it says how much, and not before', async () => {
    const { bridge, user } = show('/season/wishes', {
      ...kept,
      'season.keepWishes': (asked: unknown) => asked,
    })
    await user.click(await screen.findByRole('button', { name: 'Add a wish for Damson' }))
    const wish = screen.getByRole('group', { name: 'Wish for Damson' })
    expect(plain(wish)).toContain('Until then this wish is not kept')
    await new Promise((later) => setTimeout(later, 700))
    expect(bridge.requests('season.keepWishes')).toEqual([])
    await user.type(within(wish).getByRole('textbox', { name: /At least/ }), '3')
    await user.click(within(wish).getByRole('radio', { name: 'must' }))
    await waitFor(() => expect(bridge.requests('season.keepWishes')).toHaveLength(1), {
      timeout: 3000,
    })
    expect(bridge.requests('season.keepWishes')[0]?.wishes[1]).toMatchObject({
      kindId: 'damson',
      atLeastMl: 3000,
      priority: 'must',
    })
    expect(screen.getByText(/The wishes have changed since/)).toBeTruthy()
  })

  it('keeps what was typed when the view is left at once', async () => {
    const { bridge, user } = show('/season/wishes', {
      ...kept,
      'season.keepWishes': (asked: unknown) => asked,
    })
    await user.type(await screen.findByRole('textbox', { name: /Money for the season/ }), '120')
    await user.click(screen.getByRole('link', { name: 'Batches' }))
    await waitFor(() =>
      expect(bridge.requests('season.keepWishes').at(-1)?.limits.moneyMinor).toBe(12_000),
    )
  })

  it('leaves a field as it is written while the book answers', async () => {
    const { bridge, user } = show('/season/wishes', {
      ...kept,
      'season.keepWishes': (asked: unknown) => asked,
    })
    const field = await screen.findByRole('textbox', { name: /Money for the season/ })
    await user.type(field, '80.')
    await waitFor(() => expect(bridge.requests('season.keepWishes')).toHaveLength(1), {
      timeout: 3000,
    })
    bridge.answer({
      'season.wishes': wishes({ limits: { isSpiritAtHandOnly: false, moneyMinor: 8000 } }),
    })
    bridge.bookChanged()
    await new Promise((later) => setTimeout(later, 100))
    await user.type(field, '5')
    expect((field as HTMLInputElement).value).toBe('80.5')
  })

  it('removes a wish', async () => {
    const { bridge, user } = show('/season/wishes', {
      ...kept,
      'season.keepWishes': (asked: unknown) => asked,
    })
    await user.click(await screen.findByRole('button', { name: 'Remove this wish for Quince' }))
    await waitFor(() => expect(bridge.requests('season.keepWishes')[0]?.wishes).toEqual([]), {
      timeout: 3000,
    })
  })
})

describe('the fruit calendar', () => {
  it('shows own kinds first and the others when asked', async () => {
    const { user } = show('/season/fruit')
    const own = await screen.findByRole('region', { name: 'Kinds this cellar makes' })
    expect(within(own).getAllByRole('link').map(plain)).toEqual(['Sour cherry', 'Damson'])
    expect(screen.queryByRole('link', { name: /^Quince/ })).toBeNull()
    await user.click(screen.getByRole('button', { name: 'Show 1 other fruit' }))
    expect(screen.getByRole('link', { name: /^Quince/ })).toBeTruthy()
  })

  it('tells a fruit’s season, the maker’s own dates and the pantry', async () => {
    show('/season/fruit')
    const link = await screen.findByRole('link', { name: /^Damson/ })
    expect(link.getAttribute('aria-label')).toMatch(/your own dates lie 1 week later.*bought/)
    const cherry = screen.getByRole('link', { name: /^Sour cherry/ })
    expect(cherry.getAttribute('aria-label')?.replaceAll('\u00a0', ' ')).toContain(
      '1.50 kg in the pantry',
    )
  })

  it('has a table with the same', async () => {
    const { user } = show('/season/fruit')
    await user.click(await screen.findByRole('button', { name: 'Show as table' }))
    expect(plain(screen.getByRole('row', { name: /Damson/ }))).toMatch(/Damson.* to .*8 Sept 2024/)
  })

  it('keeps the region as it is changed', async () => {
    const { bridge, user } = show('/season/fruit', {
      'season.changeRegion': (asked: unknown) => asked,
    })
    await user.click(await screen.findByRole('radio', { name: 'Mediterranean' }))
    await waitFor(() =>
      expect(bridge.requests('season.changeRegion')).toEqual([
        { zone: 'mediterranean', ownShiftWeeks: 0 },
      ]),
    )
    const shift = screen.getByRole('textbox', { name: /Later at your place/ })
    await user.clear(shift)
    await user.type(shift, '-1.5')
    await waitFor(() =>
      expect(bridge.requests('season.changeRegion').at(-1)).toMatchObject({ ownShiftWeeks: -1.5 }),
    )
  })

  it('asks for the weeks that are looked at', async () => {
    const { bridge, user } = show('/season/fruit', { 'season.calendar': calendar() })
    await user.click(await screen.findByRole('button', { name: 'Later' }))
    await waitFor(() => expect(bridge.requests('season.calendar').length).toBe(2))
    const [first, second] = bridge.requests('season.calendar')
    const days = (Date.parse(second?.from ?? '') - Date.parse(first?.from ?? '')) / 86_400_000
    expect(days).toBe(91)
  })
})

describe('the purchase list', () => {
  it('has this week on top, and what is at hand', async () => {
    show('/season/buy', kept)
    const rows = (await screen.findAllByRole('row')).map(plain)
    expect(rows[1]).toBe('This week and overdue')
    expect(rows[2]).toContain('Spirit 96.0 % volfor Sour cherry1.00 L more is at hand3.60 L€68.40')
  })

  it('tells the batches of one kind apart, and leads to the calendar', async () => {
    const twice = [32, 34].map((week) => ({ kindId: 'sour_cherry', startAt: weekAt(week) }))
    const lines = [line({ batches: [...twice, { kindId: 'damson', startAt: weekAt(40) }] })]
    show('/season/buy', { ...kept, 'purchases.list': purchases({ lines }) })
    const row = plain(await screen.findByRole('row', { name: /Spirit 96/ }))
    expect(row).toMatch(/for Sour cherry of \d+ \w+( \d+)?, Sour cherry of .+,? and Damson/)
    const link = screen.getByRole('link', { name: 'Set up the calendar' })
    expect(link.getAttribute('href')).toBe('#/today/calendar')
  })

  it('ticks a line off with what was really bought and paid', async () => {
    const { bridge, user } = show('/season/buy', {
      ...kept,
      'purchases.tick': { list: purchases(), groupId: 'bought' },
    })
    await user.click(await screen.findByRole('button', { name: 'Bought: Sour cherry' }))
    const dialog = screen.getByRole('dialog', { name: 'Bought: Sour cherry' })
    const amount = within(dialog).getByRole('textbox', { name: /How much was bought/ })
    expect((amount as HTMLInputElement).value).toBe('4')
    await user.clear(amount)
    await user.type(amount, '3.8')
    const paid = within(dialog).getByRole('textbox', { name: /What it cost/ })
    await user.clear(paid)
    await user.type(paid, '22.50{Enter}')
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull())
    expect(plain(document.activeElement)).toBe('Sour cherry is bought: 3.80 kg.')
    expect(bridge.requests('purchases.tick')).toMatchObject([
      { lineKey: 'w32 fruit sour_cherry', isTicked: true, massG: 3800, priceMinor: 2250 },
    ])
  })

  it('takes a purchase back, unless some of it is used', async () => {
    const at = weekAt(0)
    const { bridge, user } = show('/season/buy', {
      ...kept,
      'purchases.list': purchases({
        lines: [
          line({
            ticked: { at, lotId: 'l', volumeMl: 2000, priceMinor: 3900, canBeTakenBack: true },
          }),
          line({
            key: 'used',
            strengthPctVol: 70,
            ticked: { at, lotId: 'm', canBeTakenBack: false },
          }),
        ],
      }),
      'purchases.tick': { list: purchases(), groupId: 'bought' },
    })
    expect(plain(await screen.findByRole('row', { name: /Spirit 70/ }))).toContain('used already')
    expect(plain(screen.getByRole('row', { name: /Spirit 96/ }))).toContain('2.00 L€39.00')
    await user.click(screen.getByRole('button', { name: /Take it back: Spirit 96/ }))
    await waitFor(() =>
      expect(bridge.requests('purchases.tick')).toMatchObject([
        { lineKey: 'w0 spirit 96', isTicked: false },
      ]),
    )
  })

  it('comes from a plan that is kept', async () => {
    show('/season/buy')
    expect(await screen.findByText(/comes from a plan that is kept/)).toBeTruthy()
  })
})

describe('last season', () => {
  it('sets the plan of then beside what was done and what is planned now', async () => {
    show('/season/compare', kept)
    const row = plain(await screen.findByRole('row', { name: /Damson/ }))
    expect(row).toContain('5.20 L, 10 bottles')
    expect(row).toContain('1.50 L, 3 bottles')
    expect(row).toContain('2.32 L still in jars')
    expect(row).toContain('goods for at least €31.00')
    expect(row).toContain('4.20 L, 8 bottles')
    expect(plain(screen.getByRole('row', { name: /Money/ }))).toBe(
      'Money, all purchases€160.00at least €124.80€142.50',
    )
  })

  it('asks for the plan just made while it is not kept', async () => {
    const { bridge, user } = show('/season', {
      'fruits.list': fruits,
      'season.startPlan': job({ plan: seasonPlan() }),
      'season.planState': job({ plan: seasonPlan() }),
    })
    await user.click(await screen.findByRole('button', { name: 'Make the plan' }))
    await screen.findByText(/Lay down 19 bottles/)
    await user.click(screen.getByRole('link', { name: 'Last season' }))
    await waitFor(() => expect(bridge.requests('season.compare')).toEqual([{ jobId: 'job' }]))
  })
})
