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
    }
  })
  if (bottles === 0) return bought
  const { bottleSizeMl: volumeMl, bottlePriceMinor } = spec
  const priceMinor =
    bottlePriceMinor === undefined ? {} : { priceMinor: Math.round(bottlePriceMinor * bottles) }
  return [...bought, { what: 'bottle', count: bottles, volumeMl, ...priceMinor }]
}

export function costOf(purchases: readonly Purchase[]) {
  const prices = purchases.flatMap(({ priceMinor }) => priceMinor ?? [])
  const isWholeCost = prices.length === purchases.length
  if (prices.length === 0) return { isWholeCost: false }
  return { costMinor: prices.reduce((sum, price) => sum + price, 0), isWholeCost }
}
