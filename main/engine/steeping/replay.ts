/**
 * One batch by itself, told again: the same moves through the same ledger, with its fruit a little
 * faster, juicier or thirstier than the library says. The fit and the bands ask for it many times.
 *
 * In: the batch's steps and the cellar's lots. Out: a fold of those moves alone. Lots are as bought,
 * with plenty of each; liquid that came from another batch stands ready in a jar of its own.
 * Leaves out: what the tuned fruit might have changed in the other batches.
 */
import { scaleMatter } from '../../../shared/matter.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { Move, MoveOf, RecordedMove } from '../../../shared/schemas/moves.ts'
import {
  emptyCellar,
  freshJar,
  jarPlace,
  type CellarState,
  type JarState,
} from '../ledger/cellar-state.ts'
import { fold, type Folded, type Step } from '../ledger/fold.ts'
import type { Tuning } from '../ledger/moves/context.ts'

export interface Replay {
  readonly batchId: string
  readonly moves: readonly RecordedMove[]
  readonly from: CellarState
  readonly fruitOf: (fruitId: string) => Fruit
}

/** Enough of every lot, whatever other batches took: only its composition matters here. */
const plenty = 1000

export function replayOf(
  steps: readonly Step[],
  cellar: CellarState,
  batchId: string,
  fruitOf: (fruitId: string) => Fruit,
): Replay {
  const from = emptyCellar()
  for (const [id, lot] of cellar.lots) {
    const bought = scaleMatter(lot.bought, plenty)
    from.lots.set(id, { ...lot, bought, matter: bought })
  }
  const own = new Set<string>()
  const moves: RecordedMove[] = []
  for (const step of steps) {
    const { recorded } = step
    const move =
      recorded.move.kind === 'marry'
        ? withGuests(recorded.move, step, own, from.jars, recorded.id)
        : recorded.move
    moves.push({ ...recorded, move })
    for (const [jarId, jar] of step.effect.jars ?? []) {
      if (jar?.batchId === batchId) own.add(jarId)
      else own.delete(jarId)
    }
  }
  return { batchId, moves, from, fruitOf }
}

/** The marrying with each part of another batch set aside beforehand, exactly as it was poured. */
function withGuests(
  move: MoveOf<'marry'>,
  { effect, atMs }: Step,
  own: ReadonlySet<string>,
  jars: Map<string, JarState>,
  moveId: string,
): Move {
  const parts = move.parts.map((part, index) => {
    if (own.has(part.jarId) || part.jarId === move.toJarId) return part
    const poured = effect.transfers.find(
      ({ from, to }) => from === jarPlace(part.jarId) && to === jarPlace(move.toJarId),
    )
    if (!poured) return part
    const jarId = `guest-${moveId}-${index}`
    const bodies = { ...freshJar('', atMs, 'drawnOff').bodies, free: poured.matter }
    const guest = freshJar(`of-${jarId}`, atMs, 'drawnOff')
    jars.set(jarId, { ...guest, bodies, clock: { ...guest.clock, bodies } })
    return { jarId }
  })
  return { ...move, parts }
}

export const replay = ({ moves, from, fruitOf }: Replay, tuning?: Tuning): Folded =>
  fold(moves, { fruitOf, from, ...(tuning && { tuning }) })
