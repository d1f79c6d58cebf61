/** The ledger's rows: recording, amending, taking back. Rows are added and never changed. */
import { Move, type RecordedMove } from '../../shared/schemas/moves.ts'
import { BookError } from './book-error.ts'
import type { Book } from './open-book.ts'

/** One row to add: a new move (version 1), a new version, or a strike (`move` null). */
export interface MoveRow {
  readonly id: string
  readonly version: number
  readonly move: Move | null
}

export interface MoveGroup {
  readonly id: string
  readonly requestKey: string
  readonly recordedAt: string
  readonly undoes?: string
  readonly rows: readonly MoveRow[]
}

interface CurrentRow {
  id: string
  seq: number
  version: number
  group_id: string
  recorded_at: string
  payload: string
}

const recordedOf = (row: CurrentRow): RecordedMove => ({
  id: row.id,
  seq: row.seq,
  groupId: row.group_id,
  recordedAt: row.recorded_at,
  version: row.version,
  move: moveIn(row.payload, row.id),
})

/** Nothing else was ever written here: what is no move now was damaged since. */
function moveIn(payload: string, id: string): Move {
  try {
    return Move.parse(JSON.parse(payload))
  } catch (error) {
    throw new BookError('bookDamaged', `move ${id} can no longer be read`, { cause: error })
  }
}

/** Put together here and not by the view of the same name: opening a book waits for every row. */
export function currentMoves(book: Book): RecordedMove[] {
  const recordedAt = new Map(
    book.prepare('SELECT id, recorded_at FROM move_group').raw().all() as [string, string][],
  )
  const rows = book
    .prepare('SELECT seq, id, version, group_id, payload FROM move ORDER BY seq')
    .all() as VersionOfMove[]
  const first = new Map<string, VersionOfMove>()
  const newest = new Map<string, VersionOfMove>()
  for (const row of rows) {
    if (row.version === 1) first.set(row.id, row)
    if (row.version > (newest.get(row.id)?.version ?? 0)) newest.set(row.id, row)
  }
  const current: RecordedMove[] = []
  for (const { id, seq, group_id } of first.values()) {
    const { version, payload } = newest.get(id) as VersionOfMove
    if (payload === null) continue
    const recorded_at = recordedAt.get(group_id) as string
    current.push(recordedOf({ id, seq, version, group_id, recorded_at, payload }))
  }
  return current
}

type VersionOfMove = Pick<CurrentRow, 'id' | 'seq' | 'version' | 'group_id'> & {
  payload: string | null
}

/** The current moves as they stood when row `seq` was the last of the ledger. */
export function currentMovesUpTo(book: Book, seq: number): RecordedMove[] {
  const rows = book
    .prepare(
      `SELECT newest.id, first.seq, newest.version, first.group_id, recorded.recorded_at,
              newest.payload
       FROM move AS newest
       JOIN move AS first ON first.id = newest.id AND first.version = 1
       JOIN move_group AS recorded ON recorded.id = first.group_id
       WHERE newest.seq <= :seq AND newest.payload IS NOT NULL
         AND NOT EXISTS (
           SELECT 1 FROM move AS later
           WHERE later.id = newest.id AND later.version > newest.version AND later.seq <= :seq
         )
       ORDER BY first.seq`,
    )
    .all({ seq }) as CurrentRow[]
  return rows.map(recordedOf)
}

/** Adds a group's rows; call it inside a transaction. Returns the order number of the last. */
export function addGroup(book: Book, group: MoveGroup): number {
  book
    .prepare('INSERT INTO move_group (id, request_key, recorded_at, undoes) VALUES (?, ?, ?, ?)')
    .run(group.id, group.requestKey, group.recordedAt, group.undoes ?? null)
  const add = book.prepare('INSERT INTO move (id, version, group_id, payload) VALUES (?, ?, ?, ?)')
  let last = 0
  for (const { id, version, move } of group.rows)
    last = Number(
      add.run(id, version, group.id, move === null ? null : JSON.stringify(move)).lastInsertRowid,
    )
  return last
}

export const nextSeq = (book: Book): number =>
  1 + (book.prepare('SELECT coalesce(max(seq), 0) FROM move').pluck().get() as number)

/** The group that an earlier request with this key made. */
export function groupOfRequest(
  book: Book,
  key: string,
): { id: string; undoes: string | null } | undefined {
  return book.prepare('SELECT id, undoes FROM move_group WHERE request_key = ?').get(key) as
    { id: string; undoes: string | null } | undefined
}

export const moveIdsOfGroup = (book: Book, groupId: string): string[] =>
  book
    .prepare('SELECT id FROM move WHERE group_id = ? ORDER BY seq')
    .pluck()
    .all(groupId) as string[]

/** A batch's moves: those that name it, and those known to concern it though they name a bottle. */
export interface OfBatch {
  readonly batchId: string
  readonly moveIds: readonly string[]
}

/**
 * The group to take back next: the newest of this batch that stands. What an undo took back and a
 * second undo put back stands again, in that second one.
 */
