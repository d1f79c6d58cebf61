import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import type { SeasonJob, SeasonWishes } from '../../shared/schemas/season.ts'
import { textOfPdf } from './pdf-text.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

const wished: SeasonWishes['wishes'] = [
  {
    id: 'w1',
    kindId: 'damson',
    purpose: 'drink',
    priority: 'must',
    atLeastMl: 2000,
    note: '',
  },
]

async function withWishes({ ask }: Trial): Promise<SeasonWishes> {
  const usual = await ask('season.wishes', {})
  const prices = { ...usual.prices, bottleMinor: 90 }
  return ask('season.keepWishes', { ...usual, prices, wishes: wished })
}

async function ended({ ask }: Trial, jobId: string): Promise<SeasonJob> {
  for (;;) {
    const job = await ask('season.planState', { jobId })
    if (job.state !== 'running') return job
    await new Promise((resolve) => setTimeout(resolve, 20))
  }
}

/** Read by a parser that is not ours. */
function eventsOf(ics: string) {
  const calendar = new ICAL.Component(ICAL.parse(ics) as string)
  return new Map(
    calendar.getAllSubcomponents('vevent').map((found) => {
      const event = new ICAL.Event(found)
      const { uid, summary, description, sequence, duration } = event
      const status = String(found.getFirstPropertyValue('status'))
      const firstDay = event.startDate.toString()
      const days = duration.toSeconds() / 86_400
      return [uid, { firstDay, days, summary, description, sequence, status }]
    }),
  )
}

const start = { isExplained: false, timeLimitSeconds: 20 }

/** Damsons wished, planned, and the plan kept. */
async function withPlan(t: Trial): Promise<SeasonJob> {
  await withPantry(t)
  await withWishes(t)
  await t.ask('season.startPlan', { ...start, jobId: 'job' })
  const job = await ended(t, 'job')
  await t.ask('season.keepPlan', { id: 'plan', jobId: 'job' })
  return job
}

