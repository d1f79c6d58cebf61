/** The season's facts as the question that the program is made of. */
import type { KindRecipe } from './kind-recipe.ts'
import type { Otherwise, SeasonFacts } from './season-facts.ts'
import { everyFourth, startWeeks, type KindAsked } from './season-kinds.ts'
import { pricesOf, type Prices } from './season-prices.ts'
import {
  leastL,
  mostShareOfWanted,
  type JarClass,
  type SeasonQuestion,
  type Taken,
  type Way,
} from './season-program.ts'
import {
  isSameStrength,
  spiritSupplies,
  sweetenerSupplies,
  type SpiritSupply,
  type SweetenerSupply,
} from './season-supplies.ts'
import { mondayMs, msPerWeek } from './weeks.ts'

export interface Asked {
  readonly question: SeasonQuestion
  readonly prices: Prices
  readonly spirits: readonly SpiritSupply[]
  readonly sweeteners: readonly SweetenerSupply[]
  /** Too little to fill even the smallest jar half-way: left out. */
  readonly tooLittle: ReadonlySet<string>
}

/** Less frozen fruit than this starts no batch. */
const leastPantryG = 200

export function seasonQuestion(
  facts: SeasonFacts,
  kinds: readonly KindAsked[],
  otherwise: Otherwise = {},
): Asked {
  const { wishes, pantry } = facts
  const recipes = kinds.flatMap(({ recipe }) => recipe ?? [])
  const spirits = spiritSupplies(recipes, pantry)
  const sweeteners = sweetenerSupplies(recipes, pantry)
  const prices = pricesOf(wishes.prices, facts.lastPaid, otherwise.fruitPrice)
  const classes = jarClasses(facts, otherwise.moreJarMl)
  const ways = kinds.flatMap((kind, kindIndex) =>
    waysOf(kind, kindIndex, { facts, otherwise, prices, spirits, sweeteners }),
  )
  const tooLittle = new Set(
    kinds
      .filter((kind, kindIndex) => {
        const leasts = ways
          .filter((way) => way.kindIndex === kindIndex)
          .map((way) => leastL(way, classes))
        const leastMl = (1000 * Math.min(Infinity, ...leasts)) / mostShareOfWanted
        const { wantedMl } = kind.demand
        return wantedMl > 0 && Number.isFinite(leastMl) && wantedMl < leastMl
      })
      .map(({ fruit }) => fruit.id),
  )
  const { limits } = wishes
  const money = limits.moneyMinor
  const shelf = limits.shelfBottles
  const { bottleMinor = 0, corkMinor = 0, labelMinor = 0 } = prices
  const question: SeasonQuestion = {
    kinds: kinds.map(({ fruit, demand, bottleSizeMl }) => ({
      kindId: fruit.id,
      tiers: tooLittle.has(fruit.id) ? [] : demand.tiers,
      wantedL: tooLittle.has(fruit.id) ? 0 : demand.wantedMl / 1000,
      bottleSizeMl,
    })),
    ways,
    classes,
    ...standingIn(facts, classes),
    cleaningWeeks: wishes.cleaningWeeks,
    spirits: spirits.map(({ strengthPctVol, atHandMl }, index) => ({
      atHand: atHandMl + (index === 0 ? (otherwise.moreSpiritMl ?? 0) : 0),
      minorPerUnit: prices.spiritMinorPerMl(strengthPctVol) ?? 0,
      mayBuy: !limits.isSpiritAtHandOnly,
    })),
    sweeteners: sweeteners.map(({ id, atHandG }) => ({
      atHand: atHandG,
      minorPerUnit: prices.sweetenerMinorPerG(id) ?? 0,
      mayBuy: true,
    })),
    minorPerBottle: bottleMinor + corkMinor + labelMinor,
    moneyMinor: money === undefined ? undefined : money + (otherwise.moreMoneyMinor ?? 0),
    shelfBottles: shelf === undefined ? undefined : shelf + (otherwise.moreBottles ?? 0),
  }
  return { question, prices, spirits, sweeteners, tooLittle }
}

const isWide = (shape: SeasonFacts['jars'][number]['shape']): boolean =>
  shape === 'jar' || shape === 'crock'

