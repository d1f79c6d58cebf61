/**
 * Which planned moves has a batch already met, and which are to come?
 *
 * Each planned move is met by the first real move of its kind that no other planned move has taken.
 * What was planned before the last one met, and never came, was passed over. Those to come are told
 * with the jars really used so far, and as many days later (or earlier) as the last one was.
 */
import type { FollowedMove, Plan } from '../../../shared/schemas/drafts.ts'
import type { Move, RecordedMove } from '../../../shared/schemas/moves.ts'

/** What is done with the hands, and logged; the rest of a plan only prepares it. */
const isFollowed = ({ kind }: Move): boolean => kind !== 'buy' && kind !== 'keep'

export function matchedPlan(plan: Plan, real: readonly RecordedMove[]): FollowedMove[] {
  const left = real.filter(({ move }) => isFollowed(move))
  return plan.moves.filter(isFollowed).map((planned) => {
    const index = left.findIndex(({ move }) => move.kind === planned.kind)
    if (index < 0) return { planned }
    const [found] = left.splice(index, 1)
    return { planned, ...(found && { real: found }) }
  })
}

/** Planned moves still to come: those after the last one that was met. */
export function movesToCome(moves: readonly FollowedMove[]): Move[] {
  const lastMet = moves.findLastIndex(({ real }) => real !== undefined)
  const lastAt = moves[lastMet]?.planned.at
  return moves
    .filter(
      ({ planned, real }, index) =>
        real === undefined && (index > lastMet || (lastAt !== undefined && planned.at >= lastAt)),
    )
    .map(({ planned }) => planned)
}

/** The next planned move, its jars and its day as things really stand; undefined when all is done. */
export function nextPlanned(plan: Plan, real: readonly RecordedMove[]): Move | undefined {
  const moves = matchedPlan(plan, real)
  const [next] = movesToCome(moves)
  return next && asThingsStand(next, moves)
}

export function asThingsStand(move: Move, moves: readonly FollowedMove[]): Move {
  const jarOf = jarsUsed(moves)
  const at = new Date(Date.parse(move.at) + latenessMs(moves)).toISOString()
  return withJars({ ...move, at }, (jarId) => jarOf.get(jarId) ?? jarId)
}

/** By how much the last move met came later than planned; early counts too. */
function latenessMs(moves: readonly FollowedMove[]): number {
  const last = moves.findLast(({ real }) => real !== undefined)
  return last?.real ? Date.parse(last.real.move.at) - Date.parse(last.planned.at) : 0
}

/** The jar really used for each jar of the plan. */
function jarsUsed(moves: readonly FollowedMove[]): Map<string, string> {
  const used = new Map<string, string>()
  for (const { planned, real } of moves) {
    if (!real) continue
    const [from, to] = [jarsOfMove(planned), jarsOfMove(real.move)]
    for (const role of ['jarId', 'fromJarId', 'toJarId'] as const) {
      const [before, after] = [from[role], to[role]]
      if (before && after) used.set(before, after)
    }
  }
  return used
}

interface JarsOfMove {
  jarId?: string | undefined
  fromJarId?: string | undefined
  toJarId?: string | undefined
}

function jarsOfMove(move: Move): JarsOfMove {
  if (move.kind === 'discard') return 'jarId' in move.from ? { jarId: move.from.jarId } : {}
  return {
    ...('jarId' in move && { jarId: move.jarId }),
    ...('fromJarId' in move && { fromJarId: move.fromJarId }),
    ...('toJarId' in move && { toJarId: move.toJarId }),
  }
}

/** Every jar that a move has to do with. */
export function jarsNamed(move: Move): string[] {
  const { jarId, fromJarId, toJarId } = jarsOfMove(move)
  const parts = move.kind === 'marry' ? move.parts.map((part) => part.jarId) : []
  return [...parts, jarId, fromJarId, toJarId].filter((id) => id !== undefined)
}

function withJars(move: Move, jarOf: (jarId: string) => string): Move {
  switch (move.kind) {
    case 'charge':
    case 'sugar':
    case 'addAcid':
    case 'pourSpirit':
    case 'pourWater':
    case 'keep':
    case 'stir':
    case 'read':
    case 'crush':
    case 'coverWithSugar':
      return { ...move, jarId: jarOf(move.jarId) }
    case 'drawOff':
    case 'press':
    case 'filter':
      return { ...move, fromJarId: jarOf(move.fromJarId), toJarId: jarOf(move.toJarId) }
    case 'marry': {
      const parts = move.parts.map((part) => ({ ...part, jarId: jarOf(part.jarId) }))
      return { ...move, parts, toJarId: jarOf(move.toJarId) }
    }
    case 'bottle':
      return { ...move, fromJarId: jarOf(move.fromJarId) }
    case 'discard':
      return 'jarId' in move.from
        ? { ...move, from: { ...move.from, jarId: jarOf(move.from.jarId) } }
        : move
    default:
      return move
  }
}
