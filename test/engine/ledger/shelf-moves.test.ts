import { describe, expect, it } from 'vitest'
import { massOf, noMatter, scaleMatter, subtractMatter } from '../../../shared/matter.ts'
import {
  balance,
  costsOf,
  describeLiquid,
  liquidVolumeMl,
  type CellarState,
} from '../../../main/engine/index.ts'
import { totalMinor } from '../../../main/engine/ledger/cost.ts'
import { buySpirit, buySugar, folded, type Deed } from './book-of-moves.ts'

type Line = readonly [day: number, deed: Deed]

const spirit = (batchId: string, jarId: string, volumeMl: number): Deed => ({
  kind: 'pourSpirit',
  batchId,
  jarId,
  lotId: 'spirit',
  volumeMl,
})
const water = (batchId: string, jarId: string, volumeMl: number): Deed => ({
  kind: 'pourWater',
  batchId,
  jarId,
  volumeMl,
})
const bottle = (batchId: string, jarId: string, count: number, shelfId?: string): Deed => ({
  kind: 'bottle',
  batchId,
  fromJarId: jarId,
  bottleLotId: `${batchId}-lot`,
  bottleSizeMl: 500,
  count,
  ...(shelfId !== undefined && { shelfId }),
})

/** 10 bottles of "old" on the rack, 4 of the stronger "young" with no place. */
const filled: Line[] = [
  [0, { ...buySpirit('spirit', 10_000, 96), priceMinor: 20_000 } as Deed],
  [0, spirit('old', 'big', 2000)],
  [0, water('old', 'big', 3300)],
  [0, spirit('young', 'small', 1500)],
  [0, water('young', 'small', 800)],
  [1, bottle('old', 'big', 10, 'rack')],
  [1, bottle('young', 'small', 4)],
]

const after = (...lines: Line[]) => {
  const told = folded([...filled, ...lines])
  expect(told.refused.map(({ refusal }) => refusal)).toEqual([])
  return told
}

/** The refusal of the last line; the lines before it must all be allowed. */
const refusalOf = (...lines: Line[]) => {
  const { refused } = folded([...filled, ...lines])
  expect(refused.map(({ recorded }) => recorded.id)).toEqual([
    `m${filled.length + lines.length - 1}`,
  ])
  return refused[0]?.refusal
}

const lotOf = (cellar: CellarState, id = 'old-lot') => {
  const lot = cellar.bottles.get(id)
  if (!lot) throw new Error(`no ${id}`)
  return lot
}
const shelvesOf = (cellar: CellarState, id?: string) =>
  Object.fromEntries(lotOf(cellar, id).shelves)
const volumeOf = (cellar: CellarState, openedId: string) =>
  liquidVolumeMl(cellar.opened.get(openedId)?.matter ?? noMatter)

const shelve = (count: number, fromShelfId: string | null, toShelfId: string | null): Deed => ({
  kind: 'shelve',
  bottleLotId: 'old-lot',
  count,
  fromShelfId,
  toShelfId,
})
const open = (openedId: string, bottleLotId = 'old-lot'): Deed => ({
  kind: 'openBottle',
  bottleLotId,
  openedId,
})
const pour = (openedId: string, volumeMl?: number): Deed => ({
  kind: 'pourGlass',
  openedId,
  ...(volumeMl !== undefined && { volumeMl }),
})
const topUp = (openedId: string, fromOpenedId: string, volumeMl?: number): Deed => ({
  kind: 'topUp',
  openedId,
  fromOpenedId,
  ...(volumeMl !== undefined && { volumeMl }),
})
const draw = (count: number, shelfId?: string): Deed => ({
  kind: 'drawBottle',
  bottleLotId: 'old-lot',
  count,
  ...(shelfId !== undefined && { shelfId }),
})
const counted = (count: number, shelfId?: string | null): Deed => ({
  kind: 'correct',
  found: { bottleLotId: 'old-lot', count, ...(shelfId !== undefined && { shelfId }) },
})

