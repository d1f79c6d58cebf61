import { describe, expect, it } from 'vitest'
import { fruitLibrary, fruitOf } from '../../main/engine/index.ts'
import { createService } from '../../main/service/create-service.ts'
import type { Fruit } from '../../shared/schemas/fruits.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

const damson = fruitOf('damson')
const medlar: Fruit = { ...damson, id: 'medlar', nameEn: 'Medlar', namePl: 'nieszpułka' }

const range = (typical: number, low: number, high: number) => ({ typical, low, high })
const dryDamson: Fruit = {
  ...damson,
  drainedLPerKg: 0.55,
  drainedRangeLPerKg: range(0.55, 0.5, 0.8),
}

const page = (t: Trial, fruitId: string) => t.ask('fruits.page', { fruitId })

describe('fruits.list', () => {
  it('has the library by name, with copies in place and own fruits among them', async () => {
    const t = await trial()
    const names = async () => (await t.ask('fruits.list', {})).map(({ nameEn }) => nameEn)
    const before = await names()
    expect(before).toHaveLength(fruitLibrary.size)
    expect(before.slice(0, 3)).toEqual(['Apple', 'Apricot', 'Bilberry'])
    await t.ask('fruits.keep', medlar)
    await t.ask('fruits.keep', { ...damson, nameEn: 'Damson of the lane' })
    expect(await t.ask('fruits.origins', {})).toEqual([
      { fruitId: 'damson', origin: 'edited' },
      { fruitId: 'medlar', origin: 'own' },
    ])
    const after = await names()
    expect(after).toHaveLength(fruitLibrary.size + 1)
    expect(after).toContain('Damson of the lane')
    expect(after).not.toContain('Damson')
    expect(after).toEqual([...after].sort((a, b) => a.localeCompare(b, 'en')))
    t.service.close()
  })
})

describe('fruits.page', () => {
  it('shows the library row with what its source codes mean', async () => {
    const t = await trial()
    const { fruit, origin, library, learned, isUsed, sourceMeanings } = await page(t, 'sour_cherry')
    expect(fruit).toEqual(fruitOf('sour_cherry'))
    expect(library).toEqual(fruit)
    expect(origin).toBe('library')
    expect(learned).toBeUndefined()
    expect(isUsed).toBe(false)
    for (const code of Object.values(fruit.sources)) expect(sourceMeanings[code]).toBeTruthy()
    expect(sourceMeanings['U:09063']).toMatch(/record 09063/)
    t.service.close()
  })

  it('says that a fruit is nowhere', async () => {
    const t = await trial()
    expect(await t.refusal('fruits.page', { fruitId: 'moonfruit' })).toMatchObject({
      code: 'notFound',
      details: { what: 'fruit', id: 'moonfruit' },
    })
    t.service.close()
  })
})

