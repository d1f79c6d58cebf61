/** What a book holds, and in what it differs from another one. */
import * as z from 'zod'
import { Id, Instant } from './basics.ts'
import { Move } from './moves.ts'

const count = z.number().int().nonnegative()

export const LastMove = z.strictObject({ id: Id, seq: count, recordedAt: Instant })

export const BookCounts = z.strictObject({
  moves: count,
  jars: count,
  batches: count,
  bottleLots: count,
  bottles: count,
  /** Moves that the ledger refuses: they were refused in the book as well. */
  refusedMoves: count,
})
export type BookCounts = z.infer<typeof BookCounts>

export const MoveInBook = z.strictObject({
  moveId: Id,
  move: Move,
  recordedAt: Instant,
  batchName: z.string().nullable(),
})
export type MoveInBook = z.infer<typeof MoveInBook>

/** How many, and the newest of them. */
const SomeMoves = z.strictObject({ count, newest: z.array(MoveInBook).max(50) })

const OneSide = z.strictObject({ counts: BookCounts, lastMove: LastMove.nullable() })

/** A book looked into beside the present one. */
export const BooksCompared = z.strictObject({
  there: OneSide,
  /** Null where there is no present book, or none that can be read. */
  here: OneSide.nullable(),
  /** The two do not begin with the same move. */
  isAnotherCellar: z.boolean(),
  onlyHere: SomeMoves,
  onlyThere: SomeMoves,
  /** In both, but changed in one of them since. */
  changed: SomeMoves,
})
export type BooksCompared = z.infer<typeof BooksCompared>
