/** Liquid off the fruit: drawing off and pressing, from several jars into one. */
import type { Move, MoveOf } from '../../../../shared/schemas/moves.ts'
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
import {
  fittingJar,
  freeMl,
  hasFruit,
  hasLiquid,
  jarIdsOf,
  ownJars,
  type LogContext,
  type StandingJar,
} from './log-context.ts'

export interface PouringOffDraft extends DraftHead {
  readonly kind: 'drawOff' | 'press'
  readonly fromJarIds: readonly string[]
  readonly toJarId: string | undefined
  /** From each jar; left out: all that pours, or all that pressing gives. */
  readonly volumeMl: number | undefined
}

export function startPouringOff(
  kind: PouringOffDraft['kind'],
  context: LogContext,
): PouringOffDraft {
  const from = usualSources(kind, context)
  const fromJarIds = jarIdsOf(from)
  const volumeMl = from.reduce(
    (sum, standing) => sum + freeMl(standing) + squeezed(kind, standing),
    0,
  )
  const toJarId = fittingJar(context, volumeMl, fromJarIds)?.jar.id
  return { kind, at: context.now(), note: '', fromJarIds, toJarId, volumeMl: undefined }
}

/** Pressing may give all that the fruit holds: the vessel should be big enough for that. */
const squeezed = (kind: PouringOffDraft['kind'], { contents }: StandingJar) =>
  kind === 'press' ? (contents?.heldMl ?? 0) : 0

function usualSources(kind: PouringOffDraft['kind'], context: LogContext): StandingJar[] {
  const own = ownJars(context)
  const onFruit = own.filter(hasFruit)
  if (kind === 'press') return onFruit
  const pouring = onFruit.filter(hasLiquid)
  return pouring.length > 0 ? pouring : own.filter(hasLiquid).slice(0, 1)
}

export function pouringOffMoves(draft: PouringOffDraft, batchId: string): Outcome<Move> {
  const { kind, at, note, fromJarIds, toJarId, volumeMl } = draft
  if (at === undefined || fromJarIds.length === 0 || toJarId === undefined)
    return missing({ at, fromJarIds, toJarId })
  if (fromJarIds.includes(toJarId)) return incomplete({ field: 'toJarId', code: 'sameJar' })
  return complete(
    fromJarIds.map((fromJarId) => ({
      ...headOf(at, note),
      kind,
      batchId,
      fromJarId,
      toJarId,
      ...given({ volumeMl }),
    })),
  )
}

export const pouringOffOfMove = (move: MoveOf<'drawOff' | 'press'>): PouringOffDraft => ({
  kind: move.kind,
  ...headOfMove(move),
  fromJarIds: [move.fromJarId],
  toJarId: move.toJarId,
  volumeMl: move.volumeMl,
})
