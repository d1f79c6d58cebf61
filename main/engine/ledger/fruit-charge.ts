/** How the fruit of a jar treats liquid, and what the trade's handling changes in that. */
import { averagePace, paceOf } from '../steeping/pace.ts'
import { staysAfterDraw } from '../steeping/sugar-draw.ts'
import type { FruitCharge, FruitPart } from './cellar-state.ts'

type PlainTissue = Omit<FruitCharge, 'fruits' | 'sugarDraws' | 'isUnderSugar'>

/** Freshly charged fruit of one kind. Crushed, frozen or dried fruit has no living cells left. */
export function tissueOf(part: FruitPart, rawWaterG: number): PlainTissue {
  const { facts, cut, edibleG } = part
  const isDry = facts.kineticClass === 'dry' || facts.kineticClass === 'driedFruit'
  return {
    cells: isDry || cut === 'crushed' || cut === 'frozen' ? 'dead' : 'living',
    edibleG,
    rawWaterG,
    // L/kg and mL/g are the same number.
    holdMl: facts.drainedLPerKg * edibleG,
    pressedMl: facts.pressedLPerKg * edibleG,
    bulkMl: edibleG / facts.bulkDensityKgPerL,
    pace: paceOf(part),
    parts: [part],
  }
}

/** Spirit kills the cells: no more osmosis, only mixing. */
export const killed = <T extends { cells: FruitCharge['cells'] }>(tissue: T): T =>
  tissue.cells === 'dead' ? tissue : { ...tissue, cells: 'dead' }

/** More fruit in the same jar: capacities add up, paces are averaged by mass. */
export function addFruit(
  there: FruitCharge | null,
  added: PlainTissue,
  fruit: { fruitId: string; massG: number },
): FruitCharge {
  if (!there) return { ...added, fruits: [fruit], sugarDraws: 0, isUnderSugar: false }
  return {
    ...there,
    cells: there.cells === 'dead' || added.cells === 'dead' ? 'dead' : 'living',
    edibleG: there.edibleG + added.edibleG,
    rawWaterG: there.rawWaterG + added.rawWaterG,
    holdMl: there.holdMl + added.holdMl,
    pressedMl: there.pressedMl + added.pressedMl,
    bulkMl: there.bulkMl + added.bulkMl,
    pace: averagePace([there, added]),
    parts: [...there.parts, ...added.parts],
    fruits: [...there.fruits, fruit],
  }
}

/** The same fruit handled otherwise: its pace is worked out anew from its parts. */
export function handled(fruit: FruitCharge, change: (part: FruitPart) => FruitPart): FruitCharge {
  const parts = fruit.parts.map(change)
  const paces = parts.map((part) => ({ pace: paceOf(part), edibleG: part.edibleG }))
  return { ...fruit, parts, pace: averagePace(paces) }
}

/** Crushed fruit lets liquid through like cut soft tissue. */
export const crushedFruit = (fruit: FruitCharge): FruitCharge =>
  handled(killed(fruit), (part) => ({
    ...part,
    cut: 'crushed',
    pieceMm: undefined,
    pieceScale: 1,
  }))

/** A new sugar draw, unless the fruit is still under the sugar of the last one. */
export function coveredAgain(fruit: FruitCharge, heldMl: number): FruitCharge {
  if (fruit.isUnderSugar) return fruit
  const sugarDraws = fruit.sugarDraws + 1
  return {
    ...fruit,
    holdMl: staysAfterDraw(sugarDraws) * Math.min(heldMl, fruit.holdMl),
    sugarDraws,
    isUnderSugar: true,
  }
}
