/**
 * The ledger as the service works with it: the current moves and the state they fold to, kept in
 * step with the book so that reading a screen does not fold decades again.
 */
import { currentMoves } from '../cellar/move-store.ts'
import type { Book } from '../cellar/open-book.ts'
import { fold, fruitOf, type Folded, type Step } from '../engine/index.ts'
import type { RecordedMove } from '../../shared/schemas/moves.ts'

export interface LedgerView {
  readonly moves: readonly RecordedMove[]
  readonly folded: Folded
}

export const viewOf = (moves: readonly RecordedMove[]): LedgerView => ({
  moves,
  folded: fold(moves, { fruitOf }),
})

export const viewOfBook = (book: Book): LedgerView => viewOf(currentMoves(book))

/**
 * The view with more moves. When all of them come after everything recorded, which is the usual
 * case, only they are folded; the result is the same either way.
 */
export function withMoves(view: LedgerView, added: readonly RecordedMove[]): LedgerView {
  const last = view.folded.steps.at(-1)?.atMs ?? Number.NEGATIVE_INFINITY
  const isAtEnd = added.every(({ move }) => Date.parse(move.at) >= last)
  if (!isAtEnd) return viewOf(view.moves.concat(added))
  const tail = fold(added, { fruitOf, from: view.folded.cellar })
  return {
    moves: view.moves.concat(added),
    folded: {
      cellar: tail.cellar,
      steps: view.folded.steps.concat(tail.steps),
      refused: view.folded.refused.concat(tail.refused),
    },
  }
}

/** The view with one move put in place of its older version, or taken out. */
export function withAmendment(
  view: LedgerView,
  moveId: string,
  amended: RecordedMove | null,
): LedgerView {
  const others = view.moves.filter((recorded) => recorded.id !== moveId)
  return viewOf(amended ? [...others, amended] : others)
}

/** Steps of the given moves, in the order of the ledger; looked for from its end. */
export function stepsOfMoves({ folded: { steps } }: LedgerView, moveIds: ReadonlySet<string>) {
  const found: Step[] = []
  for (let at = steps.length - 1; at >= 0 && found.length < moveIds.size; at -= 1) {
    const step = steps[at] as Step
    if (moveIds.has(step.recorded.id)) found.push(step)
  }
  return found.reverse()
}
