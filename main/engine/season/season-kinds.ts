/** The kinds of a season made ready: how each is made, in which weeks, and how much is wanted of it. */
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { SeasonNotice, Supply } from '../../../shared/schemas/season.ts'
import type { Banded } from '../../../shared/schemas/steeping.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { DraftFacts } from '../drafting/buying.ts'
import { demandOf, type Demand } from './demand.ts'
import { supplyOf } from './fruit-calendar.ts'
import { isAllYear } from './fruit-windows.ts'
import { recipeOf, usualRecipe, type KindRecipe } from './kind-recipe.ts'
import { learnedDates } from './learned-dates.ts'
import type { KnownRecipe, SeasonFacts, StockOfKind } from './season-facts.ts'
import type { StartWeek } from './season-program.ts'
import { seasonYield } from './season-yield.ts'
import { instant, mondayMs, weekStartMs, weeksShown } from './weeks.ts'

export interface KindAsked {
  readonly fruit: Fruit
  readonly stock: StockOfKind
  readonly inJarsMl: number
  /** Undefined where the engine could make nothing of it. */
  readonly recipe: KindRecipe | undefined
  readonly known: KnownRecipe | undefined
  readonly lPerKg: Banded
  readonly yieldBatchIds: readonly string[]
  readonly supply: readonly Supply[]
  readonly readyMs: number
  readonly demand: Demand
  readonly bottleSizeMl: number
}

const daysPerMonth = 30.44
const usualRestMonths = 6

export interface KindsAsked {
  readonly kinds: readonly KindAsked[]
  readonly notices: readonly SeasonNotice[]
}

export function seasonKinds(facts: SeasonFacts): KindsAsked {
  const byId = new Map(facts.fruits.map((fruit) => [fruit.id, fruit]))
  const draftFacts: DraftFacts = {
    fruitOf: (id) => {
      const fruit = byId.get(id)
      if (!fruit) throw new RangeError(`fruit is ${id}, not among those of the season`)
      return fruit
    },
  }
  const wished = facts.wishes.wishes.map(({ kindId }) => kindId)
  const ids = [...new Set([...facts.stocks.map(({ kindId }) => kindId), ...wished])]
  const kinds = ids.flatMap((id) => {
    const fruit = byId.get(id)
    return fruit ? [kindAsked(facts, fruit, draftFacts)] : []
  })
  return {
    kinds,
    notices: kinds.flatMap(({ fruit, recipe, supply, demand }): SeasonNotice[] => [
      ...(recipe ? [] : [{ code: 'recipeRefused', kindId: fruit.id } as const]),
      ...(demand.wantedMl > 0 && supply.every((week) => week === 'none' || week === 'maybe')
        ? [{ code: 'neverInSeason', kindId: fruit.id } as const]
        : []),
    ]),
  }
}

