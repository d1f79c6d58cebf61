/**
 * The ledger as the service works with it: the current moves and the state they fold to, kept in
 * step with the book so that reading a screen does not fold decades again.
 */
import { currentMoves } from '../cellar/move-store.ts'
import type { Book } from '../cellar/open-book.ts'
import {
  fold,
  fruitOf,
  inLedgerOrder,
  type CellarState,
  type Folded,
  type Step,
} from '../engine/index.ts'
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
  /** The ledger as it stood after some of its first moves, the oldest first. */
  readonly standings: readonly Standing[]
}

/** Where a fold can go on from, instead of from the first move. */
interface Standing {
  readonly cellar: CellarState
  readonly stepCount: number
  readonly refusedCount: number
}

/** What each view adds to the one before; put together when a screen reads it. */
interface Lists {
  readonly moves: GrowingList<RecordedMove>
  readonly steps: GrowingList<Step>
  readonly refused: GrowingList<Folded['refused'][number]>
}

function viewWith(
  lists: Lists,
  standings: readonly Standing[],
  cellar: CellarState,
  newest: readonly Step[],
  lastMs: number,
) {
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
    standings,
    grown: (added) => {
      const tail = fold(added, { fruitOf, from: cellar })
      const more = {
        moves: lists.moves.with(added),
        steps: lists.steps.with(tail.steps),
        refused: lists.refused.with(tail.refused),
      }
      return viewWith(more, standings, tail.cellar, tail.steps, tail.steps.at(-1)?.atMs ?? lastMs)
    },
  }
  return view
}

/** Often enough that going on from one takes a moment, rarely enough that keeping them costs little. */
const movesPerStanding = 4096

/**
 * The view of moves in any order. What they share with the beginning of an older view is taken from
 * there: the same moves give the same state, however it was come by.
 */
export function viewOf(moves: readonly RecordedMove[], older?: LedgerView): LedgerView {
  const ordered = inLedgerOrder(moves)
  const standings = older ? older.standings.slice(0, lastShared(older, ordered) + 1) : []
  const shared = standings.at(-1)
  const steps = older?.folded.steps.slice(0, shared?.stepCount ?? 0) ?? []
  const refused = older?.folded.refused.slice(0, shared?.refusedCount ?? 0) ?? []
  let cellar = shared?.cellar ?? fold([], { fruitOf }).cellar
  for (let next = steps.length + refused.length; next < ordered.length; next += movesPerStanding) {
    const part = fold(ordered.slice(next, next + movesPerStanding), { fruitOf, from: cellar })
    for (const step of part.steps) steps.push(step)
    refused.push(...part.refused)
    cellar = part.cellar
    standings.push({ cellar, stepCount: steps.length, refusedCount: refused.length })
  }
  const lists = {
    moves: growingList(moves),
    steps: growingList(steps),
    refused: growingList(refused),
  }
  const lastMs = steps.at(-1)?.atMs ?? Number.NEGATIVE_INFINITY
  return viewWith(lists, standings, cellar, [], lastMs)
}

/** The last standing that nothing before it tells apart from the given moves. */
function lastShared({ folded, standings }: LedgerView, ordered: readonly RecordedMove[]) {
  const { steps, refused } = folded
  let [stepCount, refusedCount] = [0, 0]
  for (const recorded of ordered) {
    if (steps[stepCount]?.recorded === recorded) stepCount += 1
    else if (refused[refusedCount]?.recorded === recorded) refusedCount += 1
    else break
  }
  return standings.findLastIndex(
    (one) => one.stepCount <= stepCount && one.refusedCount <= refusedCount,
  )
}

export const viewOfBook = (book: Book): LedgerView => viewOf(currentMoves(book))

/**
 * The view with more moves. When all of them come after everything recorded, which is the usual
 * case, only they are folded; the result is the same either way.
 */
export const withMoves = (view: LedgerView, added: readonly RecordedMove[]): LedgerView =>
  added.every(({ move }) => Date.parse(move.at) >= view.lastMs)
    ? view.grown(added)
    : viewOf([...view.moves, ...added], view)

/** The view with one move put in place of its older version, or taken out, and others taken out. */
export function withAmendment(
  view: LedgerView,
  moveId: string,
  amended: RecordedMove | null,
  struckIds: readonly string[] = [],
): LedgerView {
  const gone = new Set([moveId, ...struckIds])
  const others = view.moves.filter((recorded) => !gone.has(recorded.id))
  return viewOf(amended ? [...others, amended] : others, view)
}

/** Steps of the given moves, in the order of the ledger; the newest are looked through first. */
export function stepsOfMoves({ folded, newest }: LedgerView, moveIds: ReadonlySet<string>): Step[] {
  const isAsked = ({ recorded }: Step) => moveIds.has(recorded.id)
  const found = newest.filter(isAsked)
  return found.length === moveIds.size ? found : folded.steps.filter(isAsked)
}
