/** Which limits a season reaches, and which of them each kind that is short is short for. */
import type { SeasonBinding, SeasonLimit, SeasonSpan } from '../../../shared/schemas/season.ts'
import type { SeasonFacts } from './season-facts.ts'
import { startWeeks, type KindAsked } from './season-kinds.ts'
import type { JarClass } from './season-program.ts'
import { jarClasses } from './season-question.ts'
import type { Reckoned } from './reckon-season.ts'

/** Whole bottles are counted, parts of them planned: the last tenth of a limit is no room. */
const usedUp = 0.9

export function bindingLimits(
  facts: SeasonFacts,
  kinds: readonly KindAsked[],
  reckoned: Reckoned,
): SeasonBinding[] {
  const { totals, shortMl, placed, asked } = reckoned
  const shortIds = kinds.flatMap(({ fruit }, index) => ((shortMl[index] ?? 0) > 0 ? fruit.id : []))
  if (shortIds.length === 0) return []
  const { limits } = facts.wishes
  const binding: SeasonBinding[] = []
  const reached = (
    limit: SeasonLimit,
    unit: SeasonBinding['unit'],
    used: number,
    of: number | undefined,
  ) => {
    if (of !== undefined && used >= usedUp * of)
      binding.push({ limit, used, of, unit, weeks: [], kindIds: shortIds })
  }
  for (const jarClass of jarClasses(facts)) {
    const weeks = fullWeeks(jarClass, placed.spans)
    const kindIds = kinds.flatMap((kind, index) =>
      (shortMl[index] ?? 0) > 0 && stands(kind, weeks) ? kind.fruit.id : [],
    )
    const count = jarClass.jarIds.length
    const { capacityMl } = jarClass
    if (kindIds.length > 0)
      binding.push({
        limit: 'jars',
        used: count,
        of: count,
        unit: 'jars',
        capacityMl,
        weeks,
        kindIds,
      })
  }
  reached('money', 'minor', totals.moneyMinor, limits.moneyMinor)
  reached('shelf', 'bottles', totals.bottles, limits.shelfBottles)
  if (limits.isSpiritAtHandOnly) {
    const atHandMl = asked.spirits.reduce((sum, one) => sum + one.atHandMl, 0)
    const usedMl = totals.spirits.reduce((sum, { volumeMl }) => sum + volumeMl, 0)
    reached('spirit', 'ml', usedMl, atHandMl)
  }
  const closed = kinds.flatMap((kind, index) =>
    (shortMl[index] ?? 0) > 0 && startWeeks(kind).length === 0 ? kind.fruit.id : [],
  )
  if (closed.length > 0)
    binding.push({ limit: 'fruitWeeks', used: 0, of: 0, unit: 'weeks', weeks: [], kindIds: closed })
  return binding
}

/** Weeks of the year in which every jar of the size is taken, or being washed. */
function fullWeeks({ jarIds }: JarClass, spans: readonly SeasonSpan[]): number[] {
  const own = spans.filter(({ jarId }) => jarIds.includes(jarId))
  return Array.from({ length: 52 }, (_, week) => week).filter((week) => {
    const taken = own.filter(({ fromWeek, toWeek }) => fromWeek <= week && week < toWeek)
    return new Set(taken.map(({ jarId }) => jarId)).size >= jarIds.length
  })
}

/** Whether a batch of the kind could stand in a jar in one of those weeks. */
function stands(kind: KindAsked, weeks: readonly number[]): boolean {
  const { recipe } = kind
  if (!recipe) return false
  const longest = Math.ceil(recipe.bottledDay / 7)
  return startWeeks(kind).some((start) =>
    weeks.some((week) => week >= start.week && week < start.week + longest),
  )
}

/** Why a kind is short, or kept low: what is known without asking the program again. */
export function cutBy(
  kind: KindAsked,
  shortMl: number,
  binding: readonly SeasonBinding[],
): SeasonLimit[] {
  const { demand, fruit } = kind
  const neededMl = demand.needs.reduce((sum, { volumeMl }) => sum + volumeMl, 0)
  const isCapped = demand.atMostMl !== undefined && neededMl > demand.atMostMl
  const limits = binding.filter(({ kindIds }) => kindIds.includes(fruit.id)).map((b) => b.limit)
  const own: SeasonLimit[] = shortMl > 0 ? (limits.length > 0 ? limits : ['jars']) : []
  return [...new Set<SeasonLimit>([...own, ...(isCapped ? (['wish'] as const) : [])])]
}
