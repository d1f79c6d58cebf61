/**
 * The ledger as the service works with it: the current moves and the state they fold to, kept in
 * step with the book so that reading a screen does not fold decades again.
 */
import { currentMoves } from '../cellar/move-store.ts'
import type { Book } from '../cellar/open-book.ts'
import { fold, fruitOf, type CellarState, type Folded, type Step } from '../engine/index.ts'
import type { RecordedMove } from '../../shared/schemas/moves.ts'
import { growingList, type GrowingList } from './growing-list.ts'

export interface LedgerView {
  readonly moves: readonly RecordedMove[]
  readonly folded: Folded
  /** The steps that came last, where it went on from an older view. */
  readonly newest: readonly Step[]
  readonly lastMs: number
  /** The view with moves that come after everything recorded. */
  readonly grown: (added: readonly RecordedMove[]) => LedgerView
}

/** What each view adds to the one before; put together when a screen reads it. */
interface Lists {
  readonly moves: GrowingList<RecordedMove>
  readonly steps: GrowingList<Step>
  readonly refused: GrowingList<Folded['refused'][number]>
}

function viewWith(lists: Lists, cellar: CellarState, newest: readonly Step[], lastMs: number) {
  const view: LedgerView = {
    get moves() {
      return lists.moves.all
    },
    folded: {
      cellar,
      get steps() {
        return lists.steps.all
      },
      get refused() {
        return lists.refused.all
      },
    },
    newest,
    lastMs,
    grown: (added) => {
      const tail = fold(added, { fruitOf, from: cellar })
      const more = {
        moves: lists.moves.with(added),
        steps: lists.steps.with(tail.steps),
        refused: lists.refused.with(tail.refused),
      }
      return viewWith(more, tail.cellar, tail.steps, tail.steps.at(-1)?.atMs ?? lastMs)
    },
  }
  return view
}

export function viewOf(moves: readonly RecordedMove[]): LedgerView {
  const { cellar, steps, refused } = fold(moves, { fruitOf })
  const lists = {
    moves: growingList(moves),
    steps: growingList(steps),
    refused: growingList(refused),
  }
  return viewWith(lists, cellar, [], steps.at(-1)?.atMs ?? Number.NEGATIVE_INFINITY)
}

export const viewOfBook = (book: Book): LedgerView => viewOf(currentMoves(book))

/**
 * The view with more moves. When all of them come after everything recorded, which is the usual
 * case, only they are folded; the result is the same either way.
 */
export const withMoves = (view: LedgerView, added: readonly RecordedMove[]): LedgerView =>
  added.every(({ move }) => Date.parse(move.at) >= view.lastMs)
    ? view.grown(added)
    : viewOf([...view.moves, ...added])

/** The view with one move put in place of its older version, or taken out. */
export function withAmendment(
  view: LedgerView,
  moveId: string,
  amended: RecordedMove | null,
): LedgerView {
  const others = view.moves.filter((recorded) => recorded.id !== moveId)
  return viewOf(amended ? [...others, amended] : others)
}

/** Steps of the given moves, in the order of the ledger; the newest are looked through first. */
export function stepsOfMoves({ folded, newest }: LedgerView, moveIds: ReadonlySet<string>): Step[] {
  const isAsked = ({ recorded }: Step) => moveIds.has(recorded.id)
  const found = newest.filter(isAsked)
  return found.length === moveIds.size ? found : folded.steps.filter(isAsked)
}
