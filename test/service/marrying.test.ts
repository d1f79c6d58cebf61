import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Move } from '../../shared/schemas/moves.ts'
import { trial, type Trial } from './with-service.ts'

const batchId = 'cherry'
const at = '2026-11-10T10:00:00Z'
const jar = (id: string, capacityMl: number) => ({
  id,
  name: `Jar ${id}`,
  shape: 'jar' as const,
  capacityMl,
  isRetired: false,
})

/** Spirit at three strengths in jars, sugar beside them, and six bottles laid down. */
const story: Move[] = [
  {
    at,
    kind: 'buy',
    lotId: 'spirit',
    goods: { kind: 'spirit', strengthPctVol: 96 },
    volumeMl: 4000,
    priceMinor: 8000,
  },
  {
    at,
    kind: 'buy',
    lotId: 'sugar',
    goods: { kind: 'sweetener', sweetenerId: 'sugar' },
    massG: 3000,
    priceMinor: 450,
  },
  { at, kind: 'pourSpirit', batchId, jarId: 'strong', lotId: 'spirit', volumeMl: 1000 },
  { at, kind: 'pourWater', batchId, jarId: 'strong', volumeMl: 500 },
  { at, kind: 'pourSpirit', batchId, jarId: 'weak', lotId: 'spirit', volumeMl: 1000 },
  { at, kind: 'pourWater', batchId, jarId: 'weak', volumeMl: 4000 },
  {
    at,
    kind: 'bottle',
    batchId,
    fromJarId: 'weak',
    bottleLotId: 'laid-down',
    bottleSizeMl: 500,
    count: 6,
  },
]

let t: Trial
beforeEach(async () => {
  t = await trial()
  await t.ask('jars.add', { jars: [jar('strong', 2000), jar('weak', 5500), jar('empty', 1500)] })
  await t.ask('batches.open', {
    id: batchId,
    name: 'Cherry',
    colour: '#7a1f3d',
    note: '',
    openedAt: at,
  })
  await t.ask('moves.record', { key: 'k', moves: story })
})
afterEach(() => t.service.close())

const exactly = (value: number) => ({ low: value, high: value })
const usual = { prefer: 'useUp', holds: 'composition' } as const

describe('marry.solve', () => {
  it('works out amounts that, once recorded, make what was told', async () => {
    const told = await t.ask('marry.solve', {
      ...usual,
      parts: [{ place: 'jar:strong' }, { place: 'jar:weak' }],
      wishes: { strengthPctVol: exactly(30), volumeMl: exactly(1200) },
      toJarId: 'empty',
    })
    expect(told.broken).toEqual([])
    const parts = told.amounts.map(({ place, amount }) => ({
      jarId: place.slice('jar:'.length),
      volumeMl: amount,
    }))
    await t.ask('moves.record', {
      key: 'marry',
      moves: [{ at: '2026-11-11T10:00:00Z', kind: 'marry', batchId, parts, toJarId: 'empty' }],
    })
    const jars = await t.ask('jars.list', {})
    const made = jars.find((one) => one.jar.id === 'empty')?.contents?.liquid
    expect(made?.strengthPctVol).toBeCloseTo(30, 3)
    expect(made?.volumeMl).toBeCloseTo(1200, 2)
  })

  it('marks a vessel that would overflow', async () => {
    const { fill } = await t.ask('marry.solve', {
      ...usual,
      parts: [{ place: 'jar:strong' }, { place: 'jar:weak' }],
      wishes: { volumeMl: exactly(2000) },
      toJarId: 'empty',
    })
    expect(fill).toMatchObject({ jarId: 'empty', capacityMl: 1500, safeMl: 1425 })
    expect(fill?.fillMl).toBeCloseTo(2000, 1)
  })

  it('uses all that stands in the vessel it is poured into', async () => {
    const { amounts } = await t.ask('marry.solve', {
      ...usual,
      parts: [{ place: 'jar:weak' }],
      wishes: { strengthPctVol: exactly(40) },
      toJarId: 'strong',
    })
    const strong = amounts.find(({ place }) => place === 'jar:strong')
    expect(strong?.isUsedUp).toBe(true)
  })

  it('opens whole bottles, and prices what they make', async () => {
    const { amounts, cost } = await t.ask('marry.solve', {
      ...usual,
      parts: [{ place: 'bottles:laid-down', least: 2, most: 2 }, { place: 'lot:spirit' }],
      wishes: { strengthPctVol: exactly(30) },
    })
    expect(amounts.find(({ unit }) => unit === 'bottles')?.amount).toBe(2)
    expect(cost.isComplete).toBe(true)
    expect(cost.minor).toBeGreaterThan(300)
  })

  it('refuses what is not there, and what is no part of a blend', async () => {
    const asked = (place: string) => ({ ...usual, parts: [{ place }], wishes: {} })
    expect((await t.refusal('marry.solve', asked('jar:empty'))).code).toBe('nothingThere')
    expect((await t.refusal('marry.solve', asked('lot:none'))).code).toBe('notFound')
    expect((await t.refusal('marry.solve', asked('outside:moon'))).code).toBe('notFound')
  })
})

