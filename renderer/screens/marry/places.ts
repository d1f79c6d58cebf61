/** What a blend can be made of, as this screen shows it: name, amount, and how it is drawn. */
import { bottleBrimMl } from '../../parts/vessel/bottle-brim.ts'
import type {
  Batch,
  BottleLot,
  Jar,
  JarContents,
  Liquid,
  PantryLot,
} from '../../../shared/schemas/cellar.ts'
import type { AmountUnit } from '../../../shared/schemas/marrying.ts'
import type { VesselShape } from '../../parts/vessel/vessel-profiles.ts'

export const tap = 'outside:tap'
/** Citric acid that the pantry has not: bought for the blend. */
export const acid = 'outside:acid'

export type PlaceKind = 'extract' | 'spirit' | 'sweetener' | 'acid' | 'water'

export interface Drawn {
  readonly shape: VesselShape
  readonly capacityMl: number
  readonly fillMl: number
  readonly liquidMl: number
  readonly pulpMl: number
  readonly bedMl: number
  readonly colour: string | undefined
}

export interface PlaceShown {
  readonly place: string
  readonly group: 'jars' | 'bottles' | 'pantry'
  readonly kind: PlaceKind
  readonly name: string
  readonly unit: AmountUnit
  /** Undefined where there is no end. */
  readonly there: number | undefined
  readonly liquid: Liquid | undefined
  /** Its liquid once the sugar at the bottom has dissolved; the same where none lies there. */
  readonly settled?: Liquid | undefined
  readonly drawn: Drawn | undefined
  readonly batchId: string | undefined
  /** The batch it is of, where the name does not say it. */
  readonly batchName: string | undefined
}

/** Less than this is a wet jar or an empty bag. */
const least = 0.5

export function jarShown(
  { jar, contents }: { jar: Jar; contents?: JarContents | undefined },
  batch: Pick<Batch, 'name' | 'colour'> | undefined,
): PlaceShown | undefined {
  const liquid = contents?.liquid
  if (!contents || !liquid || liquid.volumeMl < least) return undefined
  return {
    place: `jar:${jar.id}`,
    group: 'jars',
    kind: 'extract',
    name: jar.name,
    unit: 'ml',
    there: liquid.volumeMl,
    liquid,
    settled: (contents.fruits.length === 0 && contents.resting) || liquid,
    drawn: {
      shape: jar.shape,
      capacityMl: jar.capacityMl,
      fillMl: contents.fillMl,
      liquidMl: liquid.volumeMl,
      pulpMl: contents.heldMl + contents.pulpMl,
      bedMl: contents.bedMl,
      colour: batch?.colour,
    },
    batchId: contents.batchId,
    batchName: batch?.name,
  }
}

/** Spirit, sugar and acid stand in what they were bought in: drawn as full as they are still. */
export function lotShown(lot: PantryLot, name: string): PlaceShown | undefined {
  const { kind } = lot.goods
  const isSpirit = kind === 'spirit'
  const there = isSpirit ? (lot.volumeMl ?? 0) : lot.massG
  if (kind === 'fruit' || there < least) return undefined
  const bought = isSpirit ? (lot.boughtVolumeMl ?? there) : lot.boughtMassG * powderMlPerG
  const standsMl = isSpirit ? there : there * powderMlPerG
  return {
    place: `lot:${lot.id}`,
    group: 'pantry',
    kind,
    name,
    unit: isSpirit ? 'ml' : 'g',
    there,
    liquid: undefined,
    drawn: {
      shape: isSpirit ? 'flask' : 'crock',
      capacityMl: Math.max(bought, standsMl, 1) * brim,
      fillMl: standsMl,
      liquidMl: isSpirit ? standsMl : 0,
      pulpMl: 0,
      bedMl: isSpirit ? 0 : standsMl,
      colour: lotInk[kind],
    },
    batchId: undefined,
    batchName: undefined,
  }
}

const lotInk = { spirit: 'var(--strength)', sweetener: 'var(--sugar)', acid: 'var(--ink-quiet)' }

/** Loose sugar, and citric acid, take about this room; common practice. */
const powderMlPerG = 1.2
const brim = 1.05

export function bottlesShown(
  lot: BottleLot,
  name: string,
  colour: string | undefined,
): PlaceShown | undefined {
  if (lot.count === 0) return undefined
  const { bottleSizeMl } = lot
  return {
    place: `bottles:${lot.id}`,
    group: 'bottles',
    kind: 'extract',
    name,
    unit: 'bottles',
    there: lot.count,
    liquid: lot.liquid,
    drawn: {
      shape: 'bottle',
      capacityMl: bottleBrimMl(bottleSizeMl),
      fillMl: bottleSizeMl,
      liquidMl: bottleSizeMl,
      pulpMl: 0,
      bedMl: 0,
      colour,
    },
    batchId: lot.batchId,
    batchName: undefined,
  }
}

export const endless = (place: string, name: string, kind: 'water' | 'acid'): PlaceShown => ({
  place,
  group: 'pantry',
  kind,
  name,
  unit: kind === 'water' ? 'ml' : 'g',
  there: undefined,
  liquid: undefined,
  drawn: undefined,
  batchId: undefined,
  batchName: undefined,
})
