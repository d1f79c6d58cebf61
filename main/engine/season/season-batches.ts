/** Each load as a batch on paper: in its jars, with its dates, run through the engine once more. */
import type { Jar } from '../../../shared/schemas/cellar.ts'
import type { DraftSpec, DraftVessel } from '../../../shared/schemas/drafts.ts'
import type { SeasonBatch } from '../../../shared/schemas/season.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { DraftFacts } from '../drafting/buying.ts'
import { outcomeOf } from '../drafting/outcome.ts'
import { scaledDraft } from '../drafting/scale-draft.ts'
import type { KindRecipe } from './kind-recipe.ts'
import { shareOf, type PlacedLoad } from './placed-loads.ts'
import type { SeasonFacts } from './season-facts.ts'
import type { KindAsked } from './season-kinds.ts'
import type { Prices } from './season-prices.ts'
import { instant, mondayMs, weekStartMs } from './weeks.ts'

export interface BatchMaking {
  readonly facts: SeasonFacts
  readonly kinds: readonly KindAsked[]
  readonly prices: Prices
  readonly draftFacts: DraftFacts
}

/** A draft names at most so many steeping jars. */
const mostSteepJars = 6
const longestName = 120
const daysPerMonth = 30.44

export function seasonBatch(placedLoad: PlacedLoad, making: BatchMaking): SeasonBatch {
  const { load, way, key, steepJarIds, settleJarIds } = placedLoad
  const { fruit, lPerKg, bottleSizeMl, recipe } = making.kinds[way.kindIndex] as KindAsked
  const { jars, startMs: firstMs } = making.facts
  const startMs = weekStartMs(mondayMs(firstMs), load.week)
  const capacityOf = new Map(jars.map(({ id, capacityMl }) => [id, capacityMl]))
  const filled = (wholeMl: number, jarIds: readonly string[]) => (jarId: string) => {
    const fillMl = shareOf(wholeMl, jarId, jarIds, capacityOf)
    return { jarId, fillMl, fillShare: fillMl / (capacityOf.get(jarId) ?? 1) }
  }
  const fruitG = load.kg * 1000
  const steepJars = steepJarIds.map((jarId) => ({
    ...filled(load.kg * way.steepMlPerKg, steepJarIds)(jarId),
    fruitG: shareOf(fruitG, jarId, steepJarIds, capacityOf),
  }))
  const settleJars = settleJarIds.map(filled(load.kg * way.settleMlPerKg, settleJarIds))
  const spec = specOf(placedLoad, recipe as KindRecipe, startMs, bottleSizeMl, making)
  const { bottles, bottledMl, remainderMl, bottledAt, warnings } = outcomeOf(
    spec,
    making.draftFacts,
  )
  const volumeMl = {
    value: load.kg * lPerKg.value * 1000,
    low: load.kg * lPerKg.low * 1000,
    high: load.kg * lPerKg.high * 1000,
  }
  const madeMl = bottledMl + remainderMl
  const bottledMs = bottledAt
    ? Date.parse(bottledAt)
    : startMs + (recipe?.bottledDay ?? 0) * msPerDay
  const restDays = (fruit.restMonths?.typical ?? 6) * daysPerMonth
  return {
    key,
    kindId: fruit.id,
    source: way.source,
    week: load.week,
    fruitG,
    volumeMl,
    bottleSizeMl,
    bottles: Math.floor(volumeMl.value / bottleSizeMl + 1e-6),
    startAt: instant(startMs),
    drawnAt: instant(startMs + (recipe?.drawnDay ?? 0) * msPerDay),
    bottledAt: instant(bottledMs),
    readyAt: instant(bottledMs + restDays * msPerDay),
    steepJars,
    settleJars,
    spec,
    replay: {
      bottles,
      volumeMl: madeMl,
      isWithinBand:
        madeMl >= volumeMl.low - 1 &&
        madeMl <= volumeMl.high + 1 &&
        warnings.every(({ code }) => code !== 'refused' && code !== 'overBrim'),
    },
  }
}

function specOf(
  { load, way, steepJarIds, settleJarIds }: PlacedLoad,
  recipe: KindRecipe,
  startMs: number,
  bottleSizeMl: number,
  { facts, prices, draftFacts }: BatchMaking,
): DraftSpec {
  const scaled = scaledDraft(recipe.spec, { by: 'fruit', massG: load.kg * 1000 }, draftFacts)
  const { bottleMinor } = prices
  const sweetenerMinorPerG = prices.sweetenerMinorPerG(scaled.sweetenerId)
  return {
    ...scaled,
    startAt: instant(startMs),
    bottleSizeMl,
    fruits: scaled.fruits.map((fruit) => {
      const minorPerKg = prices.fruitMinorPerKg(fruit.fruitId)
      return {
        ...fruit,
        ...(way.source === 'pantry' && { cut: 'frozen' as const }),
        ...(way.source === 'fresh' && minorPerKg !== undefined && { priceMinorPerKg: minorPerKg }),
      }
    }),
    spirits: scaled.spirits.map((spirit) => {
      const minorPerMl = prices.spiritMinorPerMl(spirit.strengthPctVol)
      return { ...spirit, ...(minorPerMl !== undefined && { priceMinorPerL: minorPerMl * 1000 }) }
    }),
    ...(sweetenerMinorPerG !== undefined && {
      sweetenerPriceMinorPerKg: sweetenerMinorPerG * 1000,
    }),
    ...(bottleMinor !== undefined && { bottlePriceMinor: bottleMinor }),
    vessels: vesselsOf(steepJarIds, settleJarIds, facts),
  }
}

/** A draft knows one jar for an extract: several stand in it as one that holds as much as all. */
function vesselsOf(
  steepJarIds: readonly string[],
  settleJarIds: readonly string[],
  { jars }: SeasonFacts,
): DraftSpec['vessels'] {
  const jarsOf = (ids: readonly string[]) => jars.filter(({ id }) => ids.includes(id))
  const own = jarsOf(steepJarIds).map(vesselOf)
  const steep = [...own.slice(0, mostSteepJars - 1), ...together(own.slice(mostSteepJars - 1))]
  return { steep, extracts: together(jarsOf(settleJarIds).map(vesselOf)) }
}

const vesselOf = ({ id, name, shape, capacityMl }: Jar): DraftVessel => ({
  jarId: id,
  name,
  shape,
  capacityMl,
})

/** One jar stays what it is. */
function together(vessels: readonly DraftVessel[]): DraftVessel[] {
  const [first] = vessels
  if (!first || vessels.length === 1) return [...vessels]
  return [
    {
      name: vessels
        .map(({ name }) => name)
        .join(' + ')
        .slice(0, longestName),
      shape: first.shape,
      capacityMl: vessels.reduce((sum, { capacityMl }) => sum + capacityMl, 0),
    },
  ]
}
