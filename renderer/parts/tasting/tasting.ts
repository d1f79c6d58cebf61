/** What a maker says of a glass: scores on the nine axes, the verdict on its age, the glass. */
import type { MoveOf, TasteAxis, Verdict } from '../../../shared/schemas/moves.ts'

export interface Tasting {
  /** From 0 to 10; an axis that was not judged has none. */
  readonly scores: Readonly<Partial<Record<TasteAxis, number>>>
  readonly verdict: Verdict | undefined
  readonly glass: string
}

export const noTasting: Tasting = { scores: {}, verdict: undefined, glass: '' }

export const tastingOfMove = ({ scores, verdict, glass }: MoveOf<'taste'>): Tasting => ({
  scores,
  verdict,
  glass: glass ?? '',
})

/** As the move holds it. */
export function tastingPart({ scores, verdict, glass }: Tasting) {
  const named = glass.trim()
  return {
    scores: { ...scores },
    ...(verdict && { verdict }),
    ...(named !== '' && { glass: named }),
  }
}

/** Whether anything was said at all, in scores or in a verdict. */
export const isJudged = ({ scores, verdict }: Tasting): boolean =>
  verdict !== undefined || Object.keys(scores).length > 0
