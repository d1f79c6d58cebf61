import { describe, expect, it } from 'vitest'
import { Fruit } from '../../../shared/schemas/fruits.ts'
import { massOf } from '../../../shared/matter.ts'
import {
  fruitLibrary,
  fruitOf,
  matterOfGoods,
  sweetenerComposition,
} from '../../../main/engine/fruit/fruit-library.ts'
import { explainSource } from '../../../main/engine/fruit/sources.ts'
import {
  bulkDensityChecks,
  cellLiquidLPerKg,
  compositionChecks,
  cupMl,
  spanChecks,
} from '../../references/craft-composition.ts'
import { steepingFacts } from '../../references/craft-steeping.ts'

const everyFruit = [...fruitLibrary.values()]

/** Every field that carries a number, besides the composition. */
const numericFields = [
  'bulkDensityKgPerL',
  'drainedLPerKg',
  'pressedLPerKg',
  'steepingStrengthPctVol',
  'steepingWeeks',
  'fruitKgPerLSpirit',
  'finishedSugarGPerL',
  'finishedStrengthPctVol',
  'restMonths',
  'drinkByYears',
  'season',
  'mediterraneanShiftWeeks',
  'piece',
  'pectinHaze',
] as const

describe('fruitLibrary', () => {
  it('holds fifty kinds, each under its own id and as the contract has it', () => {
    expect(everyFruit).toHaveLength(50)
    for (const [id, fruit] of fruitLibrary) {
      expect(fruit.id).toBe(id)
      expect(Fruit.parse(fruit)).toEqual(fruit)
    }
  })

  it.each(everyFruit)('$id adds up to 100 % with no part below zero', ({ composition }) => {
    const { waterPct, sugarPct, acidPct, solublesPct, pulpPct } = composition
    const parts = [waterPct, sugarPct, acidPct, solublesPct, pulpPct]
    expect(parts.reduce((sum, part) => sum + part)).toBeCloseTo(100, 9)
    expect(Math.min(...parts)).toBeGreaterThanOrEqual(0)
  })

  it.each(everyFruit)('$id has its ranges in order', (fruit) => {
    const ranges = numericFields.flatMap((field) => {
      const value = fruit[field]
      return typeof value === 'object' && 'low' in value ? [value] : []
    })
    expect(ranges).toHaveLength(7)
    for (const { low, typical, high } of ranges) {
      expect(low).toBeLessThanOrEqual(typical)
      expect(typical).toBeLessThanOrEqual(high)
    }
    expect(fruit.pressedLPerKg).toBeLessThan(fruit.drainedLPerKg)
    expect(fruit.drainedRangeLPerKg?.typical).toBe(fruit.drainedLPerKg)
    expect(fruit.pressedRangeLPerKg?.typical).toBe(fruit.pressedLPerKg)
  })

  it.each(everyFruit)('$id says where every number and hazard comes from', (fruit) => {
    const needed = [
      ...Object.keys(fruit.composition).map((part) => `composition.${part}`),
      ...numericFields.filter((field) => fruit[field] !== undefined),
      ...fruit.hazards.map((_, index) => `hazards.${index}`),
    ]
    expect(Object.keys(fruit.sources)).toEqual(expect.arrayContaining(needed))
    for (const code of Object.values(fruit.sources)) expect(explainSource(code)).not.toBe('')
  })

  it.each(Object.entries(cellLiquidLPerKg))('%s holds %d L/kg of cell liquid', (id, published) => {
    const { waterPct, sugarPct, acidPct, solublesPct } = fruitOf(id).composition
    const litres = (waterPct / 0.9982 + 0.62 * sugarPct + 0.6 * (acidPct + solublesPct)) / 100
    expect(Math.abs(litres - published)).toBeLessThanOrEqual(0.01)
  })

  it('has the cell liquid of all but coffee and four dry spices checked', () => {
    const unchecked = everyFruit.filter(({ id }) => !(id in cellLiquidLPerKg))
    expect(unchecked.map(({ id }) => id).sort()).toEqual([
      'cinnamon',
      'clove',
      'coffee',
      'juniper',
      'vanilla',
    ])
  })

  it.each(everyFruit.filter(({ kind }) => kind === 'stoneFruit'))(
    '$id warns of its kernels',
    ({ hazards }) => {
      expect(hazards.join(' ')).toMatch(/crack/)
    },
  )

  it('takes peel, flowers, spices and dry goods as weighed after trimming', () => {
    const trimmed = everyFruit.filter(
      ({ sources }) => sources['composition.edibleFraction'] === 'W',
    )
    expect(trimmed.map(({ id }) => id).sort()).toEqual([
      'cinnamon',
      'clove',
      'coffee',
      'dried_plum',
      'elderflower',
      'ginger',
      'green_walnut',
      'juniper',
      'lemon_juice_flesh',
      'lemon_peel',
      'orange_flesh',
      'orange_peel',
      'raisin',
      'vanilla',
    ])
    for (const { composition } of trimmed) expect(composition.edibleFraction).toBe(1)
  })
})

