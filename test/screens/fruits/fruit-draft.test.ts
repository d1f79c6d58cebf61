import { describe, expect, it } from 'vitest'
import { fruitLibrary, fruitOf } from '../../../main/engine/index.ts'
import {
  draftOf,
  fruitOfDraft,
  problemOfRange,
  restPct,
  type FruitDraft,
} from '../../../renderer/screens/fruits/fruit-draft.ts'
import { fruitLike } from '../../../renderer/screens/fruits/fruit-like.ts'
import { Fruit } from '../../../shared/schemas/fruits.ts'

const sloe = fruitOf('sloe')
const changed = (change: Partial<FruitDraft>) => fruitOfDraft({ ...draftOf(sloe), ...change }, sloe)

describe('fruitOfDraft', () => {
  it.each([...fruitLibrary.values()])('gives $id back as it was, to the bit', (fruit) => {
    expect(fruitOfDraft(draftOf(fruit), fruit)).toEqual(fruit)
  })

  it('makes other solubles of what is left of a hundred', () => {
    const { waterPct, acidPct, pulpPct } = sloe.composition
    const fruit = changed({ sugarPct: 7 })
    expect(fruit?.composition.solublesPct).toBeCloseTo(100 - waterPct - 7 - acidPct - pulpPct, 9)
    expect(Fruit.safeParse(fruit).success).toBe(true)
  })

  it('reads cautions line by line and leaves blank lines out', () => {
    expect(changed({ hazards: 'Thorns.\n\n  Stones.  ' })?.hazards).toEqual(['Thorns.', 'Stones.'])
  })

  it('leaves out a season, a piece, a haze and a range that were taken away', () => {
    const blank = { low: undefined, typical: undefined, high: undefined }
    const fruit = changed({
      isSeasonal: false,
      pieceShape: 'none',
      pectinHaze: 'unknown',
      ranges: { ...draftOf(sloe).ranges, restMonths: blank },
    })
    for (const field of ['season', 'mediterraneanShiftWeeks', 'piece', 'pectinHaze', 'restMonths'])
      expect(fruit).not.toHaveProperty(field)
    expect(Fruit.safeParse(fruit).success).toBe(true)
  })

  it.each([
    ['without a name', { nameEn: ' ' }],
    ['with parts over a hundred', { waterPct: 99 }],
    ['with a missing part', { acidPct: undefined }],
    ['without what it holds', { drained: { low: undefined, typical: undefined, high: undefined } }],
    ['with a range out of order', { pressed: { low: 0.5, typical: 0.3, high: 0.6 } }],
    ['with a piece of no size', { halfSizeMm: undefined }],
    ['without its bulk', { bulkDensityKgPerL: undefined }],
  ] satisfies [string, Partial<FruitDraft>][])('is nothing %s', (_what, change) => {
    expect(changed(change)).toBeUndefined()
  })
})

describe('restPct', () => {
  it('is 0 where parts in tenths make a hundred', () => {
    const parts = { waterPct: 80.1, sugarPct: 9.9, acidPct: 2.2, pulpPct: 7.8 }
    expect(restPct({ ...draftOf(sloe), ...parts })).toBe(0)
  })
})

describe('problemOfRange', () => {
  const range = (low?: number, typical?: number, high?: number) => ({ low, typical, high })

  it('wants low, typical and high to rise, or none of them', () => {
    expect(problemOfRange(range(1, 2, 3), false)).toBeUndefined()
    expect(problemOfRange(range(2, 2, 2), false)).toBeUndefined()
    expect(problemOfRange(range(), false)).toBeUndefined()
    expect(problemOfRange(range(1, 4, 3), false)).toBe('order')
    expect(problemOfRange(range(undefined, 2), false)).toBe('allThree')
  })

  it('lets a needed figure stand alone', () => {
    expect(problemOfRange(range(undefined, 2), true)).toBeUndefined()
    expect(problemOfRange(range(), true)).toBe('needed')
    expect(problemOfRange(range(1, 2), true)).toBe('needed')
  })
})

describe('fruitLike', () => {
  it('takes over the facts, and says from where', () => {
    const bullace = fruitLike(sloe, { id: 'b', nameEn: ' Bullace ', namePl: '' })
    expect(bullace).toMatchObject({
      id: 'b',
      nameEn: 'Bullace',
      namePl: 'Bullace',
      latin: '',
      composition: sloe.composition,
    })
    expect(Object.keys(bullace.sources)).toEqual(Object.keys(sloe.sources))
    expect(new Set(Object.values(bullace.sources))).toEqual(new Set(['like:sloe']))
    expect(Fruit.safeParse(bullace).success).toBe(true)
  })
})
