import { describe, expect, it } from 'vitest'
import type { Move } from '../../shared/schemas/moves.ts'
import type { Shelf } from '../../shared/schemas/shelf.ts'
import { massOf, sumMatter } from '../../shared/matter.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

const rack: Shelf = {
  id: 'rack',
  name: 'Rack',
  temperatureC: 13,
  light: 'dark',
  isRetired: false,
}
const sill: Shelf = { ...rack, id: 'sill', name: 'Sill', temperatureC: 22, light: 'daylight' }

let requests = 0
const record = (t: Trial, ...moves: Move[]) =>
  t.ask('moves.record', { key: `shelf-${(requests += 1)}`, moves })
const refused = (t: Trial, ...moves: Move[]) =>
  t.refusal('moves.record', { key: `shelf-${(requests += 1)}`, moves })

const day = (date: string) => `${date}T12:00:00Z`
const inBatch = (at: string) => ({ at: day(at), batchId: 'damson' })
const draw = (count: number, shelfId?: string): Move => ({
  at: day('2026-11-05'),
  kind: 'drawBottle',
  bottleLotId: 'lot',
  count,
  ...(shelfId !== undefined && { shelfId }),
})
const counted = (count: number, shelfId?: string | null): Move => ({
  at: day('2026-11-06'),
  kind: 'correct',
  found: { bottleLotId: 'lot', count, ...(shelfId !== undefined && { shelfId }) },
})
const open = (openedId: string): Move => ({
  at: day('2026-11-04'),
  kind: 'openBottle',
  bottleLotId: 'lot',
  openedId,
})

/** Ten small bottles of damson, six on the rack and four on the sill. */
async function bottled(): Promise<Trial> {
  const t = await trial()
  await withPantry(t)
  await t.ask('shelves.add', rack)
  await t.ask('shelves.add', sill)
  await record(
    t,
    {
      ...inBatch('2026-09-01'),
      kind: 'charge',
      jarId: 'north',
      lotId: 'damsons',
      massG: 1500,
      cut: 'pricked',
    },
    { ...inBatch('2026-09-02'), kind: 'pourWater', jarId: 'north', volumeMl: 400 },
    {
      ...inBatch('2026-09-02'),
      kind: 'pourSpirit',
      jarId: 'north',
      lotId: 'spirit',
      volumeMl: 1000,
    },
    {
      ...inBatch('2026-10-10'),
      kind: 'taste',
      jarId: 'north',
      scores: { heat: 9 },
      verdict: 'young',
    },
    { ...inBatch('2026-10-12'), kind: 'drawOff', fromJarId: 'north', toJarId: 'demijohn' },
    {
      ...inBatch('2026-10-20'),
      kind: 'bottle',
      fromJarId: 'demijohn',
      bottleLotId: 'lot',
      bottleSizeMl: 100,
      count: 10,
      shelfId: 'rack',
    },
    {
      at: day('2026-10-25'),
      kind: 'shelve',
      bottleLotId: 'lot',
      count: 4,
      fromShelfId: 'rack',
      toShelfId: 'sill',
    },
  )
  return t
}

const lotsOf = async (t: Trial, withGone = false) => (await t.ask('shelf.lots', { withGone })).lots
const placesOf = async (t: Trial) => (await lotsOf(t, true))[0]?.lot.places

/** The derived tables must say what the ledger says, before and after they are made again. */
async function expectDerivedRight(t: Trial): Promise<void> {
  const clean = { integrity: 'ok', bottleLotsDiffering: [], lotsDiffering: [], refusedMoves: [] }
  expect(await t.ask('cellar.check', {})).toMatchObject(clean)
  await t.ask('cellar.rebuild', {})
  expect(await t.ask('cellar.check', {})).toMatchObject(clean)
}