describe('the library against printed tables', () => {
  it.each(compositionChecks)('$fruitId has the water and sugar of record $record', (check) => {
    const { composition, sources } = fruitOf(check.fruitId)
    // The five parts of plum sum to 100.05 in print, so its measured ones are scaled down by that.
    const tolerance = check.fruitId === 'plum' ? 0.05 : 0.01
    expect(Math.abs(composition.waterPct - check.waterG)).toBeLessThanOrEqual(tolerance)
    expect(Math.abs(composition.sugarPct - check.sugarG)).toBeLessThanOrEqual(tolerance)
    expect(sources['composition.waterPct']).toBe(`U:${check.record}`)
    // Fibre is not kept, but seven tenths of it are among the insolubles.
    expect(composition.pulpPct).toBeGreaterThanOrEqual(0.7 * check.fibreG)
  })

  it('has how the trade steeps it for all fifty kinds', () => {
    expect(Object.keys(steepingFacts).sort()).toEqual(everyFruit.map(({ id }) => id).sort())
  })

  it.each(Object.entries(steepingFacts))('%s is steeped as the craft reference has it', (id, f) => {
    const fruit = fruitOf(id)
    const { sources } = fruit
    const range = ([typical, low, high]: typeof f.drained) => ({ typical, low, high })
    expect([fruit.piece?.shape, fruit.piece?.halfSizeMm, sources['piece']]).toEqual(f.piece)
    expect(fruit.drainedRangeLPerKg).toEqual(range(f.drained))
    expect(fruit.pressedRangeLPerKg).toEqual(range(f.pressed))
    expect(sources['drainedLPerKg']).toBe(f.drained[3])
    expect(sources['pressedLPerKg']).toBe(f.pressed[3])
    const [startMonth, peakMonths, endMonth, seasonSource] = f.season ?? []
    expect(fruit.season).toEqual(f.season && { startMonth, peakMonths, endMonth })
    expect(sources['season']).toBe(seasonSource)
    expect(fruit.mediterraneanShiftWeeks).toBe(f.mediterraneanShiftWeeks?.[0])
    expect(sources['mediterraneanShiftWeeks']).toBe(f.mediterraneanShiftWeeks?.[1])
    expect(fruit.drinkByYears).toEqual(range(f.drinkByYears))
    expect(sources['drinkByYears']).toBe(f.drinkByYears[3])
    expect([fruit.pectinHaze, sources['pectinHaze']]).toEqual(f.pectinHaze)
  })

  const seasons = everyFruit.flatMap(({ id, season }) => (season ? [{ id, ...season }] : []))
  it.each(seasons)(
    '$id is most plentiful within its season',
    ({ startMonth, endMonth, peakMonths }) => {
      const isIn = (month: number) =>
        startMonth <= endMonth
          ? startMonth <= month && month <= endMonth
          : month >= startMonth || month <= endMonth
      expect(peakMonths.length).toBeGreaterThan(0)
      expect(peakMonths.filter((month) => !isIn(month))).toEqual([])
    },
  )

  it.each(bulkDensityChecks)('$fruitId fills a cup with $cupG g', ({ fruitId, cupG }) => {
    expect(Math.abs(fruitOf(fruitId).bulkDensityKgPerL - cupG / cupMl)).toBeLessThanOrEqual(0.001)
  })

  it('cornelian cherry and green walnut lie within their published spans', () => {
    const { cornelianCherry, greenWalnut } = spanChecks
    const cornel = fruitOf('cornelian_cherry').composition
    const walnut = fruitOf('green_walnut').composition
    expect(100 - cornel.waterPct).toBeGreaterThanOrEqual(cornelianCherry.dryMatterG.low)
    expect(100 - cornel.waterPct).toBeLessThanOrEqual(cornelianCherry.dryMatterG.high)
    expect(cornel.acidPct).toBeGreaterThanOrEqual(cornelianCherry.acidG.low)
    expect(cornel.acidPct).toBeLessThanOrEqual(cornelianCherry.acidG.high)
    expect(100 - walnut.waterPct).toBeGreaterThanOrEqual(greenWalnut.dryMatterG.low)
    expect(100 - walnut.waterPct).toBeLessThanOrEqual(greenWalnut.dryMatterG.high)
    const { expected, tolerance } = greenWalnut.sugarG
    expect(Math.abs(walnut.sugarPct - expected)).toBeLessThanOrEqual(tolerance)
  })
})

describe('fruitOf', () => {
  it('gives the example of its docstring', () => {
    expect(fruitOf('sour_cherry').composition.waterPct).toBe(86.13)
  })

  it('throws a range error that names what it was asked for', () => {
    expect(() => fruitOf('moonfruit')).toThrow(RangeError)
    expect(() => fruitOf('moonfruit')).toThrow(/moonfruit/)
    expect(() => fruitOf('toString')).toThrow(RangeError)
  })
})

describe('explainSource', () => {
  it('names the record after a colon', () => {
    expect(explainSource('U:09063')).toMatch(/USDA.*record 09063/)
  })

  it('has no record to name where a code stands alone', () => {
    expect(explainSource('D')).toBe('worked out here from the other fields')
  })

  it('names the fruit that a fact was taken over from', () => {
    expect(explainSource('like:damson')).toBe('taken over from a similar fruit: damson')
  })

  it('throws a range error for a code nobody explained', () => {
    expect(() => explainSource('X9')).toThrow(RangeError)
    expect(() => explainSource('X9')).toThrow('source code is X9, not in the library')
    expect(() => explainSource('constructor')).toThrow(RangeError)
  })
})

describe('matterOfGoods', () => {
  it('leaves 100 g of stones in a kilogram of sour cherries', () => {
    const { edible, inertG } = matterOfGoods(fruitOf('sour_cherry').composition, 1000)
    expect(inertG).toBeCloseTo(100, 9)
    expect(massOf(edible)).toBeCloseTo(900, 9)
    expect(edible.sugarG).toBeCloseTo(76.41, 9)
    expect(edible.ethanolG).toBe(0)
  })

  it('makes sugar all sugar, and honey sugar and water', () => {
    expect(matterOfGoods(sweetenerComposition('sugar'), 250).edible.sugarG).toBe(250)
    const honey = matterOfGoods(sweetenerComposition('honey'), 1000).edible
    expect(honey.sugarG).toBeCloseTo(821.2, 9)
    expect(honey.waterG).toBeCloseTo(171, 9)
    expect(massOf(honey)).toBeCloseTo(1000, 9)
  })
})
