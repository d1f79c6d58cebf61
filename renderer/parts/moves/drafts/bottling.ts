/** Into bottles, and bottles out of the cellar. */
import type { Move, MoveOf } from '../../../../shared/schemas/moves.ts'
import {
  complete,
  headOf,
  headOfMove,
  missing,
  type DraftHead,
  type Outcome,
} from './draft-basics.ts'
import { freeMl, hasFruit, hasLiquid, ownJars, type LogContext } from './log-context.ts'

export interface BottlingDraft extends DraftHead {
  readonly kind: 'bottle'
  readonly fromJarId: string | undefined
  readonly bottleLotId: string
  readonly bottleSizeMl: number | undefined
  readonly count: number | undefined
  readonly name: string
  /** Where they are laid down; undefined is no place yet. */
  readonly shelfId: string | undefined
}

export interface BottlesOutDraft extends DraftHead {
  readonly kind: 'drawBottle' | 'give'
  readonly bottleLotId: string | undefined
  readonly count: number | undefined
  /** Where they stood, as it was recorded; undefined is wherever. */
  readonly shelfId: string | undefined
}

const usualBottleMl = 500

export function startBottling(context: LogContext): BottlingDraft {
  const withLiquid = ownJars(context).filter(hasLiquid)
  const from = withLiquid.find((standing) => !hasFruit(standing)) ?? withLiquid[0]
  return {
    kind: 'bottle',
    at: context.now(),
    note: '',
    fromJarId: from?.jar.id,
    bottleLotId: context.newId(),
    bottleSizeMl: usualBottleMl,
    count: from && fullBottles(freeMl(from), usualBottleMl),
    name: '',
    shelfId: undefined,
  }
}

/** How many bottles a liquid fills; undefined where it does not fill one. */
export function fullBottles(volumeMl: number, bottleSizeMl: number): number | undefined {
  // The ledger allows half a millilitre for what a jug cannot tell.
  const count = Math.floor((volumeMl + 0.5) / bottleSizeMl)
  return count > 0 ? count : undefined
}

export function bottlingMoves(draft: BottlingDraft, batchId: string): Outcome<Move> {
  const { at, note, fromJarId, bottleLotId, bottleSizeMl, count } = draft
  if (at === undefined || !fromJarId || bottleSizeMl === undefined || count === undefined)
    return missing({ at, fromJarId, bottleSizeMl, count })
  const name = draft.name.trim()
  const named = name === '' ? {} : { name }
  const lot = { bottleLotId, bottleSizeMl, count, ...named, ...onShelf(draft) }
  return complete([{ ...headOf(at, note), kind: 'bottle', batchId, fromJarId, ...lot }])
}

export const bottlingOfMove = (move: MoveOf<'bottle'>): BottlingDraft => ({
  kind: 'bottle',
  ...headOfMove(move),
  fromJarId: move.fromJarId,
  bottleLotId: move.bottleLotId,
  bottleSizeMl: move.bottleSizeMl,
  count: move.count,
  name: move.name ?? '',
  shelfId: move.shelfId,
})

const onShelf = ({ shelfId }: { shelfId: string | undefined }) =>
  shelfId === undefined ? {} : { shelfId }

export const startBottlesOut = (
  kind: BottlesOutDraft['kind'],
  { now, bottleLots }: LogContext,
): BottlesOutDraft => ({
  kind,
  at: now(),
  note: '',
  bottleLotId: bottleLots.find(({ count }) => count > 0)?.id,
  count: 1,
  shelfId: undefined,
})

export function bottlesOutMoves(draft: BottlesOutDraft): Outcome<Move> {
  const { kind, at, note, bottleLotId, count } = draft
  if (at === undefined || bottleLotId === undefined || count === undefined)
    return missing({ at, bottleLotId, count })
  return complete([{ ...headOf(at, note), kind, bottleLotId, count, ...onShelf(draft) }])
}

export const bottlesOutOfMove = (move: MoveOf<'drawBottle' | 'give'>): BottlesOutDraft => ({
  kind: move.kind,
  ...headOfMove(move),
  bottleLotId: move.bottleLotId,
  count: move.count,
  shelfId: move.shelfId,
})
