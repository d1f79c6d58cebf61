/** Buying: a move of its own, or made on the way by a form that finds nothing in the pantry. */
import type { Goods } from '../../../../shared/schemas/goods.ts'
import type { MoveOf } from '../../../../shared/schemas/moves.ts'
import {
  complete,
  given,
  headOf,
  headOfMove,
  missing,
  type DraftHead,
  type Outcome,
} from './draft-basics.ts'
import type { LogContext } from './log-context.ts'

export interface Purchase {
  readonly lotId: string
  readonly goodsKind: Goods['kind']
  readonly fruitId: string | undefined
  readonly strengthPctVol: number | undefined
  readonly sweetenerId: 'sugar' | 'honey'
  readonly name: string
  /** Millilitres of spirit, grams of everything else. */
  readonly amount: number | undefined
  readonly priceMinor: number | undefined
}

export interface BuyDraft extends DraftHead {
  readonly kind: 'buy'
  readonly purchase: Purchase
}

export const emptyPurchase = (goodsKind: Goods['kind'], lotId: string): Purchase => ({
  lotId,
  goodsKind,
  fruitId: undefined,
  strengthPctVol: undefined,
  sweetenerId: 'sugar',
  name: '',
  amount: undefined,
  priceMinor: undefined,
})

export const startBuying = ({ now, newId }: LogContext): BuyDraft => ({
  kind: 'buy',
  at: now(),
  note: '',
  purchase: emptyPurchase('fruit', newId()),
})

function goodsOf({
  goodsKind,
  fruitId,
  strengthPctVol,
  sweetenerId,
  name,
}: Purchase): Goods | undefined {
  const named = name.trim() === '' ? {} : { name: name.trim() }
  switch (goodsKind) {
    case 'fruit':
      return fruitId === undefined ? undefined : { kind: 'fruit', fruitId, ...named }
    case 'spirit':
      return strengthPctVol === undefined ? undefined : { kind: 'spirit', strengthPctVol, ...named }
    case 'sweetener':
      return { kind: 'sweetener', sweetenerId, ...named }
    case 'acid':
      return { kind: 'acid', ...named }
  }
}

/** The purchase as a move; `usedAmount` is what is bought when no amount was filled in. */
export function buyMove(
  purchase: Purchase,
  head: { at: string; note?: string },
  usedAmount?: number,
): Outcome<MoveOf<'buy'>> {
  const { lotId, goodsKind, priceMinor, fruitId, strengthPctVol } = purchase
  const goods = goodsOf(purchase)
  const amount = purchase.amount ?? usedAmount
  if (goods === undefined || amount === undefined)
    return missing({
      'purchase.amount': amount,
      ...(goodsKind === 'fruit' && { 'purchase.fruitId': fruitId }),
      ...(goodsKind === 'spirit' && { 'purchase.strengthPctVol': strengthPctVol }),
    })
  const measured = goodsKind === 'spirit' ? { volumeMl: amount } : { massG: amount }
  return complete([{ ...head, kind: 'buy', lotId, goods, ...measured, ...given({ priceMinor }) }])
}

export function buyingMoves({ at, note, purchase }: BuyDraft): Outcome<MoveOf<'buy'>> {
  if (at === undefined) return missing({ at })
  return buyMove(purchase, headOf(at, note))
}

export function buyingOfMove(move: MoveOf<'buy'>): BuyDraft {
  const { goods } = move
  return {
    kind: 'buy',
    ...headOfMove(move),
    purchase: {
      ...emptyPurchase(goods.kind, move.lotId),
      fruitId: goods.kind === 'fruit' ? goods.fruitId : undefined,
      strengthPctVol: goods.kind === 'spirit' ? goods.strengthPctVol : undefined,
      sweetenerId: goods.kind === 'sweetener' ? goods.sweetenerId : 'sugar',
      name: goods.name ?? '',
      amount: goods.kind === 'spirit' ? move.volumeMl : move.massG,
      priceMinor: move.priceMinor,
    },
  }
}
