/** How the fruit of a jar treats liquid, and what the trade's handling changes in that. */
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { Cut } from '../../../shared/schemas/moves.ts'
import { halfTimesOf } from '../fruit/half-times.ts'
import type { FruitCharge } from './cellar-state.ts'

type PlainTissue = Omit<FruitCharge, 'fruits' | 'sugarDraws' | 'isUnderSugar'>

/** Freshly charged fruit of one kind. Crushed, frozen or dried fruit has no living cells left. */
export function tissueOf(fruit: Fruit, cut: Cut, edibleG: number, waterG: number): PlainTissue {
  const isDry = fruit.kineticClass === 'dry' || fruit.kineticClass === 'driedFruit'
  const kg = edibleG / 1000
  return {
    cells: isDry || cut === 'crushed' || cut === 'frozen' ? 'dead' : 'living',
    edibleG,
    rawWaterG: waterG,
    holdMl: 1000 * fruit.drainedLPerKg * kg,
    pressedMl: 1000 * fruit.pressedLPerKg * kg,
    bulkMl: (1000 * kg) / fruit.bulkDensityKgPerL,
    halfTimeDays: halfTimesOf(fruit.kineticClass, cut),
  }
}

/** Spirit kills the cells: no more osmosis, only mixing. */
export const killed = <T extends { cells: FruitCharge['cells'] }>(tissue: T): T => ({
  ...tissue,
  cells: 'dead',
})

/** More fruit in the same jar: capacities add up, paces are averaged by mass. */
export function addFruit(
  there: FruitCharge | null,
  added: PlainTissue,
  fruit: { fruitId: string; massG: number },
): FruitCharge {
  if (!there) return { ...added, fruits: [fruit], sugarDraws: 0, isUnderSugar: false }
  const edibleG = there.edibleG + added.edibleG
  const share = added.edibleG / edibleG
  const average = (of: keyof FruitCharge['halfTimeDays']) =>
    (1 - share) * there.halfTimeDays[of] + share * added.halfTimeDays[of]
  return {
    ...there,
    cells: there.cells === 'dead' || added.cells === 'dead' ? 'dead' : 'living',
    edibleG,
    rawWaterG: there.rawWaterG + added.rawWaterG,
    holdMl: there.holdMl + added.holdMl,
    pressedMl: there.pressedMl + added.pressedMl,
    bulkMl: there.bulkMl + added.bulkMl,
    halfTimeDays: {
      ethanol: average('ethanol'),
      extract: average('extract'),
      osmosis: average('osmosis'),
    },
    fruits: [...there.fruits, fruit],
  }
}

/** Crushed fruit lets liquid through like cut soft tissue. */
export const crushedFruit = (fruit: FruitCharge): FruitCharge => ({
  ...killed(fruit),
  halfTimeDays: halfTimesOf('cutSoft', 'crushed'),
})

/**
 * Share of the held liquid that stays in the fruit after a first, second, third sugar draw:
 * craft reference, sugar draw on spirit-soaked fruit; engineering estimates of ± 0.15.
 */
const staysAfterDraw = [0.55, 0.45, 0.4] as const

/** A new sugar draw, unless the fruit is still under the sugar of the last one. */
export function coveredAgain(fruit: FruitCharge, heldMl: number): FruitCharge {
  if (fruit.isUnderSugar) return fruit
  const stays = staysAfterDraw[Math.min(fruit.sugarDraws, staysAfterDraw.length - 1)] ?? 0.4
  return {
    ...fruit,
    holdMl: stays * Math.min(heldMl, fruit.holdMl),
    sugarDraws: fruit.sugarDraws + 1,
    isUnderSugar: true,
  }
}
