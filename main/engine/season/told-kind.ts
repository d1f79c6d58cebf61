/** A kind as the plan tells it: stock, needs, yield, what is laid down, what is short and why. */
import type { SeasonBatch, SeasonKind, SeasonLimit } from '../../../shared/schemas/season.ts'
import type { KindAsked } from './season-kinds.ts'
import { instant } from './weeks.ts'

export interface KindCovered {
  readonly batches: readonly SeasonBatch[]
  readonly shortMl: number
  readonly cutBy: SeasonLimit[]
  readonly minorPerL: number | undefined
}

export function told(kind: KindAsked, covered: KindCovered): SeasonKind {
  const { fruit, stock, inJarsMl, demand, recipe, known, lPerKg, yieldBatchIds } = kind
  const own = covered.batches.filter(({ kindId }) => kindId === fruit.id)
  const sum = (of: (batch: SeasonBatch) => number) =>
    own.reduce((total, batch) => total + of(batch), 0)
  const { runsDryMs, atMostMl } = demand
  return {
    kindId: fruit.id,
    stock: {
      bottledMl: stock.volumeMl,
      inJarsMl,
      perYearMl: { ...stock.perYearMl },
      givenShare: stock.givenShare,
      isOwnHistory: stock.isOwnHistory,
    },
    readyAt: instant(kind.readyMs),
    leftThenMl: demand.leftThenMl,
    ...(runsDryMs !== undefined && { runsDryAt: instant(runsDryMs) }),
    needs: [...demand.needs],
    wantedMl: demand.wantedMl,
    ...(atMostMl !== undefined && { atMostMl }),
    yield: {
      lPerKg,
      basis: yieldBatchIds.length > 0 ? 'own' : 'recipe',
      batchIds: [...yieldBatchIds],
      ...(known?.recipeId !== undefined && { recipeId: known.recipeId }),
      ...(known?.batchId !== undefined && { likeBatchId: known.batchId }),
    },
    bottleSizeMl: kind.bottleSizeMl,
    plannedMl: {
      value: sum(({ volumeMl }) => volumeMl.value),
      low: sum(({ volumeMl }) => volumeMl.low),
      high: sum(({ volumeMl }) => volumeMl.high),
    },
    bottles: sum(({ bottles }) => bottles),
    shortMl: covered.shortMl,
    cutBy: covered.cutBy,
    jarLWeeksPerL: recipe && lPerKg.value > 0 ? jarLWeeks(recipe, lPerKg.value) : 0,
    ...(covered.minorPerL !== undefined && { minorPerL: covered.minorPerL }),
  }
}

const jarLWeeks = (recipe: NonNullable<KindAsked['recipe']>, lPerKg: number): number =>
  (recipe.steepMlPerKg * recipe.emptiedDay +
    recipe.settleMlPerKg * (recipe.bottledDay - recipe.drawnDay)) /
  7000 /
  lPerKg
