/** What a draft takes from the pantry, as if bought on its first day: lots of its own, with prices. */
import type { DraftSpec, DraftSpirit } from '../../../shared/schemas/drafts.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { Goods } from '../../../shared/schemas/goods.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import { sweetenerComposition } from '../fruit/fruit-library.ts'
import { slackG } from '../ledger/refusal.ts'

export interface DraftFacts {
  readonly fruitOf: (fruitId: string) => Fruit
}

export const instant = (atMs: number): string => new Date(Math.round(atMs)).toISOString()

/** Less than this is nothing: the moves take no zero amounts. */
export const leastAmount = 1e-6

/**
 * The ledger rounds to half a gram what nearly empties a lot; a lot of a few grams is bought with
 * some to spare, so that a draft changes smoothly as its numbers do.
 */
const lotFor = (amount: number): number => (amount < 2 * slackG ? 4 * slackG : amount)

export const sugarLotId = 'draft-sugar'
export const fruitLotId = (index: number) => `draft-fruit-${index + 1}`
export const finishSugarLotId = 'draft-finish-sugar'
export const finishSpiritLotId = 'draft-finish-spirit'
export const spiritLotId = (index: number) => `draft-spirit-${index + 1}`

export function buying(spec: DraftSpec, { fruitOf }: DraftFacts, atMs: number): Move[] {
  const at = instant(atMs)
  const fruits = spec.fruits.map(({ fruitId, massG, priceMinorPerKg }, index): Move => {
    const { composition } = fruitOf(fruitId)
    const goods: Goods = { kind: 'fruit', fruitId, composition }
    const price = priced(priceMinorPerKg, massG / 1000)
    return { kind: 'buy', at, lotId: fruitLotId(index), goods, massG, ...price }
  })
  const spirits = spec.spirits.map((spirit, index) =>
    buySpirit(spirit, spiritLotId(index), spirit.volumeMl, at),
  )
  const sugarG = spec.sugarDraws.reduce((sum, draw) => sum + draw.sugarG, spec.layeringSugarG)
  return [...fruits, ...spirits, ...buySweetener(spec, sugarLotId, sugarG, at)]
}

/** Lots of their own, so that what leads to the extracts does not depend on the finish. */
export function buyingForFinish(spec: DraftSpec, atMs: number): Move[] {
  const at = instant(atMs)
  const [spirit] = spec.spirits
  const { finishSpiritMl, finishSugarG } = spec
  return [
    ...(spirit && finishSpiritMl > leastAmount
      ? [buySpirit(spirit, finishSpiritLotId, finishSpiritMl, at)]
      : []),
    ...buySweetener(spec, finishSugarLotId, finishSugarG, at),
  ]
}

function buySpirit(spirit: DraftSpirit, lotId: string, volumeMl: number, at: string): Move {
  const { strengthPctVol, priceMinorPerL } = spirit
  const goods: Goods = { kind: 'spirit', strengthPctVol }
  const price = priced(priceMinorPerL, volumeMl / 1000)
  return { kind: 'buy', at, lotId, goods, volumeMl: lotFor(volumeMl), ...price }
}

function buySweetener(spec: DraftSpec, lotId: string, massG: number, at: string): Move[] {
  if (massG < leastAmount) return []
  const { sweetenerId, sweetenerPriceMinorPerKg } = spec
  const composition = sweetenerComposition(sweetenerId)
  const goods: Goods = { kind: 'sweetener', sweetenerId, composition }
  const price = priced(sweetenerPriceMinorPerKg, massG / 1000)
  return [{ kind: 'buy', at, lotId, goods, massG: lotFor(massG), ...price }]
}

const priced = (minorPerUnit: number | undefined, amount: number) =>
  minorPerUnit === undefined ? {} : { priceMinor: Math.round(minorPerUnit * amount) }
