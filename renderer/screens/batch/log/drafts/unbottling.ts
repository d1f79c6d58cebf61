/** Bottles opened back into a jar. */
import type { Move, MoveOf } from '../../../../../shared/schemas/moves.ts'
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
    toJarId: fittingJar(context, volumeMl)?.jar.id,
  }
}

export function unbottlingMoves(draft: UnbottlingDraft, batchId: string): Outcome<Move> {
  const { at, note, bottleLotId, count, toJarId } = draft
  if (at === undefined || bottleLotId === undefined || count === undefined || !toJarId)
    return missing({ at, bottleLotId, count, toJarId })
  return complete([{ ...headOf(at, note), kind: 'unbottle', batchId, bottleLotId, count, toJarId }])
}

export const unbottlingOfMove = (move: MoveOf<'unbottle'>): UnbottlingDraft => ({
  kind: 'unbottle',
  ...headOfMove(move),
  bottleLotId: move.bottleLotId,
  count: move.count,
  toJarId: move.toJarId,
})