describe('mend.solve', () => {
  it('says what to add to a weak jar, to 100 ml of it, and what that costs', async () => {
    const {
      before,
      amounts,
      liquid,
      trial: sample,
      cost,
      costBefore,
    } = await t.ask('mend.solve', {
      jarId: 'weak',
      wishes: { strengthPctVol: exactly(25) },
      parts: [{ place: 'lot:spirit' }],
    })
    expect(before.strengthPctVol).toBeLessThan(21)
    expect(liquid?.strengthPctVol).toBeCloseTo(25, 2)
    const [added] = amounts
    expect(sample.amounts[0]?.amount).toBeCloseTo((100 * (added?.amount ?? 0)) / before.volumeMl, 6)
    expect(cost.minor - costBefore.minor).toBeCloseTo(2 * (added?.amount ?? 0), 4)
  })

  it('sharpens a flat jar with acid of the pantry, and the book has it once recorded', async () => {
    const bought: Move = {
      at,
      kind: 'buy',
      lotId: 'citric',
      goods: { kind: 'acid' },
      massG: 100,
      priceMinor: 300,
    }
    await t.ask('moves.record', { key: 'acid', moves: [bought] })
    const { amounts, cost, costBefore } = await t.ask('mend.solve', {
      jarId: 'weak',
      wishes: { acidGPerL: exactly(4) },
      parts: [{ place: 'lot:citric' }],
    })
    const massG = amounts[0]?.amount ?? 0
    expect(amounts).toMatchObject([{ place: 'lot:citric', unit: 'g' }])
    expect(cost.minor - costBefore.minor).toBeCloseTo(3 * massG, 6)
    const mended: Move = {
      at: '2026-11-12T10:00:00Z',
      kind: 'addAcid',
      batchId,
      jarId: 'weak',
      lotId: 'citric',
      massG,
    }
    await t.ask('moves.record', { key: 'mended', moves: [mended] })
    const jars = await t.ask('jars.list', {})
    const weak = jars.find((one) => one.jar.id === 'weak')?.contents?.liquid
    expect(weak?.acidGPerL).toBeCloseTo(4, 4)
    const pantry = await t.ask('pantry.list', {})
    expect(pantry.find(({ id }) => id === 'citric')?.massG).toBeCloseTo(100 - massG, 6)
  })

  it('buys the acid that the pantry lacks in the same breath, and takes both back', async () => {
    const when = '2026-11-12T10:00:00Z'
    await t.ask('moves.record', {
      key: 'both',
      moves: [
        { at: when, kind: 'buy', lotId: 'fresh', goods: { kind: 'acid' }, massG: 8 },
        { at: when, kind: 'addAcid', batchId, jarId: 'weak', lotId: 'fresh', massG: 8 },
      ],
    })
    const acidOf = async () =>
      (await t.ask('jars.list', {})).find((one) => one.jar.id === 'weak')?.contents?.free.acidG
    expect(await acidOf()).toBeCloseTo(8, 9)
    await t.ask('moves.undo', { key: 'back' })
    expect(await acidOf()).toBe(0)
    expect((await t.ask('pantry.list', {})).some(({ id }) => id === 'fresh')).toBe(false)
  })

  it('counts sugar that still lies at the bottom as dissolved', async () => {
    const later = '2026-11-12T10:00:00Z'
    const sweeten: Move = {
      at: later,
      kind: 'sugar',
      batchId,
      jarId: 'weak',
      lotId: 'sugar',
      massG: 300,
    }
    await t.ask('moves.record', { key: 'sweeten', moves: [sweeten] })
    t.setNow('2026-11-12T10:01:00Z')
    const asked = { jarId: 'weak', wishes: {}, parts: [{ place: 'outside:tap' }] }
    const { before, fill } = await t.ask('mend.solve', asked)
    expect(before.sugarGPerL).toBeGreaterThan(130)
    expect(fill?.fillMl).toBeCloseTo(before.volumeMl, 3)
  })

  it('refuses an empty jar', async () => {
    const error = await t.refusal('mend.solve', { jarId: 'empty', wishes: {}, parts: [] })
    expect(error).toMatchObject({ code: 'nothingThere', details: { place: 'jar:empty' } })
  })
})

describe('cellar.costs', () => {
  it('adds up to what was spent, with each bottle and glass', async () => {
    const { places, spent, glassMl } = await t.ask('cellar.costs', {})
    expect(spent).toEqual({ minor: 8450, isComplete: true })
    const sum = places.reduce((total, { cost }) => total + cost.minor, 0)
    expect(sum).toBeCloseTo(8450, 6)
    const laid = places.find(({ place }) => place === 'bottles:laid-down')
    expect(laid?.perBottle).toBeCloseTo((laid?.cost.minor ?? 0) / 6, 6)
    expect(laid?.perGlass).toBeCloseTo(((laid?.perBottle ?? 0) * glassMl) / 500, 6)
  })
})
