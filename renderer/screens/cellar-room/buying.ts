/** What the buying form holds, and the move that it makes of it. */
import type { Goods } from '../../../shared/schemas/goods.ts'
import type { MoveOf } from '../../../shared/schemas/moves.ts'

export interface Buying {
  readonly kind: Goods['kind']
  readonly fruitId: string
  readonly sweetenerId: 'sugar' | 'honey'
  readonly strengthPctVol: number | undefined
  readonly name: string
  readonly massG: number | undefined
  readonly volumeMl: number | undefined
  readonly priceMinor: number | undefined
  readonly at: string | undefined
}

export const newBuying = (now: Date): Buying => ({
  kind: 'fruit',
  fruitId: '',
  sweetenerId: 'sugar',
  strengthPctVol: undefined,
  name: '',
  massG: undefined,
  volumeMl: undefined,
  priceMinor: undefined,
  at: now.toISOString(),
})

/** The purchase, or undefined while something that it needs is missing. */
export function purchaseOf(buying: Buying, lotId: string): MoveOf<'buy'> | undefined {
  const goods = goodsOf(buying)
  const { kind, massG, volumeMl, priceMinor, at } = buying
  const amount = kind === 'spirit' ? volumeMl : massG
  if (!goods || amount === undefined || at === undefined) return undefined
  return {
    kind: 'buy',
    at,
    lotId,
    goods,
    ...(kind === 'spirit' ? { volumeMl: amount } : { massG: amount }),
    ...(priceMinor !== undefined && { priceMinor }),
  }
}

function goodsOf({ kind, fruitId, sweetenerId, strengthPctVol, name }: Buying): Goods | undefined {
  const named = name.trim() === '' ? {} : { name: name.trim() }
  switch (kind) {
    case 'fruit':
      return fruitId === '' ? undefined : { kind, fruitId, ...named }
    case 'spirit':
      return strengthPctVol === undefined ? undefined : { kind, strengthPctVol, ...named }
    case 'sweetener':
      return { kind, sweetenerId, ...named }
    case 'acid':
      return { kind, ...named }
  }
}
