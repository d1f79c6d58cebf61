/** A kind made ready by hand, to be asked for, placed and told. */
import { fruitOf } from '../../../main/engine/fruit/fruit-library.ts'
import type { KindRecipe } from '../../../main/engine/season/kind-recipe.ts'
import type { KindAsked } from '../../../main/engine/season/season-kinds.ts'
import type { Supply } from '../../../shared/schemas/season.ts'
import { paperSpec } from './paper-plan.ts'
import { stock } from './season-cellar.ts'

/** Per kg: 1.6 L over 2 L to steep for six weeks, and 1.7 L to settle from the fifth to the eighth. */
export const recipe: KindRecipe = {
  spec: paperSpec(),
  lPerKg: 1.6,
  steepMlPerKg: 2000,
  settleMlPerKg: 1700,
  sweetener: { id: 'sugar', gPerKg: 200 },
  spirits: [{ strengthPctVol: 70, mlPerKg: 800 }],
  fruits: [{ fruitId: 'sour_cherry', share: 1 }],
  drawnDay: 35,
  emptiedDay: 42,
  bottledDay: 56,
}

export const supplyIn = (weeks: readonly number[]): Supply[] =>
  Array.from({ length: 52 }, (_, at) => (weeks.includes(at) ? 'plenty' : 'none'))

/** 4.5 L of sour cherry wanted, with plenty of it in week 10. */
export const kind = (change: Partial<KindAsked> = {}): KindAsked => ({
  fruit: fruitOf('sour_cherry'),
  stock: stock('sour_cherry', 2, 5),
  inJarsMl: 300,
  recipe,
  known: undefined,
  lPerKg: { value: 1.6, low: 1.2, high: 2 },
  yieldBatchIds: [],
  supply: supplyIn([10]),
  readyMs: Date.parse('2028-01-01T00:00:00Z'),
  demand: {
    needs: [{ because: 'drinking', priority: 'should', volumeMl: 5000 }],
    wantedMl: 4500,
    atMostMl: undefined,
    tiers: [],
    leftThenMl: { value: 1, low: 0, high: 2 },
    runsDryMs: undefined,
  },
  bottleSizeMl: 500,
  ...change,
})
