/** A draft whose moves a book would take: none of them larger than a move can be. */
import * as z from 'zod'
import type { DraftOutcome } from '../../shared/schemas/drafts.ts'
import { Move } from '../../shared/schemas/moves.ts'
import { withinContract } from './within-contract.ts'

const moves = z.array(Move)

export function doable(outcome: DraftOutcome): DraftOutcome {
  withinContract(moves, outcome.moves)
  return outcome
}
