import { describe, expect, it } from 'vitest'
import { standardDrinks } from '../../../main/engine/solution/standard-drinks.ts'
import { drinkChecks } from '../../references/trade-checks.ts'

describe('standardDrinks', () => {
  it('meets the published British, Australian and American drinks', () => {
    const { british, australian, american } = drinkChecks
    const offBritish = standardDrinks(british).unitedKingdom - british.drinks
    expect(Math.abs(offBritish)).toBeLessThanOrEqual(british.tolerance)
    const offAustralian = standardDrinks(australian).australia - australian.drinks
    expect(Math.abs(offAustralian)).toBeLessThanOrEqual(australian.tolerance)
    const { unitedStates } = standardDrinks({ volumeMl: american.ethanolMl, strengthPctVol: 100 })
    const tolerance = american.tolerance / american.ethanolMl
    expect(Math.abs(unitedStates - 1)).toBeLessThanOrEqual(tolerance)
  })

  it('refuses what is no glass', () => {
    expect(() => standardDrinks({ volumeMl: -1, strengthPctVol: 40 })).toThrow(RangeError)
    expect(() => standardDrinks({ volumeMl: 40, strengthPctVol: Number.NaN })).toThrow(RangeError)
  })
})
