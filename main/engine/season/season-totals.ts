/** A season added up: litres, bottles, fruit, spirit by strength, sugar, money. */
import type { SeasonBatch, SeasonPurchase, SeasonTotals } from '../../../shared/schemas/season.ts'

export function seasonTotals(
  batches: readonly SeasonBatch[],
  purchases: readonly SeasonPurchase[],
  shortMl: number,
): SeasonTotals {
  const sum = (of: (batch: SeasonBatch) => number) =>
    batches.reduce((total, batch) => total + of(batch), 0)
  const pours = batches.flatMap(({ spec }) =>
    spec.spirits.map(({ strengthPctVol, volumeMl }, index) => ({
      strengthPctVol,
      volumeMl: volumeMl + (index === 0 ? spec.finishSpiritMl : 0),
    })),
  )
  const spirits = [...Map.groupBy(pours, ({ strengthPctVol }) => strengthPctVol)]
    .map(([strengthPctVol, alike]) => ({
      strengthPctVol,
      volumeMl: alike.reduce((total, { volumeMl }) => total + volumeMl, 0),
    }))
    .sort((a, b) => b.strengthPctVol - a.strengthPctVol)
  return {
    batches: batches.length,
    volumeMl: {
      value: sum(({ volumeMl }) => volumeMl.value),
      low: sum(({ volumeMl }) => volumeMl.low),
      high: sum(({ volumeMl }) => volumeMl.high),
    },
    bottles: sum(({ bottles }) => bottles),
    shortMl,
    fruitG: sum(({ fruitG }) => fruitG),
    spirits,
    sugarG: sum(({ spec }) =>
      spec.sugarDraws.reduce(
        (total, { sugarG }) => total + sugarG,
        spec.layeringSugarG + spec.finishSugarG,
      ),
    ),
    moneyMinor: purchases.reduce((total, { priceMinor = 0 }) => total + priceMinor, 0),
    isWholeMoney: purchases.every(({ priceMinor }) => priceMinor !== undefined),
  }
}
