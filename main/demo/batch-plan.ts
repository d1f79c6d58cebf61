/** One batch of the demo as it was meant, and when each of its stages falls due. */
import { fruitOf } from '../engine/index.ts'
import type { Laid } from './bottle-years.ts'
import type { CellarHand } from './cellar-hand.ts'
import type { Diary } from './diary.ts'
import type { BlendGift, HouseBlend } from './house-blend.ts'
import type { HouseKind } from './house-kinds.ts'
import type { Mishap } from './mishap.ts'
import type { OpenedBottles } from './opened-bottles.ts'
import type { PantryKeeper } from './pantry-keeper.ts'
import type { Noise } from './seeded-noise.ts'

export interface BatchPlan {
  readonly kind: HouseKind
  readonly startMs: number
  readonly fruitKg: number
  readonly isFromFreezer: boolean
  /** A season in which nobody had time to write, stir or press. */
  readonly isSparse: boolean
  readonly mishaps: readonly Mishap[]
  readonly gift?: BlendGift
}

/** Room that a kilogram of fruit asks for: loose before the spirit, or soaked and covered. */
export function litresPerKg({ ingredients, kgPerLSpirit, layerSugarShare }: HouseKind): number {
  const { bulkDensityKgPerL } = fruitOf(ingredients[0].fruitId)
  return Math.max(1 / bulkDensityKgPerL, 1 + 1 / kgPerLSpirit + 0.62 * layerSugarShare)
}

/** Where a batch of the demo is kept while it is being told. */
export interface BatchStory {
  readonly plan: BatchPlan
  readonly batchId: string
  readonly hand: CellarHand
  readonly diary: Diary
  readonly pantry: PantryKeeper
  readonly noise: Noise
  readonly blend: HouseBlend
  readonly opened: OpenedBottles
  readonly laid: Laid[]
  /** Drops what remains of the story: the batch was thrown away. */
  isOver: boolean
  /** As planned, or what the jar at hand would take. */
  fruitKg: number
  fruitJarId: string
  extractJarId: string
  /** What the extract's jar takes. */
  extractRoomMl: number
  /** Sugar draw and pressings, until they are married to the first extract. */
  secondJarId: string
}

/** Days from the start to each stage; what a kind does without falls on the stage before it. */
export interface Rhythm {
  readonly drawOff: number
  readonly cover: number
  readonly pourOff: number
  readonly press: number
  readonly marry: number
  readonly filter: number
  readonly bottle: number
}

export function rhythmOf({ steepDays, drawSugarShare }: HouseKind): Rhythm {
  const cover = steepDays + (drawSugarShare > 0 ? 2 : 0)
  const pourOff = cover + (drawSugarShare > 0 ? 8 : 0)
  const press = pourOff + 1
  const marry = press + 4
  const filter = marry + 24
  return { drawOff: steepDays, cover, pourOff, press, marry, filter, bottle: filter + 6 }
}
