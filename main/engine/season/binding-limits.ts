/** Which limits a season reaches, by why its kinds are short, and which of them cut a kind. */
import type { SeasonBinding, SeasonLimit, SeasonSpan } from '../../../shared/schemas/season.ts'
import type { SeasonFacts } from './season-facts.ts'
import { startWeeks, type KindAsked } from './season-kinds.ts'
import type { JarClass } from './season-program.ts'
import { jarClasses } from './season-question.ts'
import type { Reckoned } from './reckon-season.ts'
import { shortReasons } from './short-reasons.ts'

/** Why each kind is short, in their order. */
export function reasonsBehind(
  kinds: readonly KindAsked[],
  { asked, solved, shortMl }: Reckoned,
): SeasonLimit[][] {
  const found = shortReasons(asked.question, solved)
  return kinds.map(({ fruit }, index) => {
    if ((shortMl[index] ?? 0) === 0) return []
    return asked.tooLittle.has(fruit.id) ? ['tooLittle'] : (found[index] ?? [])
  })
}

export function bindingLimits(
  facts: SeasonFacts,
  kinds: readonly KindAsked[],
  { totals, placed, asked }: Reckoned,
  reasons: readonly (readonly SeasonLimit[])[],
): SeasonBinding[] {
  const { limits } = facts.wishes
  const shortOf = (limit: SeasonLimit): KindAsked[] =>
    kinds.filter((_, index) => reasons[index]?.includes(limit))
  const reached = (
    limit: SeasonBinding['limit'],
    unit: SeasonBinding['unit'],
    used: number,
    of = 0,
  ): SeasonBinding[] => {
    const kindIds = shortOf(limit).map(({ fruit }) => fruit.id)
    return kindIds.length > 0 ? [{ limit, used, of, unit, weeks: [], kindIds }] : []
  }
  const spirit = {
    atHandMl: asked.spirits.reduce((sum, one) => sum + one.atHandMl, 0),
    usedMl: totals.spirits.reduce((sum, { volumeMl }) => sum + volumeMl, 0),
  }
  return [
    ...fullJars(facts, shortOf('jars'), placed.spans),
    ...reached('money', 'minor', totals.moneyMinor, limits.moneyMinor),
    ...reached('shelf', 'bottles', totals.bottles, limits.shelfBottles),
    ...reached('spirit', 'ml', spirit.usedMl, spirit.atHandMl),
    ...reached('fruitWeeks', 'weeks', 0),
  ]
}

/** Sizes of which every jar is taken in weeks that a kind short of jars would want; then no two at once. */
function fullJars(
  facts: SeasonFacts,
  short: readonly KindAsked[],
  spans: readonly SeasonSpan[],
): SeasonBinding[] {
  const ofSizes = jarClasses(facts).flatMap((jarClass): SeasonBinding[] => {
    const weeks = fullWeeks(jarClass, spans)
    const kindIds = short.filter((kind) => stands(kind, weeks)).map(({ fruit }) => fruit.id)
    const count = jarClass.jarIds.length
    const { capacityMl } = jarClass
    return kindIds.length === 0
      ? []
      : [{ limit: 'jars', used: count, of: count, unit: 'jars', capacityMl, weeks, kindIds }]
  })
  const told = new Set(ofSizes.flatMap(({ kindIds }) => kindIds))
  const kindIds = short.map(({ fruit }) => fruit.id).filter((id) => !told.has(id))
  const count = facts.jars.length
  return kindIds.length === 0 || count === 0
    ? ofSizes
    : [...ofSizes, { limit: 'jars', used: count, of: count, unit: 'jars', weeks: [], kindIds }]
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

/** Why a kind is short, and whether it is kept low by a wish. */
export function cutBy({ demand }: KindAsked, reasons: readonly SeasonLimit[]): SeasonLimit[] {
  const neededMl = demand.needs.reduce((sum, { volumeMl }) => sum + volumeMl, 0)
  const isCapped = demand.atMostMl !== undefined && neededMl > demand.atMostMl
  return [...reasons, ...(isCapped ? (['wish'] as const) : [])]
}
