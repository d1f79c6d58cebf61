/** What is done to jars without pouring: stirring, crushing, a remark. */
import type { Move, MoveOf } from '../../../../shared/schemas/moves.ts'
import {
  complete,
  headOf,
  headOfMove,
  missing,
  type DraftHead,
  type Outcome,
} from './draft-basics.ts'
import { hasFruit, jarIdsOf, ownJars, type LogContext } from './log-context.ts'

export interface TendingDraft extends DraftHead {
  readonly kind: 'stir' | 'crush'
  readonly jarIds: readonly string[]
}

export interface RemarkDraft extends DraftHead {
  readonly kind: 'remark'
}

export function startTending(kind: TendingDraft['kind'], context: LogContext): TendingDraft {
  const own = ownJars(context)
  const jarIds = jarIdsOf(kind === 'crush' ? own.filter(hasFruit) : own)
  return { kind, at: context.now(), note: '', jarIds }
}

export function tendingMoves(
  { kind, at, note, jarIds }: TendingDraft,
  batchId: string,
): Outcome<Move> {
  if (at === undefined || jarIds.length === 0) return missing({ at, jarIds })
  return complete(jarIds.map((jarId) => ({ ...headOf(at, note), kind, batchId, jarId })))
}

export const tendingOfMove = (move: MoveOf<'stir' | 'crush'>): TendingDraft => ({
  kind: move.kind,
  ...headOfMove(move),
  jarIds: [move.jarId],
})

export const startRemark = ({ now }: LogContext): RemarkDraft => ({
  kind: 'remark',
  at: now(),
  note: '',
})

/** A remark without words would say nothing. */
export function remarkMoves({ at, note }: RemarkDraft, batchId: string): Outcome<Move> {
  if (at === undefined || note.trim() === '')
    return missing({ at, note: note.trim() === '' ? undefined : note })
  return complete([{ ...headOf(at, note), kind: 'remark', batchId }])
}

export const remarkOfMove = (move: MoveOf<'remark'>): RemarkDraft => ({
  kind: 'remark',
  ...headOfMove(move),
})
