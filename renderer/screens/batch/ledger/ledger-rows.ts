/** The ledger as it is read: steps in one order or the other. */
import type { LedgerStep } from '../../../../shared/schemas/cellar.ts'

export type LedgerOrder = 'newest' | 'oldest'

/** The service tells steps oldest first; equal instants keep the order of recording. */
export const inOrder = (steps: readonly LedgerStep[], order: LedgerOrder): LedgerStep[] =>
  order === 'oldest' ? [...steps] : steps.toReversed()

/** A reading that waits for its maker: it has doubts, and nobody has said to count it. */
export const isUnconfirmed = ({ recorded: { move }, interpretation }: LedgerStep): boolean =>
  move.kind === 'read' && move.isConfirmed !== true && (interpretation?.doubts.length ?? 0) > 0
