/**
 * How many litres does a kilogram of fruit give next season, and within which band?
 *
 * Method: what the engine reckons for the recipe, and the mean of n own finished batches, blended
 * as (n own + 2 recipe) / (n + 2), as all that batches teach. The band holds nine batches in ten:
 * one batch differs from its like by a tenth (one standard deviation), and what is not known of the
 * mean by a ninth at first, less with every batch; together a quarter with none, as the craft
 * reference's planning yield has it (1.7, from 1.3 to 2.1). The tenth and the ninth are estimates.
 * In: L/kg of the recipe, own batches. Out: L/kg of fruit as bought.
 * Leaves out: how good the harvest is; the variants of a plan ask for that.
 * @example seasonYield(1.6, undefined).low // 1.2
 */
import type { Learned } from '../../../shared/schemas/fruits.ts'
import type { Banded } from '../../../shared/schemas/steeping.ts'

const batchVariance = 0.01
const meanVariance = 0.0125
const recipeCountsAs = 2
/** Nine in ten lie within so many standard deviations. */
const ninety = 1.645

export function seasonYield(
  recipeLPerKg: number,
  own: Pick<Learned, 'own' | 'batchIds'> | undefined,
): Banded {
  const count = own?.batchIds.length ?? 0
  const weight = count / (count + recipeCountsAs)
  const value = weight * (own?.own ?? 0) + (1 - weight) * recipeLPerKg
  const share =
    ninety * Math.sqrt(batchVariance + (meanVariance * recipeCountsAs) / (count + recipeCountsAs))
  return { value, low: value * (1 - share), high: value * (1 + share) }
}
