/** The ledger's doors: look at what a move would do, record, amend, take back. */
import {
  changedSince,
  changesOfGroup,
  groupOfRequest,
  lastGroup,
  moveIdsOfGroup,
  firstRecording,
  rowsBefore,
  undoable,
  versionsOfMove,
} from '../../cellar/move-store.ts'
import { allJars } from '../../cellar/jar-store.ts'
import { stepsOf } from '../../engine/index.ts'
import type { Answer, ParsedRequest } from '../../../shared/channels.ts'
import type { Move, RecordedMove } from '../../../shared/schemas/moves.ts'
import { cautionsAfter, ledgerStep } from '../describe.ts'
import { stepsOfMoves, viewOf, withAmendment, withMoves, type LedgerView } from '../ledger-view.ts'
import { movePage } from '../all-moves.ts'
import { differencesBetween, taskDifferences } from '../differences.ts'
import { checkedMoves } from '../move-checks.ts'
import { newlyRecorded } from '../newly-recorded.ts'
import { judged, mustHold, write } from '../move-writing.ts'
import { notFound, ServiceError } from '../service-error.ts'
import type { Session } from '../session.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

type Recorded = Answer<'moves.record'>

const known = ({ book, fruits }: Session) => ({ jars: allJars(book), fruits })

function recordedReply(session: Session, groupId: string, moveIds: string[]): Recorded {
  const steps = stepsOfMoves(session.ledger, new Set(moveIds))
  return { groupId, moveIds, warnings: cautionsAfter(steps, known(session)) }
}

/** What an earlier request with the same key came to. */
function alreadyDone(session: Session, key: string): Recorded | undefined {
  const group = groupOfRequest(session.book, key)
  return group && recordedReply(session, group.id, moveIdsOfGroup(session.book, group.id))
}

function preview(
  session: Session,
  view: LedgerView,
  asked: readonly RecordedMove[],
): Answer<'moves.preview'> {
  const steps = stepsOfMoves(view, new Set(asked.map((recorded) => recorded.id)))
  return {
    ...judged(session.ledger, view, asked),
    steps: steps.map(ledgerStep),
    warnings: cautionsAfter(steps, known(session)),
  }
}

/** The move as it counts now. */
function countingMove(session: Session, moveId: string): RecordedMove {
  const found = session.ledger.moves.find((recorded) => recorded.id === moveId)
  if (!found) throw notFound('move', moveId)
  return found
}

/** The move in its newest version; a struck one as it read before, since it can be put back. */
function newestOfMove(session: Session, moveId: string): RecordedMove {
  const found = session.ledger.moves.find((recorded) => recorded.id === moveId)
  if (found) return found
  const versions = versionsOfMove(session.book, moveId)
  const move = versions.findLast((one) => one.move !== null)?.move
  if (!move) throw notFound('move', moveId)
  return { ...firstRecording(session.book, moveId), version: versions.length, move }
}

/** What is struck is not there to be struck again, only to be put back. */
const moveToChange = (session: Session, moveId: string, move: Move | null): RecordedMove =>
  move === null ? countingMove(session, moveId) : newestOfMove(session, moveId)

const amendedReply = (session: Session, done: Recorded): Answer<'moves.amend'> => ({
  ...done,
  changes: changesOfGroup(session.book, done.groupId),
})

/** What an undo came to, read off its group: asked twice, it answers the same. */
const undoReply = ({ book }: Session, groupId: string, undoes: string): Answer<'moves.undo'> => ({
  groupId,
  undoes,
  changes: changesOfGroup(book, groupId),
})

/** The move as it would stand after an amendment; null when struck. */
function amended(session: Session, current: RecordedMove, move: Move | null) {
  if (move === null) return null
  const [checked] = checkedMoves(session, [move])
  return { ...current, version: current.version + 1, move: checked as Move }
}

/** A change meant for an older version would undo what was changed since. */
function mustBeAsSeen({ id, version }: RecordedMove, fromVersion: number): void {
  if (version !== fromVersion)
    throw new ServiceError('staleEdit', `move ${id} has changed meanwhile`, { version })
}

/** The ledger as it would be with the change, and the changed move. */
function viewAmended(
  session: Session,
  { moveId, move, alsoStrike = [] }: ParsedRequest<'moves.previewAmend'>,
) {
  const next = amended(session, moveToChange(session, moveId, move), move)
  const struckIds = alsoStrike.map((one) => one.moveId)
  return { next, view: withAmendment(session.ledger, moveId, next, struckIds) }
}

