/** Extracts poured together into one vessel. */
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
  safeShare,
  type LogContext,
  type StandingJar,
} from './log-context.ts'

export interface MarryingDraft extends DraftHead {
  readonly kind: 'marry'
  readonly jarIds: readonly string[]
  /** By jar; a jar that is not in it gives all its free liquid. */
  readonly volumeMlByJar: Readonly<Record<string, number | undefined>>
  readonly toJarId: string | undefined
}

export function startMarrying(context: LogContext): MarryingDraft {
  const withLiquid = ownJars(context).filter(hasLiquid)
  const extracts = withLiquid.filter((standing) => !hasFruit(standing))
  const parts = extracts.length > 0 ? extracts : withLiquid
  const jarIds = jarIdsOf(parts)
  const wholeMl = parts.reduce((sum, standing) => sum + freeMl(standing), 0)
  // Into a fresh vessel where one fits, else into the part that has room for the others: room to
  // spare if it can be, and up to the brim if not, which the cautions then say.
  const takes = (standing: StandingJar, share: number) =>
    share * standing.jar.capacityMl >= (standing.contents?.fillMl ?? 0) + wholeMl - freeMl(standing)
  const toJarId = (
    fittingJar(context, wholeMl, jarIds) ??
    parts.find((part) => takes(part, safeShare)) ??
    parts.find((part) => takes(part, 1))
  )?.jar.id
  return { kind: 'marry', at: context.now(), note: '', jarIds, volumeMlByJar: {}, toJarId }
}

export function marryingMoves(draft: MarryingDraft, batchId: string): Outcome<Move> {
  const { at, note, jarIds, toJarId, volumeMlByJar } = draft
  if (at === undefined || jarIds.length === 0 || toJarId === undefined)
    return missing({ at, jarIds, toJarId })
  // What stands in the receiving vessel is part of the mixture anyway.
  if (jarIds.every((jarId) => jarId === toJarId))
    return incomplete({ field: 'jarIds', code: 'chooseTwo' })
  const parts = jarIds.map((jarId) => ({ jarId, ...given({ volumeMl: volumeMlByJar[jarId] }) }))
  return complete([{ ...headOf(at, note), kind: 'marry', batchId, parts, toJarId }])
}

export const marryingOfMove = (move: MoveOf<'marry'>): MarryingDraft => ({
  kind: 'marry',
  ...headOfMove(move),
  jarIds: move.parts.map(({ jarId }) => jarId),
  volumeMlByJar: Object.fromEntries(move.parts.map(({ jarId, volumeMl }) => [jarId, volumeMl])),
  toJarId: move.toJarId,
})
