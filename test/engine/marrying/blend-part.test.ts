import { describe, expect, it } from 'vitest'
import { acidPart, waterPart } from '../../../main/engine/index.ts'
import { blended, measured, type BlendPart } from '../../../main/engine/marrying/blend-part.ts'
import { matterOf, noMatter } from '../../../shared/matter.ts'

const sugar = (more: Partial<BlendPart> = {}): BlendPart => ({
  place: 'lot:sugar',
  kind: 'sweetener',
  unit: 'g',
  matter: matterOf({ sugarG: 2000 }),
  isEndless: false,
  cost: { minor: 600, isComplete: true },
  ...more,
})

const bottles = (more: Partial<BlendPart> = {}): BlendPart => ({
  place: 'bottles:old',
  kind: 'extract',
  unit: 'bottles',
  count: 6,
  matter: matterOf({ waterG: 1800, ethanolG: 600 }),
  isEndless: false,
  cost: { minor: 3000, isComplete: true },
  ...more,
})

describe('measured', () => {
  it('counts what is weighed by the kilogram', () => {
    const part = sugar({ keepBack: 300, least: 200, most: 1900 })
    expect(measured(part)).toEqual({
      part,
      step: matterOf({ sugarG: 1000 }),
      amountPerStep: 1000,
      costPerStep: 300,
      low: 0.2,
      // 2,000 g less 300 g kept back, which is less than the most of 1,900 g.
      high: 1.7,
      isWhole: false,
      isCutShort: false,
    })
    expect(measured(sugar({ keepBack: 300, most: 1500 })).high).toBe(1.5)
  })

  it('counts bottles whole: no more than asked for, and no fewer', () => {
    const part = bottles({ keepBack: 1.5, least: 1.5 })
    expect(measured(part)).toEqual({
      part,
      step: matterOf({ waterG: 300, ethanolG: 100 }),
      amountPerStep: 1,
      costPerStep: 500,
      low: 2,
      high: 4,
      isWhole: true,
      isCutShort: false,
    })
    // Whole numbers that rounding touched stay the whole numbers they are.
    const touched = measured(bottles({ most: 3 - 1e-12, least: 2 + 1e-12 }))
    expect([touched.low, touched.high]).toEqual([2, 3])
  })

  it('tells a least use that is more than there is, and asks for all instead', () => {
    expect(measured(sugar({ least: 2500 }))).toMatchObject({ low: 2, high: 2, isCutShort: true })
    expect(measured(sugar({ least: 2000 }))).toMatchObject({ low: 2, high: 2, isCutShort: false })
    expect(measured(sugar({ keepBack: 3000 }))).toMatchObject({ low: 0, high: 0 })
  })

  it('makes nothing of an empty place', () => {
    const part = sugar({ matter: noMatter, least: 5 })
    expect(measured(part)).toEqual({
      part,
      step: noMatter,
      amountPerStep: 0,
      costPerStep: 0,
      low: 0,
      high: 0,
      isWhole: false,
      isCutShort: false,
    })
  })

  it('has no end of water but the one asked for', () => {
    expect(measured(waterPart()).high).toBe(20_000)
    expect(measured(waterPart({ most: 500 })).high).toBeCloseTo(0.4991, 4)
  })

  it('takes acid that has no price yet for what it is', () => {
    expect(acidPart().cost).toEqual({ minor: 0, isComplete: false })
    expect(waterPart().cost).toEqual({ minor: 0, isComplete: true })
  })
})

describe('blended', () => {
  it('adds up so many steps of each part', () => {
    expect(blended([measured(sugar()), measured(bottles())], [0.25, 3])).toEqual(
      matterOf({ sugarG: 250, waterG: 900, ethanolG: 300 }),
    )
    expect(blended([measured(sugar())], [])).toEqual(noMatter)
  })
})