describe('shelves', () => {
  it('are kept, changed, and put out of use once no bottle stands on them', async () => {
    const t = await bottled()
    expect(await t.ask('shelves.list', {})).toEqual([rack, sill])
    expect((await t.refusal('shelves.add', rack)).code).toBe('alreadyThere')
    expect((await t.refusal('shelves.change', { ...rack, id: 'attic' })).code).toBe('notFound')
    await t.ask('shelves.change', { ...rack, temperatureC: 11 })
    expect((await t.ask('shelves.list', {}))[0]).toMatchObject({ temperatureC: 11 })
    expect((await t.refusal('shelves.change', { ...sill, isRetired: true })).code).toBe(
      'stillInUse',
    )
    await record(t, draw(4, 'sill'))
    expect(await t.ask('shelves.change', { ...sill, isRetired: true })).toMatchObject({
      isRetired: true,
    })
    t.service.close()
  })

  it('that a move names must be there', async () => {
    const t = await bottled()
    for (const move of [draw(1, 'attic'), counted(1, 'attic')])
      expect(await refused(t, move)).toMatchObject({
        code: 'notFound',
        details: { what: 'shelf', id: 'attic' },
      })
    t.service.close()
  })

  it('hold what was carried there, and the derived tables say so too', async () => {
    const t = await bottled()
    expect(await placesOf(t)).toEqual([
      { shelfId: 'rack', count: 6 },
      { shelfId: 'sill', count: 4 },
    ])
    await expectDerivedRight(t)
    await record(t, counted(3, 'sill'), draw(2, 'rack'))
    expect(await placesOf(t)).toEqual([
      { shelfId: 'rack', count: 4 },
      { shelfId: 'sill', count: 3 },
    ])
    await expectDerivedRight(t)
    t.service.close()
  })
})

describe('bottles', () => {
  it('are refused beyond what there is, with what there is', async () => {
    const t = await bottled()
    expect(await refused(t, draw(11))).toMatchObject({
      code: 'notEnough',
      details: { place: 'bottles:lot', unit: 'bottles', asked: 11, available: 10, nearest: 10 },
    })
    expect(await refused(t, draw(5, 'sill'))).toMatchObject({
      code: 'notEnough',
      details: { asked: 5, available: 4, nearest: 4 },
    })
    expect(await refused(t, open('o'), { ...open('o'), at: day('2026-11-05') })).toMatchObject({
      code: 'alreadyThere',
      details: { index: 1 },
    })
    t.service.close()
  })

  it('are never found in greater number than were filled', async () => {
    const t = await bottled()
    expect(await refused(t, counted(11))).toMatchObject({
      code: 'neverFilled',
      details: { asked: 11, available: 10, nearest: 10 },
    })
    expect(await refused(t, counted(5, 'sill'))).toMatchObject({
      code: 'neverFilled',
      details: { asked: 5, available: 10, nearest: 4 },
    })
    t.service.close()
  })

  it('opened, poured and topped up show their level, and an undo puts each back', async () => {
    const t = await bottled()
    await record(t, open('one'), open('two'))
    await record(t, { at: day('2026-11-06'), kind: 'pourGlass', openedId: 'one', volumeMl: 40 })
    await record(t, { at: day('2026-11-07'), kind: 'topUp', openedId: 'one', fromOpenedId: 'two' })
    const levels = async () =>
      (await t.ask('shelf.lots', { withGone: false })).opened.map(({ id, liquid }) => [
        id,
        Math.round(liquid?.volumeMl ?? 0),
      ])
    expect(await levels()).toEqual([
      ['one', 100],
      ['two', 60],
    ])
    await t.ask('moves.undo', { key: 'undo-top-up' })
    expect(await levels()).toEqual([
      ['one', 60],
      ['two', 100],
    ])
    await t.ask('moves.undo', { key: 'undo-pour' })
    await t.ask('moves.undo', { key: 'undo-open' })
    expect(await levels()).toEqual([])
    expect((await lotsOf(t))[0]?.lot.count).toBe(10)
    await expectDerivedRight(t)
    t.service.close()
  })

  it('are previewed like any other move, and nothing is written', async () => {
    const t = await bottled()
    const moves: Move[] = [
      open('o'),
      { at: day('2026-11-05'), kind: 'pourGlass', openedId: 'o', volumeMl: 500 },
      { at: day('2026-11-05'), kind: 'breakBottle', bottleLotId: 'lot', count: 1 },
      { ...inBatch('2026-11-05'), kind: 'taste', bottleLotId: 'lot', scores: { fruit: 6 } },
    ]
    const { refusals, steps } = await t.ask('moves.preview', { moves })
    expect(refusals).toMatchObject([{ index: 1, refusal: { code: 'notEnough', unit: 'ml' } }])
    expect(steps.map(({ recorded }) => recorded.move.kind)).toEqual([
      'openBottle',
      'breakBottle',
      'taste',
    ])
    expect((await lotsOf(t))[0]?.lot.count).toBe(10)
    t.service.close()
  })
})