/** Jars of one size and width together, the smallest first; an added jar joins those of its size. */
export function jarClasses({ jars }: Pick<SeasonFacts, 'jars'>, moreJarMl?: number): JarClass[] {
  const grouped = Map.groupBy(jars, ({ capacityMl, shape }) => `${capacityMl} ${isWide(shape)}`)
  const classes = [...grouped.values()]
    .map((alike) => ({
      capacityMl: alike[0]?.capacityMl ?? 0,
      isWide: alike.some(({ shape }) => isWide(shape)),
      jarIds: alike.map(({ id }) => id),
    }))
    .sort((a, b) => a.capacityMl - b.capacityMl || Number(b.isWide) - Number(a.isWide))
  const widened = classes.findIndex(({ capacityMl }) => capacityMl === moreJarMl)
  return classes.map((one, index) =>
    index === widened ? { ...one, jarIds: [...one.jarIds, 'one-more'] } : one,
  )
}

function standingIn({ standing, startMs }: SeasonFacts, classes: readonly JarClass[]) {
  const fromMs = mondayMs(startMs)
  const week = (atMs: number, round: (value: number) => number) =>
    Math.max(0, round((atMs - fromMs) / msPerWeek))
  const taken = standing.jars.flatMap(({ jarId, untilMs }): Taken[] => {
    const classIndex = classes.findIndex(({ jarIds }) => jarIds.includes(jarId))
    const untilWeek = week(untilMs, Math.ceil)
    return classIndex < 0 || untilWeek === 0 ? [] : [{ classIndex, untilWeek }]
  })
  const mustSettle = standing.settles.flatMap(({ batchId, fromMs: from, untilMs, volumeMl }) => {
    const toWeek = week(untilMs, Math.ceil)
    return toWeek === 0 ? [] : [{ batchId, fromWeek: week(from, Math.floor), toWeek, volumeMl }]
  })
  return { taken, mustSettle }
}

interface Making extends Omit<Asked, 'question' | 'tooLittle'> {
  readonly facts: SeasonFacts
  readonly otherwise: Otherwise
}

function waysOf(kind: KindAsked, kindIndex: number, making: Making): Way[] {
  const { recipe, fruit } = kind
  if (!recipe) return []
  const base = wayOf(kind, kindIndex, recipe, making)
  const minorPerKg = recipe.fruits.reduce(
    (sum, { fruitId, share }) => sum + share * (making.prices.fruitMinorPerKg(fruitId) ?? 0),
    0,
  )
  const fresh: Way = {
    ...base,
    source: 'fresh',
    starts: startWeeks(kind, making.otherwise.seasonWeeks),
    mostKg: Infinity,
    fruitMinorPerKg: minorPerKg,
  }
  const pantryG = making.facts.pantry.fruits
    .filter(({ fruitId }) => fruitId === fruit.id)
    .reduce((sum, { massG }) => sum + massG, 0)
  if (pantryG < leastPantryG || recipe.fruits.length > 1) return [fresh]
  return [fresh, { ...base, source: 'pantry', starts: everyFourth(), mostKg: pantryG / 1000 }]
}

function wayOf(
  { lPerKg }: KindAsked,
  kindIndex: number,
  recipe: KindRecipe,
  { spirits, sweeteners }: Making,
): Way {
  return {
    kindIndex,
    source: 'pantry',
    starts: [],
    mostKg: Infinity,
    lPerKg: lPerKg.value,
    steepMlPerKg: recipe.steepMlPerKg,
    settleMlPerKg: recipe.settleMlPerKg,
    emptiedWeek: Math.ceil(recipe.emptiedDay / 7),
    settleFromWeek: Math.floor(recipe.drawnDay / 7),
    settleToWeek: Math.ceil(recipe.bottledDay / 7),
    fruitMinorPerKg: 0,
    spiritMlPerKg: spirits.map(({ strengthPctVol }) =>
      recipe.spirits
        .filter((spirit) => isSameStrength(spirit.strengthPctVol, strengthPctVol))
        .reduce((sum, { mlPerKg }) => sum + mlPerKg, 0),
    ),
    sweetenerGPerKg: sweeteners.map(({ id }) =>
      recipe.sweetener.id === id ? recipe.sweetener.gPerKg : 0,
    ),
  }
}
