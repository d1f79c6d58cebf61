/** What can be told of a book at a glance: counts, its first and last row, what its moves come to. */
import { fold, fruitOf, type Folded } from '../engine/index.ts'
import type { BookCounts } from '../../shared/schemas/books-compared.ts'
import { ledgerDigest } from './ledger-digest.ts'
import { currentMoves, currentMovesUpTo } from './move-store.ts'
import type { Book } from './open-book.ts'

export interface LastRow {
  readonly id: string
  readonly seq: number
  readonly recordedAt: string
}

export interface BookFacts {
  readonly schemaVersion: number
  readonly counts: BookCounts
  readonly firstMoveId: string | null
  readonly lastMove: LastRow | null
  readonly ledgerDigest: string
}

export function bookFacts(book: Book): BookFacts {
  const moves = currentMoves(book)
  return factsOf(book, moves.length, fold(moves, { fruitOf }))
}

/** Where the moves have been told already. */
export function factsOf(book: Book, moveCount: number, folded: Folded): BookFacts {
  return {
    schemaVersion: book.pragma('user_version', { simple: true }) as number,
    counts: countsOf(book, moveCount, folded),
    firstMoveId: firstMoveId(book),
    lastMove: lastRow(book),
    ledgerDigest: ledgerDigest(folded.cellar),
  }
}

function countsOf(book: Book, moves: number, { cellar, refused }: Folded): BookCounts {
  const rowsIn = (table: 'jar' | 'batch') =>
    book.prepare(`SELECT count(*) FROM ${table}`).pluck().get() as number
  return {
    moves,
    jars: rowsIn('jar'),
    batches: rowsIn('batch'),
    bottleLots: cellar.bottles.size,
    bottles: [...cellar.bottles.values()].reduce((sum, { count }) => sum + count, 0),
    refusedMoves: refused.length,
  }
}

/** What the moves came to when row `seq` was the last. */
export const digestUpTo = (book: Book, seq: number): string =>
  ledgerDigest(fold(currentMovesUpTo(book, seq), { fruitOf }).cellar)

export const firstMoveId = (book: Book): string | null =>
  (book.prepare('SELECT id FROM move ORDER BY seq LIMIT 1').pluck().get() as string | undefined) ??
  null

export const lastRow = (book: Book): LastRow | null =>
  (book
    .prepare(
      `SELECT move.id, seq, recorded_at AS recordedAt
       FROM move JOIN move_group ON move_group.id = group_id ORDER BY seq DESC LIMIT 1`,
    )
    .get() as LastRow | undefined) ?? null

/** Rows after `seq`, and when the first of them was recorded. */
export function rowsAfter(book: Book, seq: number): { rows: number; since: string | null } {
  return book
    .prepare(
      `SELECT count(*) AS rows, min(recorded_at) AS since
       FROM move JOIN move_group ON move_group.id = group_id WHERE seq > ?`,
    )
    .get(seq) as { rows: number; since: string | null }
}
