/**
 * How does a batch stand against the plan it was started with, and what comes next?
 *
 * Each planned move is met by the first real move of its kind that no other planned move has taken.
 * What was planned before the last one met, and never came, was passed over. The rest of the plan
 * is folded on from where the batch really stands, with the jars really used and the days it is
 * late, which tells what is to be expected; amounts logged so take the planned ones' place.
 */
import type { FollowedMove, FollowedStage, Plan } from '../../../shared/schemas/drafts.ts'
import type { Liquid } from '../../../shared/schemas/cellar.ts'
import type { Move, RecordedMove } from '../../../shared/schemas/moves.ts'
import type { CellarState } from '../ledger/cellar-state.ts'
import { fold, type Step } from '../ledger/fold.ts'
import { chainStages } from './chain-stages.ts'
import type { DraftFacts } from './planned-moves.ts'
import { asRecorded } from './run-draft.ts'

/** What is done with the hands, and logged; the rest of a plan only prepares it. */
const isFollowed = ({ kind }: Move): boolean => kind !== 'buy' && kind !== 'keep'

export function matchedPlan(plan: Plan, real: readonly RecordedMove[]): FollowedMove[] {
  const left = real.filter(({ move }) => isFollowed(move))
  return plan.moves.filter(isFollowed).map((planned) => {
    const index = left.findIndex(({ move }) => isSameDeed(planned, move))
    if (index < 0) return { planned }
    const [found] = left.splice(index, 1)
    return { planned, ...(found && { real: found }) }
  })
}

/** Sugar from the pantry is sugar, whichever way it was logged; a press is also a way to draw off. */
const isSameDeed = (planned: Move, real: Move): boolean => planned.kind === real.kind

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

function asThingsStand(move: Move, moves: readonly FollowedMove[]): Move {
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

function withJars(move: Move, jarOf: (jarId: string) => string): Move {
  switch (move.kind) {
    case 'charge':
    case 'sugar':
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

export interface Following {
  readonly plan: Plan
  /** The batch's own steps, and the whole cellar after the last of the ledger. */
  readonly steps: readonly Step[]
  readonly cellar: CellarState
  readonly nowMs: number
}

export interface Followed {
  readonly moves: readonly FollowedMove[]
  readonly next: Move | undefined
  readonly stages: readonly FollowedStage[]
  readonly planned: Liquid | undefined
  readonly expected: Liquid | undefined
}

export function followPlan({ plan, steps, cellar, nowMs }: Following, facts: DraftFacts): Followed {
  const { batchId } = plan
  const moves = matchedPlan(
    plan,
    steps.map(({ recorded }) => recorded),
  )
  const ahead = movesToCome(moves).map((move) => asThingsStand(move, moves))
  const planned = fold(asRecorded(plan.moves), facts).steps
  const plannedStages = chainStages(planned, batchId, lastMs(plan.moves))
  const realStages = chainStages(steps, batchId, nowMs)

  const future = [...lotsFor(plan.moves, ahead), ...ahead].map((move) => notBefore(move, nowMs))
  const tail = fold(asRecorded(future, Number.MAX_SAFE_INTEGER - future.length), {
    ...facts,
    from: cellar,
  })
  const expectedSteps = [...steps, ...tail.steps]
  const expectedStages = chainStages(expectedSteps, batchId, Math.max(nowMs, lastMs(future)))

  const byName = (stages: typeof realStages) =>
    new Map(stages.map((stage) => [`${stage.key} ${stage.ordinal}`, stage]))
  const [real, expected, before] = [realStages, expectedStages, plannedStages].map(byName)
  const names = new Set([...plannedStages, ...expectedStages].map((s) => `${s.key} ${s.ordinal}`))
  return {
    moves,
    next: ahead[0],
    stages: [...names].map((name): FollowedStage => {
      const stages = {
        planned: before?.get(name),
        real: real?.get(name),
        expected: expected?.get(name),
      }
      const any = stages.planned ?? stages.expected
      if (!any) throw new Error(`no stage ${name}`)
      const { planned: p, real: r, expected: e } = stages
      return {
        key: any.key,
        ordinal: any.ordinal,
        ...(p && { planned: p }),
        ...(r && { real: r }),
        ...(e && { expected: e }),
      }
    }),
    planned: plannedStages.at(-1)?.liquid,
    expected: expectedStages.at(-1)?.liquid,
  }
}

const lastMs = (moves: readonly Move[]): number =>
  Math.max(0, ...moves.map(({ at }) => Date.parse(at)))

/** What the rest of the plan takes from the pantry, as if bought for it now. */
function lotsFor(planned: readonly Move[], ahead: readonly Move[]): Move[] {
  const named = new Set(ahead.flatMap((move) => ('lotId' in move ? move.lotId : [])))
  return planned.filter((move) => move.kind === 'buy' && named.has(move.lotId))
}

/** What should have been done already is expected to be done now. */
const notBefore = (move: Move, nowMs: number): Move =>
  Date.parse(move.at) >= nowMs ? move : { ...move, at: new Date(nowMs).toISOString() }
