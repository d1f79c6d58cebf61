/**
 * Reads the state of the whole cellar off the ledger: every move in the order of its instant,
 * then of its recording. The same moves give the same state to the bit.
 *
 * In: recorded moves in any order, and the fruit library. Out: the cellar after the last of them,
 * one step per move with the matter it moved, and the moves that could not be (none in a book
 * that the service wrote). Between moves the steeping model passes matter inside each jar.
 * Leaves out: anything that is not matter, such as names, prices, and the jars' sizes.
 * @example fold([], { fruitOf }).cellar.jars.size // 0
 */
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { Move, RecordedMove } from '../../../shared/schemas/moves.ts'
import type { Refusal } from '../../../shared/schemas/errors.ts'
import { applyMove } from './apply-move.ts'
import {
  commit,
  branchCellar,
  dated,
  emptyCellar,
  type CellarState,
  type Effect,
  type WorkingCellar,
} from './cellar-state.ts'
import type { Tuning } from './moves/context.ts'
import { advance, batchesTouched } from './progress.ts'

export interface FoldOptions {
  readonly fruitOf: (fruitId: string) => Fruit
  /** For a replay of one batch only: how its fruit differs from the library's. */
  readonly tuning?: Tuning
  /** Where to go on from; an empty cellar when left out. It is not changed. */
  readonly from?: CellarState
}

/** One move that happened: what it moved, and which batches it concerns. */
export interface Step {
  readonly recorded: RecordedMove
  readonly atMs: number
  readonly effect: Effect
  readonly batchIds: ReadonlySet<string>
}

export interface Folded {
  readonly cellar: CellarState
  readonly steps: readonly Step[]
  readonly refused: readonly { readonly recorded: RecordedMove; readonly refusal: Refusal }[]
}

export function fold(moves: readonly RecordedMove[], options: FoldOptions): Folded {
  const cellar = options.from ? branchCellar(options.from) : emptyCellar()
  const steps: Step[] = []
  const refused: { recorded: RecordedMove; refusal: Refusal }[] = []
  for (const next of inOrder(moves)) {
    const outcome = take(cellar, next, options)
    if (outcome.ok) steps.push(outcome.step)
    else refused.push({ recorded: next.recorded, refusal: outcome.refusal })
  }
  return { cellar, steps, refused }
}

type Dated = Pick<Step, 'recorded' | 'atMs'>

function take(cellar: WorkingCellar, { recorded, atMs }: Dated, { fruitOf, tuning }: FoldOptions) {
  const { move } = recorded
  const outcome = applyMove(cellar, move, { atMs, fruitOf, tuning })
  if (!outcome.ok) return outcome
  const effect = dated(cellar, outcome.effect)
  const own = batchIdOf(move)
  const batchIds = batchesTouched(cellar, own, effect)
  commit(cellar, effect)
  advance(cellar, batchIds, own, effect, atMs)
  return { ok: true, step: { recorded, atMs, effect, batchIds } } as const
}

export const batchIdOf = (move: Move): string | undefined =>
  'batchId' in move ? move.batchId : undefined

/** As the ledger is told: by instant, then by recording. */
export const inLedgerOrder = (moves: readonly RecordedMove[]): RecordedMove[] =>
  inOrder(moves).map(({ recorded }) => recorded)

const inOrder = (moves: readonly RecordedMove[]): Dated[] =>
  moves
    .map((recorded) => ({ recorded, atMs: Date.parse(recorded.move.at) }))
    .sort((a, b) => a.atMs - b.atMs || a.recorded.seq - b.recorded.seq)
