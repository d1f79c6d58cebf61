/** Straining, filtering, racking: one jar through a medium, with the loss that it keeps back. */
import type { FilterMedium, Move, MoveOf } from '../../../../shared/schemas/moves.ts'
import {
  complete,
  given,
  headOf,
  headOfMove,
  missing,
  type DraftHead,
  type Outcome,
} from './draft-basics.ts'
import { fittingJar, freeMl, hasFruit, hasLiquid, ownJars, type LogContext } from './log-context.ts'

export interface FilteringDraft extends DraftHead {
  readonly kind: 'filter'
  readonly fromJarId: string | undefined
  readonly toJarId: string | undefined
  readonly medium: FilterMedium
  /** Left out: the usual loss of the medium. */
  readonly lossMl: number | undefined
}

export function startFiltering(context: LogContext): FilteringDraft {
  const withLiquid = ownJars(context).filter(hasLiquid)
  const from = withLiquid.find((standing) => !hasFruit(standing)) ?? withLiquid[0]
  const fromJarId = from?.jar.id
  // Through the paper and back into the same jar, where no other is free.
  const to = from && (fittingJar(context, freeMl(from), [from.jar.id]) ?? from)
  return {
    kind: 'filter',
    at: context.now(),
    note: '',
    fromJarId,
    toJarId: to?.jar.id,
    medium: 'paper',
    lossMl: undefined,
  }
}

export function filteringMoves(draft: FilteringDraft, batchId: string): Outcome<Move> {
  const { at, note, fromJarId, toJarId, medium, lossMl } = draft
  if (at === undefined || fromJarId === undefined || toJarId === undefined)
    return missing({ at, fromJarId, toJarId })
  return complete([
    {
      ...headOf(at, note),
      kind: 'filter',
      batchId,
      fromJarId,
      toJarId,
      medium,
      ...given({ lossMl }),
    },
  ])
}

export const filteringOfMove = (move: MoveOf<'filter'>): FilteringDraft => ({
  kind: 'filter',
  ...headOfMove(move),
  fromJarId: move.fromJarId,
  toJarId: move.toJarId,
  medium: move.medium,
  lossMl: move.lossMl,
})