describe('fruits.keep', () => {
  it('keeps a copy beside the library row, its changed facts told as the maker’s', async () => {
    const t = await trial()
    const kept = await t.ask('fruits.keep', dryDamson)
    expect(kept).toMatchObject({ origin: 'edited', library: damson, isUsed: false })
    expect(kept.fruit).toMatchObject({
      drainedLPerKg: 0.55,
      sources: { ...damson.sources, drainedLPerKg: 'own' },
    })
    expect(kept.sourceMeanings['own']).toBe('from the maker of this cellar')
    // Put back as it was, the fact has its old source again.
    const again = await t.ask('fruits.keep', { ...damson, sources: {} })
    expect(again.fruit).toEqual(damson)
    t.service.close()
  })

  it('keeps a fruit that the library does not have, through closing and opening', async () => {
    const t = await trial()
    const kept = await t.ask('fruits.keep', medlar)
    expect(kept).toMatchObject({ origin: 'own', fruit: medlar })
    expect(kept.library).toBeUndefined()
    t.service.close()
    const again = await createService(t.options)
    const reply = await again.dispatch('fruits.page', { fruitId: 'medlar' })
    expect(reply).toEqual({ ok: true, value: kept })
    again.close()
  })

  it('refuses parts that do not add up, and a range out of order, by field', async () => {
    const t = await trial()
    const wet = { ...medlar, composition: { ...medlar.composition, waterPct: 99 } }
    expect(await t.refusal('fruits.keep', wet)).toMatchObject({
      code: 'badInput',
      details: { issues: [{ path: 'composition', message: 'the parts must add up to 100 %' }] },
    })
    const upside = { ...medlar, steepingWeeks: range(4, 8, 2) }
    expect(await t.refusal('fruits.keep', upside)).toMatchObject({
      code: 'badInput',
      details: { issues: [{ path: 'steepingWeeks' }] },
    })
    t.service.close()
  })

  it('refuses a figure outside its own range', async () => {
    const t = await trial()
    expect(await t.refusal('fruits.keep', { ...medlar, pressedLPerKg: 0.9 })).toMatchObject({
      code: 'outOfRange',
      details: { quantity: 'pressedLPerKg', value: 0.9, low: 0.18, high: 0.4 },
    })
    expect(await t.refusal('fruits.page', { fruitId: 'medlar' })).toMatchObject({
      code: 'notFound',
    })
    t.service.close()
  })

  it('is one cellar’s own: the demo knows nothing of it', async () => {
    const t = await trial()
    await t.ask('fruits.keep', medlar)
    await t.ask('cellar.openDemo', {})
    expect(await t.refusal('fruits.page', { fruitId: 'medlar' })).toMatchObject({
      code: 'notFound',
    })
    await t.ask('cellar.openOwn', {})
    expect((await page(t, 'medlar')).origin).toBe('own')
    t.service.close()
  })
})

describe('fruits.reset', () => {
  it('brings a copy back to the library, though purchases name it', async () => {
    const t = await trial()
    await withPantry(t)
    await t.ask('fruits.keep', dryDamson)
    expect(await page(t, 'damson')).toMatchObject({ origin: 'edited', isUsed: true })
    await t.ask('fruits.reset', { fruitId: 'damson' })
    const { fruit, origin } = await page(t, 'damson')
    expect(origin).toBe('library')
    expect(fruit).toEqual(damson)
    t.service.close()
  })

  it('removes an own fruit that was never bought, and says when there is none', async () => {
    const t = await trial()
    await t.ask('fruits.keep', medlar)
    await t.ask('fruits.reset', { fruitId: 'medlar' })
    expect(await t.refusal('fruits.reset', { fruitId: 'medlar' })).toMatchObject({
      code: 'notFound',
    })
    t.service.close()
  })

  it('keeps an own fruit that a purchase names, also once that purchase is taken back', async () => {
    const t = await trial()
    await t.ask('fruits.keep', medlar)
    await t.ask('moves.record', {
      key: 'k',
      moves: [
        {
          at: '2026-10-20T08:00:00Z',
          kind: 'buy',
          lotId: 'medlars',
          goods: { kind: 'fruit', fruitId: 'medlar' },
          massG: 2000,
        },
      ],
    })
    const stillInUse = { code: 'stillInUse', details: { id: 'medlar' } }
    expect(await t.refusal('fruits.reset', { fruitId: 'medlar' })).toMatchObject(stillInUse)
    await t.ask('moves.undo', { key: 'u' })
    expect(await t.refusal('fruits.reset', { fruitId: 'medlar' })).toMatchObject(stillInUse)
    expect((await page(t, 'medlar')).isUsed).toBe(true)
    t.service.close()
  })
})