export function lastGroup(book: Book, of: OfBatch | undefined): string | undefined {
  return book
    .prepare(
      `WITH RECURSIVE put_back (id) AS (
         SELECT again.id FROM move_group AS taking
         JOIN move_group AS first ON first.id = taking.undoes AND first.undoes IS NULL
         JOIN move_group AS again ON again.undoes = taking.id
         WHERE taking.undoes IS NOT NULL
         UNION ALL
         SELECT again.id FROM put_back
         JOIN move_group AS taking ON taking.undoes = put_back.id
         JOIN move_group AS again ON again.undoes = taking.id
       )
       SELECT grouped.id FROM move_group AS grouped
       JOIN move ON move.group_id = grouped.id
       WHERE (grouped.undoes IS NULL OR grouped.id IN put_back)
         AND NOT EXISTS (SELECT 1 FROM move_group AS undo WHERE undo.undoes = grouped.id)
         AND (:batchId IS NULL OR move.batch_id = :batchId
              OR move.id IN (SELECT value FROM json_each(:moveIds)) OR EXISTS (
           SELECT 1 FROM move AS before
           WHERE before.id = move.id AND before.version < move.version
             AND before.batch_id = :batchId))
       ORDER BY move.seq DESC LIMIT 1`,
    )
    .pluck()
    .get({ batchId: of?.batchId ?? null, moveIds: JSON.stringify(of?.moveIds ?? []) }) as
    string | undefined
}

/** The group itself where it is there and was not taken back; taking back an undo puts back. */
export function undoable(book: Book, groupId: string): string | undefined {
  return book
    .prepare(
      `SELECT id FROM move_group AS grouped
       WHERE id = :groupId
         AND NOT EXISTS (SELECT 1 FROM move_group AS undo WHERE undo.undoes = grouped.id)`,
    )
    .pluck()
    .get({ groupId }) as string | undefined
}

export interface MoveVersion {
  readonly id: string
  readonly version: number
  readonly recordedAt: string
  readonly move: Move | null
}

interface VersionRow {
  id: string
  version: number
  recorded_at: string
  payload: string | null
}

const versionOf = (row: VersionRow): MoveVersion => ({
  id: row.id,
  version: row.version,
  recordedAt: row.recorded_at,
  move: row.payload === null ? null : Move.parse(JSON.parse(row.payload)),
})

const versions = `
  SELECT move.id, move.version, move_group.recorded_at, move.payload
  FROM move JOIN move_group ON move_group.id = move.group_id`

/** Every version of a move, oldest first. */
export const versionsOfMove = (book: Book, moveId: string): MoveVersion[] =>
  (book.prepare(`${versions} WHERE move.id = ? ORDER BY version`).all(moveId) as VersionRow[]).map(
    versionOf,
  )

/** Moves that count no longer, each as it read last, with the version that struck it. */
export function struckMoves(book: Book): RecordedMove[] {
  const rows = book
    .prepare(
      `SELECT struck.id, first.seq, struck.version, first.group_id, recorded.recorded_at,
              told.payload
       FROM move AS struck
       JOIN move AS first ON first.id = struck.id AND first.version = 1
       JOIN move_group AS recorded ON recorded.id = first.group_id
       JOIN move AS told ON told.id = struck.id AND told.version = (
         SELECT max(version) FROM move WHERE id = struck.id AND payload IS NOT NULL)
       WHERE struck.payload IS NULL
         AND NOT EXISTS (SELECT 1 FROM move WHERE id = struck.id AND version > struck.version)
       ORDER BY first.seq`,
    )
    .all() as CurrentRow[]
  return rows.map(recordedOf)
}

/** When and in which order a move was first recorded; amendments do not change that. */
export function firstRecording(
  book: Book,
  moveId: string,
): Pick<RecordedMove, 'id' | 'seq' | 'groupId' | 'recordedAt'> {
  return book
    .prepare(
      `SELECT move.id, seq, group_id AS groupId, recorded_at AS recordedAt
       FROM move JOIN move_group ON move_group.id = group_id
       WHERE move.id = ? AND version = 1`,
    )
    .get(moveId) as Pick<RecordedMove, 'id' | 'seq' | 'groupId' | 'recordedAt'>
}

/** What a group did to one move: null before it was recorded, null after it was struck. */
export interface MoveChange {
  readonly moveId: string
  readonly before: Move | null
  readonly after: Move | null
}

export const changesOfGroup = (book: Book, groupId: string): MoveChange[] =>
  spansOfGroup(book, groupId).map(({ id, before, after }) => ({
    moveId: id,
    before: before?.move ?? null,
    after: after.move,
  }))

/** The rows that take a group back: each of its moves as it was before it. */
export const rowsBefore = (book: Book, groupId: string): MoveRow[] =>
  spansOfGroup(book, groupId).map(({ id, before, newest }) => ({
    id,
    version: newest.version + 1,
    move: before?.move ?? null,
  }))

/** Moves of a group that a later one changed, and that read otherwise than the group left them. */
export const changedSince = (book: Book, groupId: string): string[] =>
  spansOfGroup(book, groupId)
    .filter(({ after, newest }) => JSON.stringify(after.move) !== JSON.stringify(newest.move))
    .map(({ id }) => id)

interface MoveSpan {
  readonly id: string
  readonly before: MoveVersion | undefined
  readonly after: MoveVersion
  readonly newest: MoveVersion
}

function spansOfGroup(book: Book, groupId: string): MoveSpan[] {
  const own = book
    .prepare(
      `SELECT id, min(version) AS first, max(version) AS last FROM move
       WHERE group_id = ? GROUP BY id ORDER BY min(seq)`,
    )
    .all(groupId) as { id: string; first: number; last: number }[]
  return own.map(({ id, first, last }) => {
    const all = versionsOfMove(book, id)
    const at = (version: number) => all.find((one) => one.version === version)
    const newest = all.at(-1) as MoveVersion
    return { id, before: at(first - 1), after: at(last) as MoveVersion, newest }
  })
}