describe('shelf.lots', () => {
  it('tells kind, vintage, window, cost and the last tasting of a lot', async () => {
    const t = await bottled()
    const [found] = await lotsOf(t)
    expect(found).toMatchObject({
      kindId: 'damson',
      fruitIds: ['damson'],
      vintage: 2026,
      lot: { id: 'lot', name: 'Damson', filledCount: 10, count: 10 },
      window: { phase: 'young' },
      lastTasted: { at: day('2026-10-10'), verdict: 'young' },
    })
    const { readyAt, fadingAt } = found?.window ?? {}
    expect(Date.parse(readyAt?.likely ?? '')).toBeGreaterThan(Date.parse('2026-11-20'))
    expect(Date.parse(fadingAt?.likely ?? '')).toBeGreaterThan(Date.parse(readyAt?.likely ?? ''))
    expect(found?.costPerBottle).toBeGreaterThan(0)
    t.service.close()
  })

  it('moves the window when the bottles stand warmer, and when the maker says it is ready', async () => {
    const t = await bottled()
    const readyMs = async () => Date.parse((await lotsOf(t))[0]?.window.readyAt.likely ?? '')
    const onRack = await readyMs()
    await record(t, {
      at: day('2026-10-26'),
      kind: 'shelve',
      bottleLotId: 'lot',
      count: 6,
      fromShelfId: 'rack',
      toShelfId: 'sill',
    })
    const onSill = await readyMs()
    expect(onSill).toBeLessThan(onRack)
    await t.ask('shelves.change', { ...sill, temperatureC: 8 })
    expect(await readyMs()).toBeGreaterThan(onSill)
    await record(t, {
      ...inBatch('2026-11-15'),
      kind: 'taste',
      bottleLotId: 'lot',
      scores: {},
      verdict: 'ready',
    })
    const [found] = await lotsOf(t)
    expect(found?.window.because).toContain('tastedReady')
    expect(found?.lastTasted).toEqual({ at: day('2026-11-15'), verdict: 'ready' })
    t.service.close()
  })

  it('shows lots that are gone, and empty bottles, only when asked for', async () => {
    const t = await bottled()
    await record(t, open('o'), { at: day('2026-11-05'), kind: 'pourGlass', openedId: 'o' })
    await record(t, draw(9))
    expect(await t.ask('shelf.lots', { withGone: false })).toEqual({
      lots: [],
      opened: [],
      drinkFirst: [],
    })
    const { lots, opened } = await t.ask('shelf.lots', { withGone: true })
    expect(lots).toMatchObject([{ lot: { count: 0, filledCount: 10, places: [] } }])
    expect(lots[0]).not.toHaveProperty('costPerBottle')
    expect(opened).toMatchObject([{ id: 'o', bottleLotId: 'lot', bottleSizeMl: 100 }])
    expect(opened[0]).not.toHaveProperty('liquid')
    t.service.close()
  })

  it('names an opened bottle among those to drink first', async () => {
    const t = await bottled()
    await record(t, open('o'), {
      at: day('2026-11-05'),
      kind: 'pourGlass',
      openedId: 'o',
      volumeMl: 70,
    })
    t.setNow('2027-02-20T12:00:00Z')
    const { drinkFirst } = await t.ask('shelf.lots', { withGone: false })
    expect(drinkFirst).toMatchObject([{ bottleLotId: 'lot', because: 'opened' }])
    t.service.close()
  })

  it('counts what was never placed and never tasted as standing as the trade advises', async () => {
    const t = await trial()
    await withPantry(t)
    await record(
      t,
      {
        ...inBatch('2026-09-02'),
        kind: 'pourSpirit',
        jarId: 'south',
        lotId: 'spirit',
        volumeMl: 500,
      },
      { ...inBatch('2026-09-02'), kind: 'pourWater', jarId: 'south', volumeMl: 700 },
      {
        ...inBatch('2026-09-03'),
        kind: 'bottle',
        fromJarId: 'south',
        bottleLotId: 'plain',
        bottleSizeMl: 500,
        count: 2,
      },
    )
    const [found] = await lotsOf(t)
    expect(found).toMatchObject({ kindId: 'other', fruitIds: [], vintage: 2026 })
    expect(found?.window.because).toContain('noHistory')
    expect(found?.lot.places).toEqual([{ shelfId: null, count: 2 }])
    t.service.close()
  })
})