describe('bottles', () => {
  it('stand where they were laid down, or have no place', () => {
    const { cellar } = after()
    expect(shelvesOf(cellar)).toEqual({ rack: 10 })
    expect([...lotOf(cellar, 'young-lot').shelves]).toEqual([[null, 4]])
  })

  it('are carried from shelf to shelf: 4 of 10 to the sill, 1 of them to no place', () => {
    const { cellar, steps } = after([2, shelve(4, 'rack', 'sill')], [3, shelve(1, 'sill', null)])
    expect([...lotOf(cellar).shelves]).toEqual([
      ['rack', 6],
      ['sill', 3],
      [null, 1],
    ])
    expect(lotOf(cellar).count).toBe(10)
    expect(steps.at(-1)?.effect.transfers).toEqual([])
  })

  it('are not carried from where too few stand', () => {
    expect(refusalOf([2, shelve(11, 'rack', 'sill')])).toEqual({
      code: 'notEnough',
      place: 'bottles:old-lot',
      unit: 'bottles',
      asked: 11,
      available: 10,
      nearest: 10,
    })
    expect(refusalOf([2, shelve(1, null, 'sill')])?.code).toBe('nothingThere')
  })

  it('are taken from no place first, then shelf by shelf in the order of their ids', () => {
    const spread: Line[] = [
      [2, shelve(3, 'rack', 'sill')],
      [2, shelve(2, 'rack', null)],
      [2, shelve(1, 'rack', 'attic')],
    ]
    const { cellar } = after(...spread, [3, draw(4)])
    expect(shelvesOf(cellar)).toEqual({ rack: 3, sill: 3 })
    expect(shelvesOf(after(...spread, [3, draw(2, 'sill')]).cellar)).toMatchObject({ sill: 1 })
  })

  it('are refused beyond what stands on the shelf that is named', () => {
    expect(refusalOf([2, shelve(3, 'rack', 'sill')], [3, draw(4, 'sill')])).toMatchObject({
      code: 'notEnough',
      asked: 4,
      available: 3,
      nearest: 3,
    })
  })

  it('that break are waste, and their money with them', () => {
    const { cellar, steps } = after([
      2,
      { kind: 'breakBottle', bottleLotId: 'old-lot', count: 2, shelfId: 'rack' },
    ])
    expect(massOf(balance(cellar).wasted)).toBeCloseTo(2 * massOf(lotOf(cellar).perBottle), 6)
    const costs = costsOf(steps)
    // 2 L of the 10 L at 20,000 make 10 bottles, less what the rest in the jar costs.
    expect(costs.wasted.minor).toBeCloseTo((costs.places.get('bottles:old-lot')?.minor ?? 0) / 4, 6)
    expect(totalMinor(costs)).toBeCloseTo(20_000, 6)
  })
})

describe('stocktake', () => {
  it('of one shelf leaves the others alone: 4 on the sill of 10, counted as 3, leave 9', () => {
    const { cellar } = after([2, shelve(4, 'rack', 'sill')], [3, counted(3, 'sill')])
    expect(shelvesOf(cellar)).toEqual({ rack: 6, sill: 3 })
    expect(lotOf(cellar).count).toBe(9)
    expect(massOf(balance(cellar).corrected)).toBeCloseTo(-massOf(lotOf(cellar).perBottle), 6)
  })

  it('finds bottles on a shelf where the book has none, as long as no more were filled', () => {
    const { cellar } = after([2, draw(3)], [3, counted(3, 'sill')])
    expect(shelvesOf(cellar)).toEqual({ rack: 7, sill: 3 })
    expect(refusalOf([2, draw(3)], [3, counted(4, 'sill')])).toEqual({
      code: 'neverFilled',
      place: 'bottles:old-lot',
      unit: 'bottles',
      asked: 4,
      available: 10,
      nearest: 3,
    })
  })

  it('of the whole lot takes what is missing from no place first, and puts what is found there', () => {
    const placed: Line[] = [[2, shelve(2, 'rack', null)]]
    expect(shelvesOf(after(...placed, [3, counted(7)]).cellar)).toEqual({ rack: 7 })
    expect([...lotOf(after([2, draw(4)], [3, counted(8)]).cellar).shelves]).toEqual([
      ['rack', 6],
      [null, 2],
    ])
  })

  it('counts an opened bottle that still stands among those that were filled', () => {
    expect(refusalOf([2, open('o')], [3, counted(10)])).toMatchObject({
      code: 'neverFilled',
      available: 10,
      nearest: 9,
    })
    // Once it is drunk, finding 10 full ones means that another bottle was opened.
    expect(lotOf(after([2, open('o')], [3, pour('o')], [4, counted(10)]).cellar).count).toBe(10)
  })
})

