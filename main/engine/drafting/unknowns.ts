/**
 * The amounts of a draft that a solve may turn, as plain numbers: 1 is the amount it began with.
 * Fruit sets the size of everything that is not pinned; the others are told against the fruit, so
 * that a larger batch of the same kind is one number away.
 */
import type { DraftPin, DraftSpec } from '../../../shared/schemas/drafts.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import { chargedKg, steepingLiquor } from './windows.ts'

export interface Unknown {
  readonly pin: DraftPin
  readonly start: number
  readonly low: number
  readonly high: number
  /** How unwilling a maker would be to turn this one rather than another. */
  readonly pull: number
}

/**
 * How far a solve may go: within the library's windows; with spirit added at the end as well, which
 * costs most for least taste; or as far as physics lets it.
 */
export type Reach = 'window' | 'fortified' | 'physics'

/** Of the smallest and the largest batch against the one begun with. */
const scaleReach = { low: 1e-3, high: 1e4 }

export function unknownsOf(
  spec: DraftSpec,
  pins: readonly DraftPin[],
  fruit: Fruit,
  reach: Reach,
): Unknown[] {
  const ratio = ratioBounds(spec, fruit, reach)
  const drawSugarG = spec.sugarDraws.reduce((sum, { sugarG }) => sum + sugarG, 0)
  const all: Unknown[] = [
    { pin: 'fruit', start: 1, ...scaleReach, pull: 0.001 },
    { pin: 'spirit', start: 1, ...ratio, pull: 1 },
    // Spirit is cut before it meets the fruit, or not at all: never the other way.
    { pin: 'steepWater', start: 1, low: 0, high: spec.steepWaterMl > 0 ? 1 : 0, pull: 1.5 },
    {
      pin: 'layeringSugar',
      start: 1,
      low: 0,
      high: spec.layeringSugarG > 0 ? 1 : 0,
      pull: 0.8,
    },
    { pin: 'drawSugar', start: 1, low: 0.05, high: drawSugarG > 0 ? 1 : 0.05, pull: 1 },
    { pin: 'finishWater', start: finishStart(spec).water, low: 0, high: 30, pull: 0.05 },
    { pin: 'finishSugar', start: finishStart(spec).sugar, low: 0, high: 10, pull: 0.05 },
    { pin: 'finishSpirit', start: finishStart(spec).spirit, low: 0, high: 10, pull: 2 },
  ]
  const isFortified = reach !== 'window' || spec.finishSpiritMl > 0
  return all.filter(
    ({ pin, low, high }) =>
      !pins.includes(pin) && low < high && (pin !== 'finishSpirit' || isFortified),
  )
}

/** Spirit against the batch's own, so that fruit per litre stays within its window. */
function ratioBounds(spec: DraftSpec, fruit: Fruit, reach: Reach) {
  const wide = { low: 0.1, high: 10 }
  const window = fruit.fruitKgPerLSpirit
  const liquor = steepingLiquor(spec)
  if (reach === 'physics' || !window || !liquor) return wide
  const kgPerL = chargedKg(spec) / (liquor.volumeMl / 1000)
  return {
    low: Math.min(1, Math.max(wide.low, kgPerL / window.high)),
    high: Math.max(1, Math.min(wide.high, window.low > 0 ? kgPerL / window.low : wide.high)),
  }
}

/** A unit of what is added at the end: a litre or a kilogram for each litre of spirit. */
const finishUnit = (spec: DraftSpec): number =>
  spec.spirits.reduce((sum, { volumeMl }) => sum + volumeMl, 0)

const finishStart = (spec: DraftSpec) => ({
  water: spec.finishWaterMl / finishUnit(spec),
  sugar: spec.finishSugarG / finishUnit(spec),
  spirit: spec.finishSpiritMl / finishUnit(spec),
})

/** The draft with the unknowns at the given numbers; what is pinned keeps its amount. */
export function withUnknowns(
  spec: DraftSpec,
  unknowns: readonly Unknown[],
  x: readonly number[],
): DraftSpec {
  const found = new Map(unknowns.map(({ pin }, index) => [pin, x[index] as number]))
  const fruit = found.get('fruit') ?? 1
  const unit = fruit * finishUnit(spec)
  const spirit = found.get('spirit')
  const water = found.get('steepWater')
  // Water that cuts the spirit goes with the spirit; pinned, it keeps its amount.
  const spiritScale = spirit === undefined ? 1 : fruit * spirit
  const layering = found.get('layeringSugar')
  const drawing = found.get('drawSugar')
  const finish = (pin: DraftPin, kept: number): number => {
    const share = found.get(pin)
    return share === undefined ? kept : share * unit
  }
  return {
    ...spec,
    fruits: spec.fruits.map((part) => ({ ...part, massG: fruit * part.massG })),
    spirits: spec.spirits.map((part) => ({ ...part, volumeMl: spiritScale * part.volumeMl })),
    steepWaterMl: water === undefined ? spec.steepWaterMl : water * spiritScale * spec.steepWaterMl,
    layeringSugarG:
      layering === undefined ? spec.layeringSugarG : layering * fruit * spec.layeringSugarG,
    sugarDraws:
      drawing === undefined
        ? spec.sugarDraws
        : spec.sugarDraws.map((draw) => ({ ...draw, sugarG: drawing * fruit * draw.sugarG })),
    finishWaterMl: finish('finishWater', spec.finishWaterMl),
    finishSugarG: finish('finishSugar', spec.finishSugarG),
    finishSpiritMl: finish('finishSpirit', spec.finishSpiritMl),
  }
}
