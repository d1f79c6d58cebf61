/**
 * The same season when the harvest is poor, or good.
 *
 * The factors are stated, not known: stone fruit above all swings with spring frosts, and nothing
 * published gives one number for all (craft reference, planning next season: a choice of low, usual
 * and high). Poor: fruit half as dear again, a tenth fewer litres from a kilogram, each season a
 * week shorter at either end. Good: a quarter cheaper, a twentieth more, a week longer.
 */
import type { SeasonVariant } from '../../../shared/schemas/season.ts'
import { reckonSeason, type Reckoning } from './reckon-season.ts'

type Harvest = Pick<SeasonVariant, 'harvest' | 'factors'>

export const harvests: readonly Harvest[] = [
  { harvest: 'poor', factors: { fruitPrice: 1.5, yield: 0.9, seasonWeeks: -1 } },
  { harvest: 'good', factors: { fruitPrice: 0.75, yield: 1.05, seasonWeeks: 1 } },
]

export function variantOf({ harvest, factors }: Harvest, reckoning: Reckoning): SeasonVariant {
  const scaled = (value: number) => value * factors.yield
  const kinds = reckoning.kinds.map((kind) => ({
    ...kind,
    lPerKg: {
      value: scaled(kind.lPerKg.value),
      low: scaled(kind.lPerKg.low),
      high: scaled(kind.lPerKg.high),
    },
  }))
  const { fruitPrice, seasonWeeks } = factors
  const reckoned = reckonSeason({ ...reckoning, kinds }, { fruitPrice, seasonWeeks })
  return {
    harvest,
    factors,
    totals: reckoned.totals,
    kinds: kinds.map(({ fruit }, index) => ({
      kindId: fruit.id,
      plannedMl: reckoned.plannedMl[index] ?? 0,
      shortMl: reckoned.shortMl[index] ?? 0,
    })),
    isProven: reckoned.solved.isProven,
  }
}
