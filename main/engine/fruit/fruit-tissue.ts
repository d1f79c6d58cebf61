/** What a charge keeps of a fruit's facts: how it treats liquid, as known on the day. */
import type { Fruit, FruitLearned, FruitTissue } from '../../../shared/schemas/fruits.ts'

export function fruitTissue(fruit: Fruit): FruitTissue {
  const { kineticClass, piece, drainedLPerKg, pressedLPerKg, bulkDensityKgPerL, pace } = fruit
  return {
    kineticClass,
    ...(piece && { piece }),
    drainedLPerKg,
    pressedLPerKg,
    bulkDensityKgPerL,
    ...(pace !== undefined && { pace }),
  }
}

/** The same, with what the maker's own batches taught blended in. */
export function learnedTissue(fruit: Fruit, learned: FruitLearned | undefined): FruitTissue {
  const { drainedLPerKg, pressedLPerKg, pace } = learned ?? {}
  return {
    ...fruitTissue(fruit),
    ...(drainedLPerKg && { drainedLPerKg: drainedLPerKg.blended }),
    ...(pressedLPerKg && { pressedLPerKg: pressedLPerKg.blended }),
    ...(pace && { pace: pace.blended }),
  }
}
