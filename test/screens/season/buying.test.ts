import { describe, expect, it } from 'vitest'
import { fieldOf, roundedForShop } from '../../../renderer/screens/season/buy/bought-amount.ts'
import { isDue, purchaseGroups } from '../../../renderer/screens/season/buy/purchase-groups.ts'
import {
  keptPrice,
  massPriceUnit,
  shownPrice,
} from '../../../renderer/parts/quantity/price-units.ts'
import { withFruitPrice } from '../../../renderer/screens/season/wishes/prices.ts'
import { newWish, readWish } from '../../../renderer/screens/season/wishes/wish-draft.ts'
import { line, purchases, weekAt, wishes } from './season-fixture.ts'

const wednesday = new Date(Date.parse(weekAt(0)) + 2.5 * 86_400_000)
const ticked = { at: weekAt(0), canBeTakenBack: true }

describe('isDue', () => {
  it('is what is wanted by Sunday and not bought', () => {
    expect(isDue(line({ from: weekAt(0) }), wednesday)).toBe(true)
    expect(isDue(line({ from: weekAt(-3) }), wednesday)).toBe(true)
    expect(isDue(line({ from: weekAt(1) }), wednesday)).toBe(false)
    expect(isDue(line({ from: weekAt(0), ticked }), wednesday)).toBe(false)
  })
})

describe('purchaseGroups', () => {
  const { lines } = purchases()

  it('puts this week on top and what is bought last', () => {
    const bought = line({ key: 'bought', week: 3, from: weekAt(3), ticked })
    const groups = purchaseGroups([...lines, bought], 'week', wednesday)
    expect(groups.map(({ key }) => key)).toEqual(['now', 'week 32', 'week 40', 'week 41', 'bought'])
    expect(groups.flatMap((group) => group.lines)).toHaveLength(lines.length + 1)
  })

  it('goes by shop in the order of the trade, each shop by week', () => {
    const later = line({ key: 'w50 spirit', week: 50, from: weekAt(50) })
    const groups = purchaseGroups([later, ...lines], 'shop', wednesday)
    expect(groups.map(({ key }) => key)).toEqual([
      'now',
      'shop market',
      'shop hedgerow',
      'shop spirits',
      'shop supplies',
    ])
  })
})

describe('roundedForShop', () => {
  it('weighs to ten grams, counts whole pieces, and never comes to nothing', () => {
    const fruit = line({ volumeMl: undefined, massG: 446.7 })
    expect(roundedForShop(446.7, fieldOf(fruit), 'metric')).toBe(450)
    expect(roundedForShop(2, fieldOf(fruit), 'metric')).toBe(10)
    expect(roundedForShop(2552, fieldOf(line()), 'metric')).toBe(2550)
    expect(roundedForShop(7, fieldOf(line({ count: 7 })), 'us')).toBe(7)
    expect(roundedForShop(453.6, fieldOf(fruit), 'us') / 453.59237).toBeCloseTo(1, 9)
  })
})

describe('prices', () => {
  it('are said for a pound and kept for a kilogram, and read back the same', () => {
    const unit = massPriceUnit('us')
    const kept = keptPrice(299, unit)
    expect(kept).toBeCloseTo(659.2, 1)
    expect(shownPrice(kept, unit)).toBe(299)
  })

  it('of a fruit are replaced, and gone when emptied', () => {
    const { prices } = wishes()
    expect(withFruitPrice(prices, 'quince', 400).fruits).toEqual([
      { fruitId: 'quince', minorPerKg: 400 },
    ])
    expect(withFruitPrice(prices, 'quince', undefined).fruits).toEqual([])
  })
})

describe('readWish', () => {
  const begun = newWish('w', 'damson')

  it('wants at least or at most, in that order of size', () => {
    expect(readWish(begun)).toEqual({ ok: false, problem: 'oneNeeded' })
    expect(readWish({ ...begun, atLeastMl: 3000, atMostMl: 2000 })).toEqual({
      ok: false,
      problem: 'crossed',
    })
    expect(readWish({ ...begun, atMostMl: 0 })).toMatchObject({ ok: true, wish: { atMostMl: 0 } })
  })
})
