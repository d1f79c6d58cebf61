/** What a draft needs bought, and what that costs where its maker gave prices. */
import type { DraftSpec, Purchase } from '../../../shared/schemas/drafts.ts'
import type { Move } from '../../../shared/schemas/moves.ts'

export function purchasesOf(spec: DraftSpec, moves: readonly Move[], bottles: number): Purchase[] {
  const bought = moves.flatMap((move): Purchase[] => {
    if (move.kind !== 'buy') return []
    const { goods, massG, volumeMl, priceMinor } = move
    const amount = {
      ...(massG !== undefined && { massG }),
      ...(volumeMl !== undefined && { volumeMl }),
      ...(priceMinor !== undefined && { priceMinor }),
    }
    switch (goods.kind) {
      case 'fruit':
        return [{ what: 'fruit', fruitId: goods.fruitId, ...amount }]
      case 'spirit':
        return [{ what: 'spirit', strengthPctVol: goods.strengthPctVol, ...amount }]
      case 'sweetener':
        return [{ what: 'sweetener', sweetenerId: goods.sweetenerId, ...amount }]
      case 'acid':
        // A draft is sharpened once it has been tasted.
        return []
    }
  })
  const merged = mergeAlike(bought)
  if (bottles === 0) return merged
  const { bottleSizeMl: volumeMl, bottlePriceMinor } = spec
  const priceMinor =
    bottlePriceMinor === undefined ? {} : { priceMinor: Math.round(bottlePriceMinor * bottles) }
  return [...merged, { what: 'bottle', count: bottles, volumeMl, ...priceMinor }]
}

/** What is bought for the fruit and for the finish is one line of the list. */
function mergeAlike(bought: readonly Purchase[]): Purchase[] {
  const lines = new Map<string, Purchase>()
  for (const next of bought) {
    const { what, fruitId, sweetenerId, strengthPctVol } = next
    const key = `${what} ${fruitId} ${sweetenerId} ${strengthPctVol}`
    const before = lines.get(key)
    lines.set(key, before ? addAmounts(before, next) : next)
  }
  return [...lines.values()]
}

const addAmounts = (a: Purchase, b: Purchase): Purchase => ({
  ...a,
  ...(b.massG !== undefined && { massG: (a.massG ?? 0) + b.massG }),
  ...(b.volumeMl !== undefined && { volumeMl: (a.volumeMl ?? 0) + b.volumeMl }),
  ...(b.priceMinor !== undefined && { priceMinor: (a.priceMinor ?? 0) + b.priceMinor }),
})

export function costOf(purchases: readonly Purchase[]) {
  const prices = purchases.flatMap(({ priceMinor }) => priceMinor ?? [])
  const isWholeCost = prices.length === purchases.length
  if (prices.length === 0) return { isWholeCost: false }
  return { costMinor: prices.reduce((sum, price) => sum + price, 0), isWholeCost }
}