export const moveHandlers: Handlers<ChannelsOf<'moves'>> = {
  'moves.list': (session, asked) => movePage(session, asked),

  'moves.preview': (session, { moves }) => {
    const asked = newlyRecorded(session, moves, 'preview')
    return preview(session, withMoves(session.ledger, asked), asked)
  },

  'moves.record': (session, { key, moves }) => {
    const done = alreadyDone(session, key)
    if (done) return done
    const groupId = session.options.newId()
    const recorded = newlyRecorded(session, moves, groupId)
    const view = withMoves(session.ledger, recorded)
    mustHold(session.ledger, view, recorded)
    const ids = recorded.map(({ id }) => id)
    write(session, {
      requestKey: key,
      groupId,
      rows: recorded.map(({ id, move }) => ({ id, version: 1, move })),
      view,
      newSteps: stepsOfMoves(view, new Set(ids)),
    })
    return recordedReply(session, groupId, ids)
  },

  'moves.previewAmend': (session, asked) => {
    const { next, view } = viewAmended(session, asked)
    const seen = preview(session, view, next ? [next] : [])
    const after = seen.refusals.length > 0 ? session.ledger : view
    return { ...seen, differences: differencesBetween(session, { before: session.ledger, after }) }
  },

  'moves.previewTasks': (session, asked) => {
    const { next, view } = viewAmended(session, asked)
    if (judged(session.ledger, view, next ? [next] : []).refusals.length > 0) return []
    return taskDifferences(session, view)
  },

  'moves.amend': (session, { key, moveId, fromVersion, move, alsoStrike = [] }) => {
    const done = alreadyDone(session, key)
    if (done) return amendedReply(session, done)
    mustBeAsSeen(moveToChange(session, moveId, move), fromVersion)
    for (const seen of alsoStrike)
      mustBeAsSeen(countingMove(session, seen.moveId), seen.fromVersion)
    const { next, view } = viewAmended(session, { moveId, move, alsoStrike })
    mustHold(session.ledger, view, next ? [next] : [])
    const groupId = session.options.newId()
    const rows = [
      { id: moveId, version: fromVersion + 1, move: next?.move ?? null },
      ...alsoStrike.map((one) => ({ id: one.moveId, version: one.fromVersion + 1, move: null })),
    ]
    write(session, { requestKey: key, groupId, rows, view })
    return amendedReply(session, recordedReply(session, groupId, [moveId]))
  },

  'moves.undo': (session, { key, batchId, groupId: asked }) => {
    const { book, ledger } = session
    const done = groupOfRequest(book, key)
    if (done?.undoes) return undoReply(session, done.id, done.undoes)
    if (done) throw new ServiceError('badInput', 'this key was for something else', { key })
    const undoes =
      asked === undefined ? lastGroup(book, ofBatch(ledger, batchId)) : undoable(book, asked)
    if (undoes === undefined) throw new ServiceError('nothingToUndo', 'there is nothing to undo')
    const [changed] = changedSince(book, undoes)
    if (changed !== undefined)
      throw new ServiceError('staleEdit', `move ${changed} has changed since ${undoes}`, {
        moveId: changed,
      })
    const rows = rowsBefore(book, undoes)
    const view = viewOf(movesAfter(ledger, rows, session), ledger)
    const putBack = new Set(rows.flatMap(({ id, move }) => (move ? [id] : [])))
    // What is put back and cannot be is refused by its own reason, not as a later move.
    mustHold(
      ledger,
      view,
      view.moves.filter(({ id }) => putBack.has(id)),
    )
    const groupId = session.options.newId()
    write(session, { requestKey: key, groupId, undoes, rows, view })
    return undoReply(session, groupId, undoes)
  },

  'moves.history': (session, { moveId }) => {
    const versions = versionsOfMove(session.book, moveId)
    if (versions.length === 0) throw notFound('move', moveId)
    return versions.map(({ version, recordedAt, move }) => ({ version, recordedAt, move }))
  },
}

/** Drawing a bottle names its lot alone, and concerns the batch all the same. */
const ofBatch = ({ folded }: LedgerView, batchId: string | undefined) =>
  batchId === undefined
    ? undefined
    : { batchId, moveIds: stepsOf(folded.steps, batchId).map(({ recorded }) => recorded.id) }

/** The ledger's moves with the given rows put on top of them. */
function movesAfter(
  ledger: LedgerView,
  rows: readonly { id: string; version: number; move: Move | null }[],
  session: Session,
): RecordedMove[] {
  const rowById = new Map(rows.map((row) => [row.id, row]))
  const kept = ledger.moves.flatMap((recorded) => {
    const row = rowById.get(recorded.id)
    if (!row) return recorded
    rowById.delete(recorded.id)
    return row.move ? { ...recorded, version: row.version, move: row.move } : []
  })
  // What is left was struck before and comes back as it was first recorded.
  const returned = [...rowById.values()].flatMap(({ id, version, move }) =>
    move ? { ...firstRecording(session.book, id), version, move } : [],
  )
  return [...kept, ...returned]
}