describe('season', () => {
  it('tells a fruit year from any day a maker may mean, and from none beyond', async () => {
    const { ask, refusal, service } = await trial()
    for (const from of ['1900-01-05T00:00:00Z', '2999-12-30T00:00:00Z'])
      expect((await ask('season.calendar', { from })).weekStarts).toHaveLength(52)
    for (const from of ['9999-12-20T00:00:00Z', '0001-01-01T00:00:00Z'])
      expect(await refusal('season.calendar', { from })).toMatchObject({ code: 'badInput' })
    service.close()
  })

  it('begins with the cellar’s own habits, and keeps wishes and region', async () => {
    const t = await trial()
    await withPantry(t)
    expect(await t.ask('season.wishes', {})).toMatchObject({ spiritPctVol: 96, wishes: [] })
    const kept = await withWishes(t)
    expect(await t.ask('season.wishes', {})).toEqual(kept)
    await t.ask('season.changeRegion', { zone: 'southTemperate', ownShiftWeeks: 1 })
    const { region, fruits, weekStarts } = await t.ask('season.calendar', {})
    expect(region).toEqual({ zone: 'southTemperate', ownShiftWeeks: 1 })
    expect(weekStarts[0]).toBe('2026-11-16T00:00:00.000Z')
    expect(fruits.find(({ fruitId }) => fruitId === 'damson')).toMatchObject({ pantryG: 3000 })
    t.service.close()
  })

  it('refuses a wish for a fruit that is nowhere', async () => {
    const t = await trial()
    const usual = await t.ask('season.wishes', {})
    const wishes = [{ ...wished[0]!, kindId: 'nowhere' }]
    const error = await t.refusal('season.keepWishes', { ...usual, wishes })
    expect(error.code).toBe('notFound')
    t.service.close()
  })

  it('plans in a thread of its own, from wishes and the pantry, and keeps the plan', async () => {
    const t = await trial()
    const { state, plan, progress } = await withPlan(t)
    expect([state, progress]).toEqual(['done', 1])
    const damson = plan!.kinds.find(({ kindId }) => kindId === 'damson')!
    expect(damson.shortMl).toBe(0)
    expect(Math.abs(damson.plannedMl.value - 2000)).toBeLessThan(10)
    // The damsons of the pantry are enough.
    expect(plan!.batches.map(({ source }) => source)).toEqual(['pantry'])
    expect(plan!.purchases.filter(({ what }) => what === 'fruit')).toEqual([])
    const kept = await t.ask('season.lastPlan', {})
    expect(kept).toMatchObject({ id: 'plan', keptAt: '2026-11-20T18:00:00.000Z' })
    expect(kept!.plan).toEqual(plan)
    t.service.close()
  })

  it('answers meanwhile, ends a cancelled plan, and knows no other', async () => {
    const t = await trial()
    await withPantry(t)
    await withWishes(t)
    const begun = await t.ask('season.startPlan', { ...start, jobId: 'one' })
    expect(begun.state).toBe('running')
    expect(await t.ask('jars.list', {})).toHaveLength(3)
    const cancelled = await t.ask('season.cancelPlan', { jobId: 'one' })
    expect(cancelled.state).toBe('cancelled')
    expect((await t.refusal('season.keepPlan', { id: 'p', jobId: 'one' })).code).toBe('notFound')
    expect((await t.refusal('season.planState', { jobId: 'nope' })).code).toBe('notFound')
    // The same job again is the one there is; a new one ends the one before.
    expect(await t.ask('season.startPlan', { ...start, jobId: 'one' })).toEqual(cancelled)
    await t.ask('season.startPlan', { ...start, jobId: 'two' })
    await t.ask('season.startPlan', { ...start, jobId: 'three' })
    expect((await t.ask('season.planState', { jobId: 'two' })).state).toBe('cancelled')
    expect((await ended(t, 'three')).state).toBe('done')
    t.service.close()
  })

  it('says so where there are no jars', async () => {
    const t = await trial()
    await withWishes(t)
    await t.ask('season.startPlan', { ...start, jobId: 'job' })
    const { plan } = await ended(t, 'job')
    expect(plan!.notices.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['noJars', 'noHistory']),
    )
    t.service.close()
  })

  it('compares with the season before, and with what was done in it', async () => {
    const t = await trial()
    await withPlan(t)
    await t.ask('moves.record', {
      key: 'charge',
      moves: [
        {
          kind: 'charge',
          at: '2026-11-20T10:00:00Z',
          batchId: 'damson',
          jarId: 'north',
          lotId: 'damsons',
          massG: 1000,
          cut: 'whole',
        },
      ],
    })
    t.setNow('2027-11-20T18:00:00Z')
    await t.ask('season.startPlan', { ...start, jobId: 'next' })
    await ended(t, 'next')
    await t.ask('season.keepPlan', { id: 'plan-2', jobId: 'next' })
    const compared = await t.ask('season.compare', {})
    expect(compared).toMatchObject({ from: '2026-11-16T00:00:00.000Z', earlier: { id: 'plan' } })
    const damson = compared.kinds.find(({ kindId }) => kindId === 'damson')!
    expect(damson.happened).toMatchObject({ fruitG: 1000, bottles: 0, batchIds: ['damson'] })
    // A third of 3 kg for 12 euros, bought before that season began.
    expect(damson.happened!.spent!.minor).toBeCloseTo(400)
    expect(damson.happened!.spent!.isComplete).toBe(true)
    expect(compared.money.happened).toBeUndefined()
    expect(damson.earlier!.volumeMl).toBeGreaterThan(1900)
    t.service.close()
  })
})