describe('a charge', () => {
  const charge = (lotId: string, at: string): Move => ({
    at,
    kind: 'charge',
    batchId: 'damson',
    jarId: 'north',
    lotId,
    massG: 500,
    cut: 'frozen',
  })
  const tissues = async (t: Trial) => {
    const { steps } = await t.ask('batches.page', { batchId: 'damson' })
    return steps.flatMap(({ recorded: { move } }) => (move.kind === 'charge' ? [move.tissue] : []))
  }

  it('keeps what the fruit’s facts were on the day, whatever is edited later', async () => {
    const t = await trial()
    await withPantry(t)
    await t.ask('moves.record', { key: 'a', moves: [charge('damsons', '2026-09-01T09:00:00Z')] })
    await t.ask('fruits.keep', dryDamson)
    const heldBefore = await t.ask('jars.list', {})
    await t.ask('moves.record', { key: 'b', moves: [charge('damsons', '2026-09-01T10:00:00Z')] })
    expect((await tissues(t)).map((tissue) => tissue?.drainedLPerKg)).toEqual([0.65, 0.55])
    await t.ask('fruits.reset', { fruitId: 'damson' })
    await t.ask('moves.undo', { key: 'u' })
    expect(await t.ask('jars.list', {})).toEqual(heldBefore)
    t.service.close()
  })

  it('of an own fruit is described, warned of and folded like any other', async () => {
    const t = await trial()
    await withPantry(t)
    await t.ask('fruits.keep', { ...medlar, hazards: ['Blet them first.'] })
    await t.ask('moves.record', {
      key: 'a',
      moves: [
        {
          at: '2026-09-02T08:00:00Z',
          kind: 'buy',
          lotId: 'medlars',
          goods: { kind: 'fruit', fruitId: 'medlar' },
          massG: 2000,
        },
        charge('medlars', '2026-09-02T09:00:00Z'),
      ],
    })
    const { summary, cautions } = await t.ask('batches.page', { batchId: 'damson' })
    expect(summary.fruitIds).toEqual(['medlar'])
    expect(cautions).toContainEqual(
      expect.objectContaining({ code: 'fruitHazard', fruitId: 'medlar' }),
    )
    expect(await t.ask('cellar.check', {})).toMatchObject({ refusedMoves: [], lotsDiffering: [] })
    t.service.close()
  })

  it('is reckoned with what measured batches taught, shrunk to the facts', async () => {
    const t = await trial()
    await withPantry(t)
    await t.ask('moves.record', {
      key: 'a',
      moves: [
        charge('damsons', '2026-09-01T09:00:00Z'),
        {
          at: '2026-09-01T10:00:00Z',
          kind: 'pourSpirit',
          batchId: 'damson',
          jarId: 'north',
          lotId: 'spirit',
          volumeMl: 500,
        },
      ],
    })
    const [jar] = await t.ask('jars.list', {})
    const { liquid, heldMl = 0 } = jar?.contents ?? {}
    // Frozen damsons rest after months: what does not pour stays, here 0.5 L/kg of 450 g edible.
    await t.ask('moves.record', {
      key: 'b',
      moves: [
        {
          at: '2026-11-19T10:00:00Z',
          kind: 'drawOff',
          batchId: 'damson',
          fromJarId: 'north',
          toJarId: 'demijohn',
          volumeMl: (liquid?.volumeMl ?? 0) + heldMl - 225,
        },
        {
          at: '2026-11-19T11:00:00Z',
          kind: 'discard',
          from: { jarId: 'north', part: 'pulp' },
        },
      ],
    })
    const { learned } = await page(t, 'damson')
    expect(learned?.drainedLPerKg?.own).toBeCloseTo(0.5, 2)
    expect(learned?.drainedLPerKg).toMatchObject({ library: 0.65, batchIds: ['damson'] })
    expect(learned?.pace).toBeUndefined()
    await t.ask('moves.record', { key: 'c', moves: [charge('damsons', '2026-11-19T12:00:00Z')] })
    const stamped = (await tissues(t)).at(-1)
    expect(stamped?.drainedLPerKg).toBe(learned?.drainedLPerKg?.blended)
    expect(stamped?.drainedLPerKg).toBeCloseTo((0.5 + 2 * 0.65) / 3, 2)
    t.service.close()
  })
})
