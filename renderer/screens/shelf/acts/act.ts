/** What can be done with bottles: which act, on which lot or opened bottle. */
import type { BottleLot } from '../../../../shared/schemas/cellar.ts'
import type { OpenedBottle } from '../../../../shared/schemas/shelf.ts'

/** Likeliest first. */
export const lotActs = [
  'drawBottle',
  'openBottle',
  'taste',
  'give',
  'shelve',
  'breakBottle',
  'discard',
] as const
export type LotActKind = (typeof lotActs)[number]

export const openedActs = ['pourGlass', 'topUp', 'correctOpened', 'discardOpened'] as const
export type OpenedActKind = (typeof openedActs)[number]

export type ActKind = LotActKind | OpenedActKind

export type ActLot = Pick<
  BottleLot,
  'id' | 'batchId' | 'name' | 'bottleSizeMl' | 'count' | 'places'
>

export type Act =
  | { readonly kind: LotActKind; readonly lot: ActLot }
  | {
      readonly kind: OpenedActKind
      readonly opened: OpenedBottle
      /** The others that stand open now, to top up from. */
      readonly others: readonly OpenedBottle[]
    }

export const nameOfAct = (act: Act): string => ('lot' in act ? act.lot.name : act.opened.name)

/** A lot that is all gone can still be remembered, but nothing can be taken from it. */
export const isPossible = (kind: LotActKind, { count }: Pick<ActLot, 'count'>): boolean =>
  count > 0 || kind === 'taste'