describe('purchases', () => {
  it('are none while no plan is kept', async () => {
    const t = await trial()
    expect(await t.ask('purchases.list', {})).toMatchObject({ lines: [], openMinor: 0 })
    t.service.close()
  })

  it('become a pantry lot with its price when ticked, and are struck again when unticked', async () => {
    const t = await trial()
    await withPlan(t)
    // Wishes without the pantry's damsons: these have to be bought.
    await t.ask('moves.record', {
      key: 'gone',
      moves: [{ kind: 'discard', at: '2026-11-20T12:00:00Z', from: { lotId: 'damsons' } }],
    })
    await t.ask('season.startPlan', { ...start, jobId: 'again' })
    await ended(t, 'again')
    t.setNow('2026-11-20T19:00:00Z')
    await t.ask('season.keepPlan', { id: 'again', jobId: 'again' })
    const { lines, openMinor } = await t.ask('purchases.list', {})
    const fruit = lines.find(({ what }) => what === 'fruit')!
    expect(fruit.priceMinor).toBe(Math.round((fruit.massG! / 1000) * 400))
    const ticking = { lineKey: fruit.key, isTicked: true, massG: 1500, priceMinor: 650 }
    const { list: after } = await t.ask('purchases.tick', { ...ticking, key: 't1' })
    const ticked = after.lines.find(({ key }) => key === fruit.key)!.ticked!
    expect(ticked).toMatchObject({ massG: 1500, priceMinor: 650, canBeTakenBack: true })
    expect(after.openMinor).toBe(openMinor - fruit.priceMinor!)
    const lot = (await t.ask('pantry.list', {})).find(({ id }) => id === ticked.lotId)!
    expect(lot).toMatchObject({ priceMinor: 650, goods: { fruitId: 'damson' } })
    expect(lot.massG).toBeCloseTo(1500)

    // The same request again, or the same line, buys nothing more.
    await t.ask('purchases.tick', { ...ticking, key: 't1' })
    await t.ask('purchases.tick', { ...ticking, key: 't2' })
    expect(await t.ask('pantry.list', {})).toHaveLength(4)

    const untick = { lineKey: fruit.key, isTicked: false }
    const open = await t.ask('purchases.tick', { ...untick, key: 't3' })
    expect(open.list.lines.find(({ key }) => key === fruit.key)!.ticked).toBeUndefined()
    expect(await t.ask('pantry.list', {})).toHaveLength(3)

    // Taking the strike back ticks the line again, with what was paid.
    await t.ask('moves.undo', { key: 'u1', groupId: open.groupId! })
    const again = (await t.ask('purchases.list', {})).lines.find(({ key }) => key === fruit.key)!
    expect(again.ticked).toEqual(ticked)
    t.service.close()
  })

  it('keep no account of bottles: they are ticked, and their price is paid', async () => {
    const t = await trial()
    await withPlan(t)
    const { lines } = await t.ask('purchases.list', {})
    const bottles = lines.find(({ what }) => what === 'bottle')!
    await t.ask('purchases.tick', { key: 'b', lineKey: bottles.key, isTicked: true, count: 6 })
    const list = await t.ask('purchases.list', {})
    expect(list.lines.find(({ key }) => key === bottles.key)!.ticked).toMatchObject({ count: 6 })
    expect(await t.ask('pantry.list', {})).toHaveLength(3)
    const share = 6 / bottles.count!
    expect(list.paidMinor).toBe(Math.round(bottles.priceMinor! * share))
    const none = await t.refusal('purchases.tick', { key: 'x', lineKey: 'no', isTicked: true })
    expect(none.code).toBe('notFound')
    t.service.close()
  })

  it('stay bought once some of it is used, and are open again when the ledger undoes them', async () => {
    const t = await trial()
    await withPantry(t)
    const usual = await t.ask('season.wishes', {})
    const sloes = [{ ...wished[0]!, kindId: 'sloe' }]
    await t.ask('season.keepWishes', { ...usual, wishes: sloes })
    await t.ask('season.startPlan', { ...start, jobId: 'job' })
    await ended(t, 'job')
    await t.ask('season.keepPlan', { id: 'plan', jobId: 'job' })
    const sloe = async () =>
      (await t.ask('purchases.list', {})).lines.find(({ fruitId }) => fruitId === 'sloe')!
    const { key: lineKey } = await sloe()
    await t.ask('purchases.tick', { key: 'a', lineKey, isTicked: true })
    await t.ask('moves.undo', { key: 'undo' })
    expect((await sloe()).ticked).toBeUndefined()

    await t.ask('purchases.tick', { key: 'b', lineKey, isTicked: true })
    const { lotId } = (await sloe()).ticked!
    await t.ask('moves.record', {
      key: 'charge',
      moves: [
        {
          kind: 'charge',
          at: '2026-11-20T18:00:00Z',
          batchId: 'damson',
          jarId: 'north',
          lotId: lotId!,
          massG: 100,
          cut: 'whole',
        },
      ],
    })
    expect((await sloe()).ticked!.canBeTakenBack).toBe(false)
    const refused = await t.refusal('purchases.tick', { key: 'c', lineKey, isTicked: false })
    expect(refused.code).toBe('stillInUse')
    expect((await sloe()).ticked).toBeDefined()
    t.service.close()
  })

  it('stand in the calendar by week and shop, until they are bought or another plan is kept', async () => {
    const t = await trial()
    const { fruit } = await t.ask('fruits.page', { fruitId: 'damson' })
    await t.ask('fruits.keep', { ...fruit, nameEn: 'Damson, "wild"; \\n BEGIN:VEVENT' })
    await withPlan(t)
    const { lines, planId } = await t.ask('purchases.list', {})
    expect(planId).toBe('plan')
    const groups = Map.groupBy(lines, ({ from, shop }) => `${from.slice(0, 10)}.${shop}`)
    const entries = async () => {
      const { ics } = await t.ask('calendar.file', {})
      return new Map([...eventsOf(ics)].filter(([uid]) => uid.startsWith('buy.')))
    }
    const uidOf = (group: string) => `buy.plan.${group}@ratafia`
    const first = await entries()
    expect([...first.keys()].toSorted()).toEqual([...groups.keys()].map(uidOf).toSorted())
    const [group = '', own = []] = [...groups].find(([, { length }]) => length > 1) ?? []
    const monday = group.slice(0, 10)
    expect(first.get(uidOf(group))).toMatchObject({
      firstDay: monday,
      days: 7,
      summary: 'Buy bottles and corks',
      sequence: 0,
      status: 'CONFIRMED',
    })
    const told = first.get(uidOf(group))?.description.split('\n') ?? []
    expect(told).toHaveLength(own.length)
    expect(told[0]).toBe(
      `Bottles of 500 ml, ${own[0]?.count}, for Damson, "wild"; \\n BEGIN:VEVENT`,
    )

    const tickOff = async (bought: typeof lines) => {
      for (const [index, { key }] of bought.entries())
        await t.ask('purchases.tick', {
          key: `${bought.length}-${index}`,
          lineKey: key,
          isTicked: true,
        })
    }
    await tickOff(own.slice(0, 1))
    const less = (await entries()).get(uidOf(group))
    expect(less).toMatchObject({ sequence: 1, status: 'CONFIRMED' })
    expect(less?.description.split('\n')).toEqual(told.slice(1))
    await tickOff(own.slice(1))
    expect((await entries()).get(uidOf(group))).toMatchObject({ sequence: 2, status: 'CANCELLED' })

    t.setNow('2026-11-20T19:00:00Z')
    await t.ask('season.keepPlan', { id: 'other', jobId: 'job' })
    const after = [...(await entries())]
    const of = (plan: string) => after.filter(([uid]) => uid.startsWith(`buy.${plan}.`))
    expect(of('plan').map(([, { status }]) => status)).toEqual(of('plan').map(() => 'CANCELLED'))
    // What was bought for the plan before is bought.
    expect(of('other')).toHaveLength(groups.size - 1)
    t.service.close()
  })

  it('are printed and handed to a spreadsheet, by week and by shop', async () => {
    const t = await trial()
    await withPlan(t)
    const { csv, fileName } = await t.ask('purchases.csv', { by: 'shop' })
    expect(fileName).toBe('purchases 2026-11-20.csv')
    const [head, ...rows] = csv.trimEnd().split('\r\n')
    expect(head).toBe('Week of,Shop,Goods,g,ml,Count,Price (EUR),Bought on,For')
    expect(rows.every((row) => row.endsWith(',Damson'))).toBe(true)
    const { lines } = await t.ask('purchases.list', {})
    expect(rows).toHaveLength(lines.length)
    for (const by of ['week', 'shop'] as const) {
      const { pdfBase64 } = await t.ask('purchases.paper', { by, size: 'A4' })
      const text = await textOfPdf(pdfBase64)
      expect(text).toContain('Purchases')
      expect(text).toContain(by === 'week' ? 'Week of' : 'Bottles and corks')
      expect(text).toContain('Labels')
    }
    await t.ask('cellar.changeSettings', { language: 'pl', units: 'us' })
    const polish = await t.ask('purchases.csv', { by: 'shop' })
    expect(polish.csv).toMatch(/^Tydzień od,Sklep,Towar,lb,qt,Sztuk,Cena \(EUR\),Kupiono,Na\r\n/)
    expect(polish.csv).toContain(',Butelki i korki,Korki,')
    expect(polish.csv).not.toMatch(/Damson|Spirit|Labels/)
    t.service.close()
  })
})
