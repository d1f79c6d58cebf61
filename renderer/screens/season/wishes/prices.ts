/** Prices by fruit and by strength of spirit; without a price an entry is gone. */
import type { SeasonPrices } from '../../../../shared/schemas/season.ts'

export const priceOfFruit = ({ fruits }: SeasonPrices, fruitId: string): number | undefined =>
  fruits.find((entry) => entry.fruitId === fruitId)?.minorPerKg

export function withFruitPrice(
  prices: SeasonPrices,
  fruitId: string,
  minorPerKg: number | undefined,
): SeasonPrices {
  const others = prices.fruits.filter((entry) => entry.fruitId !== fruitId)
  const fruits = minorPerKg === undefined ? others : [...others, { fruitId, minorPerKg }]
  return { ...prices, fruits }
}

export const priceOfSpirit = ({ spirits }: SeasonPrices, pctVol: number): number | undefined =>
  spirits.find(({ strengthPctVol }) => strengthPctVol === pctVol)?.minorPerL

export function withSpiritPrice(
  prices: SeasonPrices,
  strengthPctVol: number,
  minorPerL: number | undefined,
): SeasonPrices {
  const others = prices.spirits.filter((entry) => entry.strengthPctVol !== strengthPctVol)
  const spirits = minorPerL === undefined ? others : [...others, { strengthPctVol, minorPerL }]
  return { ...prices, spirits }
}
