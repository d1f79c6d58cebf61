/** Every move of the book, newest first, as far as it is asked for. */
import * as z from 'zod'
import { Count, Id } from './basics.ts'
import { moveKinds, RecordedMove } from './moves.ts'

/** All that is given must hold. */
export const MoveFilter = z.strictObject({
  batchId: Id.optional(),
  jarId: Id.optional(),
  kind: z.enum(moveKinds).optional(),
  /** By the maker's own calendar. */
  year: z.number().int().min(1900).max(2200).optional(),
  /** Every word of it is in the note, or in the name of a batch, vessel, lot or fruit of the move. */
  text: z.string().max(100).optional(),
  /** Those that count no longer, instead of those that do. */
  isStruck: z.boolean().optional(),
})
export type MoveFilter = z.infer<typeof MoveFilter>

export const MovesAsked = z.strictObject({
  filter: MoveFilter,
  /** How many of the newest are left out. */
  from: z.number().int().nonnegative(),
  count: Count.max(200),
})

export const MovePage = z.strictObject({
  /** All that match. */
  total: z.number().int(),
  /** Years with moves, newest first. */
  years: z.array(z.number().int()),
  rows: z.array(z.strictObject({ recorded: RecordedMove, batchIds: z.array(Id) })),
  /** What an undo without a window's own stack would take back. */
  last: z.strictObject({ groupId: Id, moveIds: z.array(Id) }).optional(),
})
export type MovePage = z.infer<typeof MovePage>
