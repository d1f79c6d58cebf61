/**
 * What has to be bought, in which week, in which shop, for what?
 *
 * Fruit, spirit and sweetener are bought in the week a batch starts, bottles, corks and labels in
 * the week it is bottled. What the pantry has of spirit and sweetener is used up first, in the order
 * of the weeks; so what is bought and what is at hand add up to what the batches take.
 * In: the batches with their recipes, supplies, prices. Out: lines with a key that stays the same
 * for the same goods of the same week. Leaves out: whole packages; amounts are those needed.
 */
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { SeasonBatch, SeasonPurchase, Shop } from '../../../shared/schemas/season.ts'
import type { Prices } from './season-prices.ts'
import { isSameStrength, type SpiritSupply, type SweetenerSupply } from './season-supplies.ts'
import { instant, msPerWeek, weekStartMs } from './weeks.ts'

export interface Buying {
  /** The Monday of week 0. */
  readonly startMs: number
  readonly batches: readonly SeasonBatch[]
  readonly fruitOf: (fruitId: string) => Fruit
  readonly prices: Prices
  readonly spirits: readonly SpiritSupply[]
  readonly sweeteners: readonly SweetenerSupply[]
}

type Amount = 'massG' | 'volumeMl' | 'count'
type Line = Omit<SeasonPurchase, 'key' | 'from' | 'batchKeys'> & { readonly batchKey: string }

export function seasonPurchases(buying: Buying): SeasonPurchase[] {
  const lines = buying.batches.flatMap((batch) => [
    ...fruitLines(batch, buying),
    ...spiritLines(batch, buying),
    ...sweetenerLines(batch, buying),
    ...glassLines(batch, buying),
  ])
  const merged = [...Map.groupBy(lines, (line) => keyOf(line, buying.startMs))]
    .map(([key, alike]) => together(key, alike, buying.startMs))
    .sort((a, b) => a.week - b.week || (a.key < b.key ? -1 : 1))
  return fromPantryFirst(merged, buying).filter((line) => amountOf(line) > leastAmount)
}

const leastAmount = 0.5

const amountOf = ({ massG, volumeMl, count }: Partial<Record<Amount, number | undefined>>) =>
  massG ?? volumeMl ?? count ?? 0

function fruitLines({ spec, source, week, key }: SeasonBatch, { fruitOf, prices }: Buying): Line[] {
  if (source === 'pantry') return []
  return spec.fruits.map(({ fruitId, massG }) => ({
    week,
    shop: shopOf(fruitOf(fruitId)),
    what: 'fruit',
    fruitId,
    massG,
    ...priced(prices.fruitMinorPerKg(fruitId), massG / 1000),
    batchKey: key,
  }))
}

function spiritLines({ spec, week, key }: SeasonBatch, { spirits }: Buying): Line[] {
  return spec.spirits.map(({ strengthPctVol, volumeMl }, index) => ({
    week,
    shop: 'spirits',
    what: 'spirit',
    // The season's own strength, so that a label's rounding makes no second line.
    strengthPctVol:
      spirits.find((one) => isSameStrength(one.strengthPctVol, strengthPctVol))?.strengthPctVol ??
      strengthPctVol,
    volumeMl: volumeMl + (index === 0 ? spec.finishSpiritMl : 0),
    batchKey: key,
  }))
}

function sweetenerLines({ spec, week, key }: SeasonBatch, _buying: Buying): Line[] {
  const drawsG = spec.sugarDraws.reduce((sum, { sugarG }) => sum + sugarG, 0)
  const massG = spec.layeringSugarG + drawsG + spec.finishSugarG
  const { sweetenerId } = spec
  return [{ week, shop: 'grocer', what: 'sweetener', sweetenerId, massG, batchKey: key }]
}

