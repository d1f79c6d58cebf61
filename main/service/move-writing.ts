/** One transaction from moves to rows: the ledger judges first, and only what can be is written. */
import { putLots, replaceLots } from '../cellar/lot-store.ts'
import { addGroup, type MoveRow } from '../cellar/move-store.ts'
import type { Book } from '../cellar/open-book.ts'
import type { RecordedMove } from '../../shared/schemas/moves.ts'
import type { Step } from '../engine/index.ts'
import type { LedgerView } from './ledger-view.ts'
import { lotRowsOf } from './lot-rows.ts'
import { dateAware } from './move-checks.ts'
import { refusedMove, ServiceError } from './service-error.ts'
import type { Session } from './session.ts'

/** What stands in the way of a view: refusals of the moves asked about, and of others after them. */
export function judged(before: LedgerView, after: LedgerView, asked: readonly RecordedMove[]) {
  const indexById = new Map(asked.map((recorded, index) => [recorded.id, index]))
  // What was refused before, as in a book read from damage, does not stand in the way of others.
  const already = new Set(before.folded.refused.map(({ recorded }) => recorded.id))
  const refusals = []
  const breaks = []
  for (const { recorded, refusal } of after.folded.refused) {
    const index = indexById.get(recorded.id)
    if (index === undefined) {
      if (!already.has(recorded.id)) breaks.push({ recorded, refusal })
    } else refusals.push({ index, refusal: dateAware(before, recorded.move, refusal) })
  }
  return { refusals, breaks }
}

/** Throws unless every move of the view can be. */
export function mustHold(
  before: LedgerView,
  after: LedgerView,
  asked: readonly RecordedMove[],
): void {
  const { refusals, breaks } = judged(before, after, asked)
  const first = refusals[0]
  if (first) throw refusedMove(first.refusal, first.index)
  if (breaks.length > 0)
    throw new ServiceError('breaksLater', `${breaks.length} later moves would break`, { breaks })
}

export interface Writing {
  readonly requestKey: string
  readonly groupId: string
  readonly undoes?: string
  readonly rows: readonly MoveRow[]
  readonly view: LedgerView
  /** Writes what the moves name, in the same transaction and before them. */
  readonly alongside?: (book: Book) => void
  /** The steps that changed lots; undefined when the whole ledger was folded again. */
  readonly newSteps?: readonly Step[]
}

export function write(session: Session, writing: Writing): void {
  const { book, options } = session
  const { requestKey, groupId, undoes, rows, view, alongside, newSteps } = writing
  const recordedAt = options.now().toISOString()
  book
    .transaction(() => {
      alongside?.(book)
      addGroup(book, { id: groupId, requestKey, recordedAt, rows, ...(undoes && { undoes }) })
      if (newSteps) putLots(book, lotRowsOf(lotsTouched(view, newSteps)))
      else replaceLots(book, lotRowsOf(view.folded.cellar))
    })
    .immediate()
  session.adopt(view)
}

function lotsTouched({ folded: { cellar } }: LedgerView, steps: readonly Step[]) {
  const ids = (of: 'lots' | 'bottles') => [
    ...new Set(steps.flatMap((step) => [...(step.effect[of]?.keys() ?? [])])),
  ]
  const present = <T>(states: ReadonlyMap<string, T>, of: 'lots' | 'bottles') =>
    new Map(ids(of).map((id) => [id, states.get(id) as T]))
  return { lots: present(cellar.lots, 'lots'), bottles: present(cellar.bottles, 'bottles') }
}