describe('an opened bottle', () => {
  it('has a level of its own: 500 mL less a glass of 40 mL and one of 60 mL', () => {
    const { cellar } = after([2, open('o')], [2, pour('o', 40)], [9, pour('o', 60)])
    expect(volumeOf(cellar, 'o')).toBeCloseTo(400, 3)
    expect(lotOf(cellar)).toMatchObject({ count: 9, filledCount: 10 })
    expect(liquidVolumeMl(balance(cellar).drunk)).toBeCloseTo(100, 3)
  })

  it('is in the books as bottled, and its glasses take their share of the money along', () => {
    const whole = costsOf(after().steps).places.get('bottles:old-lot')?.minor ?? 0
    const { cellar, steps } = after([2, open('o')], [2, pour('o', 125)])
    expect(massOf(balance(cellar).missing)).toBeCloseTo(0, 9)
    const costs = costsOf(steps)
    expect(costs.drunk.minor).toBeCloseTo(whole / 40, 6)
    expect(costs.places.get('opened:o')?.minor).toBeCloseTo((3 * whole) / 40, 6)
    expect(totalMinor(costs)).toBeCloseTo(20_000, 6)
  })

  it('gives no more than is left in it', () => {
    expect(refusalOf([2, open('o')], [3, pour('o', 400)], [4, pour('o', 120)])).toMatchObject({
      code: 'notEnough',
      place: 'opened:o',
      unit: 'ml',
      asked: 120,
      available: expect.closeTo(100, 3),
      nearest: expect.closeTo(100, 3),
    })
    expect(refusalOf([2, open('o')], [3, pour('o')], [4, pour('o', 1)])?.code).toBe('nothingThere')
  })

  it('needs a full bottle on the shelf, and an id of its own', () => {
    expect(refusalOf([2, draw(10)], [3, open('o')])?.code).toBe('nothingThere')
    expect(refusalOf([2, open('o')], [3, open('o', 'young-lot')])).toEqual({
      code: 'alreadyThere',
      place: 'opened:o',
    })
  })

  it('keeps its batch resting until it is empty', () => {
    const stageAfter = (...lines: Line[]) => after(...lines).cellar.batches.get('young')?.stage
    const emptied: Line[] = [
      [2, { kind: 'discard', from: { jarId: 'small', part: 'all' } }],
      [3, { kind: 'give', bottleLotId: 'young-lot', count: 3 }],
      [4, open('o', 'young-lot')],
      [5, pour('o', 200)],
    ]
    expect(stageAfter(...emptied)).toBe('resting')
    expect(stageAfter(...emptied, [6, pour('o')])).toBe('finished')
    expect(stageAfter(...emptied, [6, { kind: 'discard', from: { openedId: 'o' } }])).toBe(
      'finished',
    )
  })

  it('is put right by its level, up to its size', () => {
    const { cellar } = after(
      [2, open('o')],
      [3, { kind: 'correct', found: { openedId: 'o', volumeMl: 350 } }],
    )
    expect(volumeOf(cellar, 'o')).toBeCloseTo(350, 6)
    expect(liquidVolumeMl(subtractMatter(noMatter, balance(cellar).corrected))).toBeCloseTo(150, 3)
    expect(
      refusalOf([2, open('o')], [3, { kind: 'correct', found: { openedId: 'o', volumeMl: 510 } }]),
    ).toEqual({
      code: 'noRoom',
      place: 'opened:o',
      unit: 'ml',
      asked: 510,
      available: 500,
      nearest: 500,
    })
  })

  it('found again after it was thought empty is of its lot', () => {
    const { cellar } = after(
      [2, open('o')],
      [3, pour('o')],
      [4, { kind: 'correct', found: { openedId: 'o', volumeMl: 250 } }],
    )
    const half = scaleMatter(lotOf(cellar).perBottle, 0.5)
    expect(cellar.opened.get('o')?.matter.ethanolG).toBeCloseTo(half.ethanolG, 2)
  })
})