function glassLines(batch: SeasonBatch, { startMs, prices }: Buying): Line[] {
  const week = Math.floor((Date.parse(batch.bottledAt) - startMs) / msPerWeek)
  const { bottles: count, bottleSizeMl, key } = batch
  const each = [
    ['bottle', prices.bottleMinor],
    ['cork', prices.corkMinor],
    ['label', prices.labelMinor],
  ] as const
  return each.map(([what, minor]) => ({
    week,
    shop: 'supplies',
    what,
    count,
    ...(what === 'bottle' && { bottleSizeMl }),
    ...priced(minor, count),
    batchKey: key,
  }))
}

const priced = (minorPerUnit: number | undefined, amount: number) =>
  minorPerUnit === undefined ? {} : { priceMinor: Math.round(minorPerUnit * amount) }

/** What grows in hedges is gathered; spices and what is dried comes from the grocer. */
const gathered = new Set(['sloe', 'rowan', 'hawthorn', 'elderberry', 'elderflower', 'rosehip'])

const shopOf = ({ id, kineticClass, season }: Fruit): Shop => {
  if (gathered.has(id)) return 'hedgerow'
  const isDry = kineticClass === 'dry' || kineticClass === 'driedFruit'
  return isDry && !season ? 'grocer' : 'market'
}

function keyOf(line: Line, startMs: number): string {
  const { what, fruitId, strengthPctVol, sweetenerId, bottleSizeMl, week } = line
  const which = fruitId ?? sweetenerId ?? strengthPctVol ?? bottleSizeMl
  const goods = which === undefined ? what : `${what}:${which}`
  return `${goods}@${instant(weekStartMs(startMs, week)).slice(0, 10)}`
}

function together(key: string, alike: readonly Line[], startMs: number): SeasonPurchase {
  const { batchKey: _, massG, volumeMl, count, priceMinor, ...first } = alike[0] as Line
  const sum = (of: Amount | 'priceMinor') =>
    alike.reduce((total, line) => total + (line[of] ?? 0), 0)
  return {
    ...first,
    key,
    from: instant(weekStartMs(startMs, first.week)),
    ...(massG !== undefined && { massG: sum('massG') }),
    ...(volumeMl !== undefined && { volumeMl: sum('volumeMl') }),
    ...(count !== undefined && { count: sum('count') }),
    ...(priceMinor !== undefined && { priceMinor: sum('priceMinor') }),
    batchKeys: alike.map((line) => line.batchKey),
  }
}

/** In the order of the weeks: what the pantry has is taken off, and only the rest has a price. */
function fromPantryFirst(lines: readonly SeasonPurchase[], buying: Buying): SeasonPurchase[] {
  const { prices } = buying
  const spiritLeft = new Map(buying.spirits.map((one) => [one.strengthPctVol, one.atHandMl]))
  const sweetenerLeft = new Map(buying.sweeteners.map((one) => [one.id, one.atHandG]))
  return lines.map((line) => {
    const { what, strengthPctVol, sweetenerId, volumeMl, massG } = line
    if (what === 'spirit' && strengthPctVol !== undefined && volumeMl !== undefined) {
      const atHandMl = Math.min(volumeMl, spiritLeft.get(strengthPctVol) ?? 0)
      spiritLeft.set(strengthPctVol, (spiritLeft.get(strengthPctVol) ?? 0) - atHandMl)
      const toBuyMl = volumeMl - atHandMl
      const price = priced(prices.spiritMinorPerMl(strengthPctVol), toBuyMl)
      return { ...line, volumeMl: toBuyMl, ...(atHandMl > 0 && { atHandMl }), ...price }
    }
    if (what === 'sweetener' && sweetenerId !== undefined && massG !== undefined) {
      const atHandG = Math.min(massG, sweetenerLeft.get(sweetenerId) ?? 0)
      sweetenerLeft.set(sweetenerId, (sweetenerLeft.get(sweetenerId) ?? 0) - atHandG)
      const toBuyG = massG - atHandG
      const price = priced(prices.sweetenerMinorPerG(sweetenerId), toBuyG)
      return { ...line, massG: toBuyG, ...(atHandG > 0 && { atHandG }), ...price }
    }
    return line
  })
}
