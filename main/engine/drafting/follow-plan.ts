/**
 * How does a batch stand against the plan it was started with, and what is to be expected?
 *
 * The plan is folded as it was made; the rest of it is folded on from where the batch really
 * stands, so that amounts logged take the planned ones' place. Stages are paired by kind and order.
 * In: the plan, the batch's steps, the whole cellar. Out: moves met and to come, stages planned,
 * real and expected, and jars that another batch stands in now.
 * Leaves out: what other batches will do to the same jars.
 */
import type {
  ChainStage,
  FollowedMove,
  FollowedStage,
  Plan,
  TakenJar,
} from '../../../shared/schemas/drafts.ts'
import type { Liquid } from '../../../shared/schemas/cellar.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import { jarAt, type CellarState } from '../ledger/cellar-state.ts'
import { fold, type Step } from '../ledger/fold.ts'
import { chainStages } from './chain-stages.ts'
import { asThingsStand, jarsNamed, matchedPlan, movesToCome } from './match-plan.ts'
import type { DraftFacts } from './buying.ts'
import { fullBottles } from './planned-moves.ts'
import { asRecorded } from './run-draft.ts'

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
  readonly taken: readonly TakenJar[]
  readonly planned: Liquid | undefined
  readonly expected: Liquid | undefined
}

export function followPlan({ plan, steps, cellar, nowMs }: Following, facts: DraftFacts): Followed {
  const { batchId } = plan
  const moves = matchedPlan(
    plan,
    steps.map(({ recorded }) => recorded),
  )
  const ahead = aheadOf(plan, movesToCome(moves)).map((move) => asThingsStand(move, moves))
  const future = [...lotsFor(plan.moves, ahead), ...ahead].map((move) => notBefore(move, nowMs))
  const tail = foldAhead(future, cellar, facts)

  const planned = plannedStages(plan, facts)
  const real = chainStages(steps, batchId, nowMs)
  const expectedEnd = Math.max(nowMs, lastMs(future))
  const expected = chainStages([...steps, ...tail], batchId, expectedEnd)
  return {
    moves,
    next: ahead.find(({ kind }) => kind !== 'keep'),
    stages: pairedStages({ planned, real, expected }),
    taken: takenJars(ahead, cellar, batchId),
    planned: planned.at(-1)?.liquid,
    expected: expected.at(-1)?.liquid,
  }
}

/** Each told once, with the first of the moves that need it. */
function takenJars(ahead: readonly Move[], { jars }: CellarState, own: string): TakenJar[] {
  const taken = new Map<string, TakenJar>()
  for (const move of ahead)
    for (const jarId of jarsNamed(move)) {
      const batchId = jars.get(jarId)?.batchId
      if (batchId !== undefined && batchId !== own && !taken.has(jarId))
        taken.set(jarId, { jarId, batchId, neededAt: move.at })
    }
  return [...taken.values()]
}

/** What is to come, with how the jars are to be kept meanwhile, in the plan's own order. */
function aheadOf(plan: Plan, toCome: readonly Move[]): Move[] {
  const [first] = toCome
  if (!first) return []
  return plan.moves.filter(
    (move) => toCome.includes(move) || (move.kind === 'keep' && move.at >= first.at),
  )
}

/** As many bottles as there will be liqueur for, which need not be as many as were planned. */
function foldAhead(future: readonly Move[], cellar: CellarState, facts: DraftFacts): Step[] {
  const before = future.filter(({ kind }) => kind !== 'bottle')
  const tail = fold(asRecorded(before, firstFutureSeq), { ...facts, from: cellar })
  const bottlings = future.flatMap((move) => {
    if (move.kind !== 'bottle') return []
    const jar = jarAt(tail.cellar, move.fromJarId, Date.parse(move.at))
    const count = jar ? fullBottles(jar, move.bottleSizeMl) : 0
    return count > 0 ? [{ ...move, count }] : []
  })
  const last = asRecorded(bottlings, firstFutureSeq + before.length)
  return [...tail.steps, ...fold(last, { ...facts, from: tail.cellar }).steps]
}

/** A plan, or a recipe made to one, beside what really happened. */
export const compareStages = (
  { plan, steps, nowMs }: Omit<Following, 'cellar'>,
  facts: DraftFacts,
): FollowedStage[] =>
  pairedStages({
    planned: plannedStages(plan, facts),
    real: chainStages(steps, plan.batchId, nowMs),
    expected: [],
  })

const plannedStages = ({ moves, batchId }: Plan, facts: DraftFacts): ChainStage[] =>
  chainStages(fold(asRecorded(moves), facts).steps, batchId, lastMs(moves))

/** After everything that any ledger has recorded. */
const firstFutureSeq = 2 ** 50

type Told = 'planned' | 'real' | 'expected'

function pairedStages(told: Record<Told, ChainStage[]>): FollowedStage[] {
  const pairs = new Map<string, FollowedStage>()
  for (const as of ['planned', 'real', 'expected'] as const)
    for (const stage of told[as]) {
      const name = `${stage.key} ${stage.ordinal}`
      const { key, ordinal } = stage
      pairs.set(name, { ...(pairs.get(name) ?? { key, ordinal }), [as]: stage })
    }
  return [...pairs.values()].sort((a, b) => orderOf(a) - orderOf(b))
}

const order = ['layered', 'steeping', 'sugarDraw', 'pressed', 'married', 'filtered', 'bottled']

const orderOf = ({ key, ordinal }: FollowedStage): number => order.indexOf(key) * 100 + ordinal

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
