/** How jars stand from now on: how warm, and how often they are turned. */
import type { Move, MoveOf, Turned } from '../../../../shared/schemas/moves.ts'
import {
  complete,
  given,
  headOf,
  headOfMove,
  incomplete,
  missing,
  type DraftHead,
  type Outcome,
} from './draft-basics.ts'
import { hasFruit, jarIdsOf, ownJars, type LogContext } from './log-context.ts'

export interface KeepingDraft extends DraftHead {
  readonly kind: 'keep'
  readonly jarIds: readonly string[]
  /** Undefined leaves it as it was before. */
  readonly temperatureC: number | undefined
  readonly turned: Turned | undefined
}

export function startKeeping(context: LogContext): KeepingDraft {
  const own = ownJars(context)
  const onFruit = own.filter(hasFruit)
  return {
    kind: 'keep',
    at: context.now(),
    note: '',
    jarIds: jarIdsOf(onFruit.length > 0 ? onFruit : own),
    temperatureC: undefined,
    turned: undefined,
  }
}

export function keepingMoves(draft: KeepingDraft, batchId: string): Outcome<Move> {
  const { at, note, jarIds, temperatureC, turned } = draft
  if (at === undefined || jarIds.length === 0) return missing({ at, jarIds })
  if (temperatureC === undefined && turned === undefined)
    return incomplete({ field: 'temperatureC', code: 'nothingKept' })
  return complete(
    jarIds.map((jarId) => ({
      ...headOf(at, note),
      kind: 'keep',
      batchId,
      jarId,
      ...given({ temperatureC }),
      ...(turned && { turned }),
    })),
  )
}

export const keepingOfMove = (move: MoveOf<'keep'>): KeepingDraft => ({
  kind: 'keep',
  ...headOfMove(move),
  jarIds: [move.jarId],
  temperatureC: move.temperatureC,
  turned: move.turned,
})
