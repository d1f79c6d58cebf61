import { describe, expect, it } from 'vitest'
import { houseKinds, type HouseKind } from '../../main/demo/house-kinds.ts'
import { fruitOf } from '../../main/engine/index.ts'

const kinds: readonly HouseKind[] = Object.values(houseKinds)

describe('houseKinds', () => {
  it('are seventeen, each under an id of its own', () => {
    expect(new Set(kinds.map(({ id }) => id)).size).toBe(17)
  })

  it.each(kinds)('$id keeps within what the fruit library calls usual', (kind) => {
    const fruit = fruitOf(kind.ingredients[0].fruitId)
    const told = [
      [kind.spiritPctVol, fruit.steepingStrengthPctVol],
      [kind.kgPerLSpirit, fruit.fruitKgPerLSpirit],
      [kind.steepDays / 7, fruit.steepingWeeks],
      [kind.finished.strengthPctVol, fruit.finishedStrengthPctVol],
      [kind.finished.sugarGPerL, fruit.finishedSugarGPerL],
      [kind.restMonths, fruit.restMonths],
    ] as const
    for (const [value, range] of told) {
      expect(value).toBeGreaterThanOrEqual(range?.low as number)
      expect(value).toBeLessThanOrEqual(range?.high as number)
    }
  })

  it.each(kinds)('$id is picked in season', ({ ingredients, pickedOn }) => {
    const { season } = fruitOf(ingredients[0].fruitId)
    const { startMonth, endMonth } = season ?? { startMonth: 1, endMonth: 12 }
    const monthsIn = (pickedOn[0] - startMonth + 12) % 12
    expect(monthsIn).toBeLessThanOrEqual((endMonth - startMonth + 12) % 12)
  })
})