describe('shelf.page', () => {
  it('tells every move of a lot, where it stood, and what was tasted before it was bottled', async () => {
    const t = await bottled()
    await record(t, open('o'), {
      at: day('2026-11-05'),
      kind: 'pourGlass',
      openedId: 'o',
      volumeMl: 40,
    })
    await record(t, {
      ...inBatch('2026-11-06'),
      kind: 'taste',
      bottleLotId: 'lot',
      scores: { fruit: 7 },
    })
    const page = await t.ask('shelf.page', { bottleLotId: 'lot' })
    expect(page.steps.map(({ recorded }) => recorded.move.kind)).toEqual([
      'bottle',
      'shelve',
      'openBottle',
      'pourGlass',
      'taste',
    ])
    expect(page.stays.map(({ from, ...stay }) => [from.slice(0, 10), stay])).toEqual([
      ['2026-10-20', { shelfId: 'rack', count: 10 }],
      ['2026-10-25', { shelfId: 'rack', count: 6 }],
      ['2026-10-25', { shelfId: 'sill', count: 4 }],
      ['2026-11-04', { shelfId: 'rack', count: 5 }],
    ])
    expect(page.tastings.map(({ move }) => move.at)).toEqual([day('2026-10-10'), day('2026-11-06')])
    expect(page.opened.map(({ id }) => id)).toEqual(['o'])
    expect(page.siblingIds).toEqual([])
    expect(page.costPerGlass).toBeCloseTo((40 / 100) * (page.shelfLot.costPerBottle ?? 0), 9)
    expect(page.cost?.minor).toBeCloseTo(9 * (page.shelfLot.costPerBottle ?? 0), 9)
    expect(page.colour.length).toBeGreaterThan(20)
    expect(page.colour[0]?.left.value).toBeCloseTo(1, 9)
    t.service.close()
  })

  it('knows no lot that is not there', async () => {
    const t = await bottled()
    expect(await t.refusal('shelf.page', { bottleLotId: 'nothing' })).toMatchObject({
      code: 'notFound',
    })
    t.service.close()
  })
})

describe('shelf.stock', () => {
  it('adds up full and opened bottles by kind, and looks back and ahead as far as asked', async () => {
    const t = await bottled()
    await record(t, open('o'), {
      at: day('2026-11-05'),
      kind: 'pourGlass',
      openedId: 'o',
      volumeMl: 40,
    })
    const { kinds, all } = await t.ask('shelf.stock', { pastMonths: 2, forecastMonths: 12 })
    expect(kinds.map(({ kindId }) => kindId)).toEqual(['damson'])
    expect(kinds[0]?.bottleCount).toBe(9)
    expect(kinds[0]?.volumeMl).toBeCloseTo(960, 0)
    expect(all.volumeMl).toBeCloseTo(kinds[0]?.volumeMl ?? 0, 6)
    expect(all.past.length).toBeLessThanOrEqual(2)
    expect(all.past.at(-1)?.volumeMl).toBeCloseTo(1000, 0)
    expect(all.forecast).toHaveLength(12)
    t.service.close()
  })
})

describe('lineage.of', () => {
  it('goes back to the purchases and the tap, which add up to all that was filled', async () => {
    const t = await bottled()
    const { origins, nodes } = await t.ask('lineage.of', { bottleLotId: 'lot' })
    expect(origins.map(({ key }) => key).sort()).toEqual([
      'lot:damsons',
      'lot:spirit',
      'outside:tap',
    ])
    const filled = nodes.find(({ key }) => key === 'bottles:lot')
    expect(massOf(sumMatter(origins.map(({ matter }) => matter)))).toBeCloseTo(
      massOf(filled?.matter ?? sumMatter([])),
      6,
    )
    t.service.close()
  })

  it('goes forward from a purchase to where all of it is', async () => {
    const t = await bottled()
    await record(t, draw(3))
    const { destinations } = await t.ask('lineage.of', { lotId: 'spirit' })
    const places = destinations.map(({ key }) => key)
    expect(places).toContain('bottles:lot')
    expect(places).toContain('outside:glass')
    const balance = await t.ask('cellar.balance', {})
    const ethanolG = destinations.reduce((sum, { matter }) => sum + matter.ethanolG, 0)
    expect(ethanolG).toBeCloseTo(balance.bought.ethanolG, 3)
    t.service.close()
  })

  it('knows nothing that is not there', async () => {
    const t = await bottled()
    expect((await t.refusal('lineage.of', { bottleLotId: 'x' })).code).toBe('notFound')
    expect((await t.refusal('lineage.of', { lotId: 'x' })).code).toBe('notFound')
    expect((await t.refusal('lineage.of', {} as { lotId: string })).code).toBe('badInput')
    t.service.close()
  })
})
