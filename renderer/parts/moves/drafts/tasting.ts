/** A glass tasted, of one of the batch's jars or of its bottles. */
import type { Move, MoveOf } from '../../../../shared/schemas/moves.ts'
import { noTasting, tastingOfMove, tastingPart, type Tasting } from '../../tasting/tasting.ts'
import {
  complete,
  headOf,
  headOfMove,
  missing,
  type DraftHead,
  type Outcome,
} from './draft-basics.ts'
import { hasLiquid, ownJars, type LogContext } from './log-context.ts'

export interface TasteDraft extends DraftHead {
  readonly kind: 'taste'
  readonly jarId: string | undefined
  readonly bottleLotId: string | undefined
  readonly tasting: Tasting
}

/** Bottles are tasted once there are some: they are what the batch has become. */
export function startTaste(context: LogContext): TasteDraft {
  const lot = context.bottleLots.find(({ count }) => count > 0)
  const jar = ownJars(context).find(hasLiquid)
  return {
    kind: 'taste',
    at: context.now(),
    note: '',
    jarId: lot ? undefined : jar?.jar.id,
    bottleLotId: lot?.id,
    tasting: noTasting,
  }
}

export function tasteMoves(draft: TasteDraft, batchId: string): Outcome<Move> {
  const { at, note, jarId, bottleLotId, tasting } = draft
  if (at === undefined) return missing({ at })
  if (jarId === undefined && bottleLotId === undefined) return missing({ jarId })
  const what = jarId === undefined ? { bottleLotId } : { jarId }
  return complete([
    { ...headOf(at, note), kind: 'taste', batchId, ...what, ...tastingPart(tasting) },
  ])
}

export const tasteOfMove = (move: MoveOf<'taste'>): TasteDraft => ({
  kind: 'taste',
  ...headOfMove(move),
  jarId: move.jarId,
  bottleLotId: move.bottleLotId,
  tasting: tastingOfMove(move),
})