describe('topUp', () => {
  const two: Line[] = [
    [2, open('o')],
    [2, open('y', 'young-lot')],
    [3, pour('o', 200)],
    [3, pour('y', 100)],
  ]

  it('fills to the brim and no further, and leaves the rest where it was', () => {
    const { cellar } = after(...two, [4, topUp('o', 'y')])
    expect(volumeOf(cellar, 'o')).toBeLessThanOrEqual(500)
    expect(volumeOf(cellar, 'o')).toBeGreaterThan(499.9)
    // 200 mL of room; the two contract by a little as they mix.
    expect(volumeOf(cellar, 'y')).toBeLessThan(200)
    expect(volumeOf(cellar, 'y')).toBeGreaterThan(197)
  })

  it('mixes across batches: 300 mL at 37 % and 100 mL at 64 % make 400 mL at 44 %', () => {
    const { cellar } = after(...two, [4, topUp('o', 'y', 100)])
    const [old, young] = [lotOf(cellar), lotOf(cellar, 'young-lot')].map(({ perBottle }) =>
      describeLiquid(perBottle),
    )
    const mixed = describeLiquid(cellar.opened.get('o')?.matter ?? noMatter)
    const ethanolMl = 3 * (old?.strengthPctVol ?? 0) + 1 * (young?.strengthPctVol ?? 0)
    expect(mixed?.volumeMl).toBeGreaterThan(395)
    expect(mixed?.volumeMl).toBeLessThan(400)
    expect(mixed?.strengthPctVol).toBeCloseTo((100 * ethanolMl) / (mixed?.volumeMl ?? 1), 2)
    expect(cellar.opened.get('o')).toMatchObject({ bottleLotId: 'old-lot', batchId: 'old' })
  })

  it('concerns both batches', () => {
    const { steps } = after(...two, [4, topUp('o', 'y', 100)])
    expect(steps.at(-1)?.batchIds).toEqual(new Set(['old', 'young']))
  })

  it('takes all there is where all of it fits', () => {
    const { cellar } = after(...two, [4, pour('y', 350)], [5, topUp('o', 'y')])
    expect(cellar.opened.get('y')?.matter).toEqual(noMatter)
  })

  it('is refused above the size, with the room there is', () => {
    const refusal = refusalOf(...two, [4, topUp('o', 'y', 300)])
    expect(refusal).toMatchObject({ code: 'noRoom', place: 'opened:o', unit: 'ml', asked: 300 })
    expect(refusal?.nearest).toBeGreaterThan(200)
    expect(refusal?.nearest).toBeLessThan(203)
  })

  it('is refused beyond what the other has, from an empty one, into an empty one, into itself', () => {
    expect(refusalOf(...two, [4, pour('y', 300)], [5, topUp('o', 'y', 150)])).toMatchObject({
      code: 'notEnough',
      place: 'opened:y',
      available: expect.closeTo(100, 3),
    })
    expect(refusalOf(...two, [4, pour('y')], [5, topUp('o', 'y')])).toEqual({
      code: 'nothingThere',
      place: 'opened:y',
    })
    expect(refusalOf(...two, [4, pour('o')], [5, topUp('o', 'y')])).toEqual({
      code: 'nothingThere',
      place: 'opened:o',
    })
    expect(refusalOf(...two, [4, topUp('o', 'o')])?.code).toBe('sameJar')
  })
})

describe('taste', () => {
  const taste = (batchId: string, of: { jarId: string } | { bottleLotId: string }): Deed => ({
    kind: 'taste',
    batchId,
    ...of,
    scores: { aroma: 7, heat: 3 },
    verdict: 'young',
  })

  it('moves nothing, and belongs to its batch', () => {
    const { steps, cellar } = after([5, taste('old', { bottleLotId: 'old-lot' })])
    const step = steps.at(-1)
    expect(step?.effect.transfers).toEqual([])
    expect(step?.batchIds).toEqual(new Set(['old']))
    expect(lotOf(cellar).count).toBe(10)
  })

  it('of a jar leaves it as it was', () => {
    const before = after().cellar.jars.get('small')
    const { cellar, steps } = after([5, taste('young', { jarId: 'small' })])
    expect(cellar.jars.get('small')?.bodies).toEqual(before?.bodies)
    expect(cellar.jars.get('small')?.clock).toBe(steps.at(-2)?.effect.jars?.get('small')?.clock)
  })

  it('needs the jar or the lot of its own batch', () => {
    expect(refusalOf([5, taste('old', { bottleLotId: 'young-lot' })])).toEqual({
      code: 'jarTaken',
      place: 'bottles:young-lot',
      batchId: 'young',
    })
    expect(refusalOf([5, taste('old', { jarId: 'small' })])?.code).toBe('jarTaken')
    expect(refusalOf([5, taste('old', { jarId: 'spare' })])?.code).toBe('nothingThere')
    expect(refusalOf([5, taste('old', { bottleLotId: 'nowhere' })])?.code).toBe('unknownPlace')
  })
})

describe('unbottle', () => {
  it('takes bottles from the shelf that is named, and tells no batch of bottles that are not its own', () => {
    const { cellar } = after(
      [2, buySugar('sugar', 500)],
      [2, shelve(4, 'rack', 'sill')],
      [
        3,
        {
          kind: 'unbottle',
          batchId: 'blend',
          bottleLotId: 'old-lot',
          count: 2,
          toJarId: 'wide',
          shelfId: 'sill',
        },
      ],
    )
    expect(shelvesOf(cellar)).toEqual({ rack: 6, sill: 2 })
    expect(cellar.batches.get('blend')?.bottleLotIds).toEqual([])
    expect(cellar.batches.get('old')?.bottleLotIds).toEqual(['old-lot'])
  })
})
