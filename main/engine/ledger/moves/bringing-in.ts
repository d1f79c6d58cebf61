/** Bottles that no jar of this book filled: their matter comes from elsewhere, as their maker says. */
import { matterOf, scaleMatter } from '../../../../shared/matter.ts'
import type { MoveOf } from '../../../../shared/schemas/moves.ts'
import { composeSolution } from '../../solution/compose-solution.ts'
import { bottlesPlace, type CellarState } from '../cellar-state.ts'
import { DomainError } from '../../domain-error.ts'
import { allowed, refused, type Outcome } from '../refusal.ts'
import type { MoveContext } from './context.ts'

export function bringIn(
  cellar: CellarState,
  move: MoveOf<'bringIn'>,
  { atMs }: MoveContext,
): Outcome {
  const { bottleLotId, bottleSizeMl, count, strengthPctVol, sugarGPerL } = move
  const place = bottlesPlace(bottleLotId)
  if (cellar.bottles.has(bottleLotId)) return refused({ code: 'alreadyThere', place })
  const perBottle = bottleful({ volumeMl: bottleSizeMl, strengthPctVol, sugarGPerL })
  if (!perBottle) return refused({ code: 'noSuchMixture', place })
  return allowed({
    bottles: new Map([
      [
        bottleLotId,
        {
          batchId: move.batchId,
          name: move.name,
          bottledAtMs: atMs,
          bottleSizeMl,
          filledCount: count,
          count,
          shelves: new Map([[move.shelfId ?? null, count]]),
          perBottle,
        },
      ],
    ]),
    transfers: [{ from: 'outside:elsewhere', to: place, matter: scaleMatter(perBottle, count) }],
    stage: 'resting',
  })
}

/** Undefined where spirit and sugar alone are more than the bottle. */
function bottleful(wanted: { volumeMl: number; strengthPctVol: number; sugarGPerL: number }) {
  try {
    return matterOf(composeSolution(wanted))
  } catch (error) {
    if (error instanceof DomainError && error.code === 'noSuchMixture') return undefined
    throw error
  }
}