function kindAsked(facts: SeasonFacts, fruit: Fruit, draftFacts: DraftFacts): KindAsked {
  const { region, wishes, nowMs } = facts
  const startMs = mondayMs(facts.startMs)
  const days = facts.fresh.filter(({ fruitId }) => fruitId === fruit.id)
  const supply = supplyOf({ fruit, region }, learnedDates({ fruit, region }, days), startMs).weeks
  const known = facts.recipes.find(({ kindId }) => kindId === fruit.id)
  const kept = known && plausible(recipeOf(known.spec, draftFacts), fruit)
  const recipe =
    kept ?? usualRecipe(fruit, wishes.spiritPctVol, instant(startMs), draftFacts) ?? undefined
  const own = facts.ownYields.find(({ fruitId }) => fruitId === fruit.id)
  const { edibleFraction } = fruit.composition
  const stock = facts.stocks.find(({ kindId }) => kindId === fruit.id) ?? noStock(fruit.id)
  const inJarsMl = facts.standing.toCome
    .filter(({ kindId }) => kindId === fruit.id)
    .reduce((sum, { volumeMl }) => sum + volumeMl, 0)
  const restDays = (fruit.restMonths?.typical ?? usualRestMonths) * daysPerMonth
  const readyMs =
    weekStartMs(startMs, typicalWeek(fruit, supply)) +
    ((recipe?.bottledDay ?? 0) + restDays) * msPerDay
  const ownWishes = wishes.wishes.filter(({ kindId }) => kindId === fruit.id)
  return {
    fruit,
    stock,
    inJarsMl,
    recipe,
    known: kept ? known : undefined,
    lPerKg: seasonYield(
      recipe?.lPerKg ?? 0,
      own && { own: own.own * edibleFraction, batchIds: own.batchIds },
    ),
    yieldBatchIds: own?.batchIds ?? [],
    supply,
    readyMs,
    demand: demandOf({
      stockMl: stock.volumeMl + inJarsMl,
      perYearMl: stock.perYearMl,
      nowMs,
      readyMs,
      reserveMonths: wishes.reserveMonths,
      wishes: ownWishes,
    }),
    bottleSizeMl:
      ownWishes.find(({ bottleSizeMl }) => bottleSizeMl !== undefined)?.bottleSizeMl ??
      wishes.bottleSizeMl,
  }
}

const noStock = (kindId: string): StockOfKind => ({
  kindId,
  volumeMl: 0,
  perYearMl: { value: 0, low: 0, high: 0 },
  givenShare: 0,
  isOwnHistory: false,
})

/** A recipe read off a batch with mistakes gives odd litres: then the usual way is the better guide. */
function plausible(recipe: KindRecipe | undefined, fruit: Fruit): KindRecipe | undefined {
  if (!recipe || recipe.settleMlPerKg <= 0 || recipe.steepMlPerKg <= 0) return undefined
  const isLeading = recipe.fruits.some(({ fruitId, share }) => fruitId === fruit.id && share >= 0.5)
  return isLeading ? recipe : undefined
}

/** The middle of plenty, of the season, or this week where it is sold all year. */
function typicalWeek(fruit: Fruit, supply: readonly Supply[]): number {
  if (isAllYear(fruit)) return 0
  const of = (wanted: Supply) => supply.flatMap((week, index) => (week === wanted ? index : []))
  const weeks = [of('plenty'), of('likely')].find((found) => found.length > 0) ?? [0]
  return weeks[Math.floor(weeks.length / 2)] as number
}

/** Sold all year: every fourth week. A long season: so many weeks of it, the first among them. */
const allYearEvery = 4
const mostStarts = 9

export function startWeeks(
  kind: Pick<KindAsked, 'fruit' | 'supply'>,
  seasonWeeks = 0,
): StartWeek[] {
  const { fruit, supply } = kind
  if (isAllYear(fruit)) return everyFourth()
  const open = supply.map((week) => week === 'plenty' || week === 'likely')
  const plenty = supply.flatMap((week, index) => (week === 'plenty' ? index : []))
  const weeks = stretched(open, seasonWeeks)
  const step = Math.ceil(weeks.length / mostStarts)
  return weeks
    .filter((_, index) => index % step === 0)
    .map((week) => ({
      week,
      weeksFromPlenty: Math.min(...plenty.map((one) => Math.abs(one - week)), 26) % 26,
    }))
}

export const everyFourth = (): StartWeek[] =>
  Array.from({ length: Math.ceil(weeksShown / allYearEvery) }, (_, index) => ({
    week: index * allYearEvery,
    weeksFromPlenty: 0,
  }))

/** Open weeks with so many more on either side of each stretch, or so many fewer. */
function stretched(open: readonly boolean[], by: number): number[] {
  return open.flatMap((_, week) => {
    const around = open.slice(Math.max(0, week - Math.abs(by)), week + Math.abs(by) + 1)
    return (by >= 0 ? around.some(Boolean) : around.every(Boolean)) ? [week] : []
  })
}
