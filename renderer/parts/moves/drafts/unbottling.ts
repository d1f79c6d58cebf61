/** Bottles opened back into a jar. */
import type { Move, MoveOf } from '../../../../shared/schemas/moves.ts'
import {
  complete,
  headOf,
  headOfMove,
  missing,
  type DraftHead,
  type Outcome,
} from './draft-basics.ts'
import { fittingJar, type LogContext } from './log-context.ts'

export interface UnbottlingDraft extends DraftHead {
  readonly kind: 'unbottle'
  readonly bottleLotId: string | undefined
  readonly count: number | undefined
  /** Where they stood, as it was recorded; undefined is wherever. */
  readonly shelfId: string | undefined
  readonly toJarId: string | undefined
}

export function startUnbottling(context: LogContext): UnbottlingDraft {
  const lot = context.bottleLots.find(({ count }) => count > 0)
  const volumeMl = lot ? lot.bottleSizeMl : 0
  return {
    kind: 'unbottle',
    at: context.now(),
    note: '',
    bottleLotId: lot?.id,
    count: 1,
    shelfId: undefined,
    toJarId: fittingJar(context, volumeMl)?.jar.id,
  }
}

export function unbottlingMoves(draft: UnbottlingDraft, batchId: string): Outcome<Move> {
  const { at, note, bottleLotId, count, toJarId, shelfId } = draft
  if (at === undefined || bottleLotId === undefined || count === undefined || !toJarId)
    return missing({ at, bottleLotId, count, toJarId })
  const bottles = { bottleLotId, count, toJarId, ...(shelfId !== undefined && { shelfId }) }
  return complete([{ ...headOf(at, note), kind: 'unbottle', batchId, ...bottles }])
}

export const unbottlingOfMove = (move: MoveOf<'unbottle'>): UnbottlingDraft => ({
  kind: 'unbottle',
  ...headOfMove(move),
  bottleLotId: move.bottleLotId,
  count: move.count,
  shelfId: move.shelfId,
  toJarId: move.toJarId,
})
