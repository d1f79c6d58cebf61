/** What goes from the pantry or the tap into jars: fruit, sugar, acid, spirit, water; the same in each. */
import type { Goods } from '../../../../shared/schemas/goods.ts'
import type { Cut, Move, MoveOf } from '../../../../shared/schemas/moves.ts'
import {
  complete,
  given,
  headOf,
  headOfMove,
  missing,
  type DraftHead,
  type Outcome,
} from './draft-basics.ts'
import {
  freeMl,
  hasFruit,
  hasLiquid,
  jarIdsOf,
  leftIn,
  lotsOf,
  ownJars,
  type LogContext,
  type StandingJar,
} from './log-context.ts'
import { buyMove, emptyPurchase, type Purchase } from './purchase.ts'

export type AddingKind = 'charge' | 'sugar' | 'addAcid' | 'coverWithSugar' | 'pourSpirit'

export interface AddingDraft extends DraftHead {
  readonly kind: AddingKind
  readonly jarIds: readonly string[]
  readonly lotId: string | undefined
  /** True takes it from a purchase recorded together with this move. */
  readonly isJustBought: boolean
  readonly purchase: Purchase
  /** Into each jar: millilitres of spirit, grams of everything else. */
  readonly amount: number | undefined
  readonly refuseG: number | undefined
  readonly cut: Cut
  readonly pieceMm: number | undefined
  /** How the fruit treats liquid, as a recorded charge keeps it; another fruit brings its own. */
  readonly tissue: MoveOf<'charge'>['tissue']
  readonly temperatureC: number | undefined
}

export interface WaterDraft extends DraftHead {
  readonly kind: 'pourWater'
  readonly jarIds: readonly string[]
  readonly amount: number | undefined
  readonly temperatureC: number | undefined
}

export const goodsFor = {
  charge: 'fruit',
  sugar: 'sweetener',
  addAcid: 'acid',
  coverWithSugar: 'sweetener',
  pourSpirit: 'spirit',
} as const satisfies Record<AddingKind, Goods['kind']>

export function startAdding(kind: AddingKind, context: LogContext): AddingDraft {
  const [lot] = lotsOf(context, goodsFor[kind])
  return {
    kind,
    at: context.now(),
    note: '',
    jarIds: usualJars(kind, context),
    lotId: lot?.id,
    isJustBought: lot === undefined,
    purchase: emptyPurchase(goodsFor[kind], context.newId()),
    amount: undefined,
    refuseG: undefined,
    cut: 'whole',
    pieceMm: undefined,
    tissue: undefined,
    temperatureC: undefined,
  }
}

export const startWater = (context: LogContext): WaterDraft => ({
  kind: 'pourWater',
  at: context.now(),
  note: '',
  jarIds: usualJars('pourWater', context),
  amount: undefined,
  temperatureC: undefined,
})

/** Where it usually goes: on the fruit; where there is none, into all the batch's jars. */
function usualJars(kind: AddingKind | 'pourWater', context: LogContext): string[] {
  const own = ownJars(context)
  if (kind === 'addAcid') return jarIdsOf(own.filter((standing) => freeMl(standing) > 0))
  const onFruit = own.filter(hasFruit)
  const drained = onFruit.filter(isDrained)
  if (kind === 'coverWithSugar' && drained.length > 0) return jarIdsOf(drained)
  return jarIdsOf(onFruit.length > 0 ? onFruit : own)
}

/** Its liquid is drawn off, and no sugar has drawn more out of its fruit yet. */
const isDrained = (standing: StandingJar): boolean =>
  !hasLiquid(standing) && standing.contents?.sugarDraws === 0

/** All that is left of the chosen lot, shared evenly between the chosen jars. */
export function evenShare(draft: AddingDraft, { pantry }: LogContext): number | undefined {
  const lot = draft.isJustBought ? undefined : pantry.find(({ id }) => id === draft.lotId)
  const whole = draft.isJustBought ? draft.purchase.amount : lot && leftIn(lot)
  return whole === undefined || draft.jarIds.length === 0 ? undefined : whole / draft.jarIds.length
}

export function addingMoves(draft: AddingDraft, batchId: string): Outcome<Move> {
  const { at, jarIds, amount, isJustBought, purchase } = draft
  const lotId = isJustBought ? purchase.lotId : draft.lotId
  if (at === undefined || amount === undefined || lotId === undefined || jarIds.length === 0)
    return missing({ at, jarIds, lotId, amount })
  const moves = jarIds.map((jarId) => addingMove(draft, { at, batchId, jarId, lotId, amount }))
  if (!isJustBought) return complete(moves)
  const bought = buyMove(purchase, { at }, amount * jarIds.length)
  return bought.ok ? complete([...bought.moves, ...moves]) : bought
}

interface Placing {
  readonly at: string
  readonly batchId: string
  readonly jarId: string
  readonly lotId: string
  readonly amount: number
}

function addingMove(draft: AddingDraft, placing: Placing): MoveOf<AddingKind> {
  const { batchId, jarId, lotId, amount } = placing
  const shared = { ...headOf(placing.at, draft.note), batchId, jarId, lotId }
  const { refuseG, temperatureC, pieceMm, tissue } = draft
  switch (draft.kind) {
    case 'charge':
      return {
        ...shared,
        kind: 'charge',
        massG: amount,
        cut: draft.cut,
        ...given({ refuseG, pieceMm }),
        ...(tissue && { tissue }),
      }
    case 'pourSpirit':
      return { ...shared, kind: 'pourSpirit', volumeMl: amount, ...given({ temperatureC }) }
    case 'sugar':
    case 'addAcid':
    case 'coverWithSugar':
      return { ...shared, kind: draft.kind, massG: amount }
  }
}

export function waterMoves(draft: WaterDraft, batchId: string): Outcome<Move> {
  const { at, jarIds, amount, temperatureC } = draft
  if (at === undefined || amount === undefined || jarIds.length === 0)
    return missing({ at, jarIds, amount })
  return complete(
    jarIds.map((jarId) => ({
      ...headOf(at, draft.note),
      kind: 'pourWater',
      batchId,
      jarId,
      volumeMl: amount,
      ...given({ temperatureC }),
    })),
  )
}

export const addingOfMove = (move: MoveOf<AddingKind>): AddingDraft => ({
  kind: move.kind,
  ...headOfMove(move),
  jarIds: [move.jarId],
  lotId: move.lotId,
  isJustBought: false,
  purchase: emptyPurchase(goodsFor[move.kind], move.lotId),
  amount: move.kind === 'pourSpirit' ? move.volumeMl : move.massG,
  refuseG: move.kind === 'charge' ? move.refuseG : undefined,
  cut: move.kind === 'charge' ? move.cut : 'whole',
  pieceMm: move.kind === 'charge' ? move.pieceMm : undefined,
  tissue: move.kind === 'charge' ? move.tissue : undefined,
  temperatureC: move.kind === 'pourSpirit' ? move.temperatureC : undefined,
})

export const waterOfMove = (move: MoveOf<'pourWater'>): WaterDraft => ({
  kind: 'pourWater',
  ...headOfMove(move),
  jarIds: [move.jarId],
  amount: move.volumeMl,
  temperatureC: move.temperatureC,
})
