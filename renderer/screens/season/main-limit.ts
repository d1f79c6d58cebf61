/** The limit that most of the shortage is due to. */
import type { SeasonLimit, SeasonPlan } from '../../../shared/schemas/season.ts'

export function mainLimit({ kinds }: Pick<SeasonPlan, 'kinds'>): SeasonLimit | undefined {
  const shortBy = new Map<SeasonLimit, number>()
  for (const { cutBy, shortMl } of kinds) {
    const [first] = cutBy
    if (first !== undefined) shortBy.set(first, (shortBy.get(first) ?? 0) + shortMl)
  }
  return [...shortBy].toSorted((a, b) => b[1] - a[1])[0]?.[0]
}
