/** What a blend is made of: a part's matter, how much of it may be used, and what it costs. */
import {
  addMatter,
  massOf,
  matterOf,
  noMatter,
  scaleMatter,
  type Matter,
} from '../../../shared/matter.ts'
import type { AmountUnit, Cost, PartLimits } from '../../../shared/schemas/marrying.ts'
import { densityOfWater } from '../solution/density-of-water.ts'
import { liquidVolumeMl } from '../solution/liquid-volume.ts'

export type PartKind = 'extract' | 'spirit' | 'sweetener' | 'water' | 'acid'

export interface BlendPart extends PartLimits {
  /** As the ledger names it, such as `jar:north-shelf`. */
  readonly place: string
  readonly kind: PartKind
  readonly unit: AmountUnit
  /** All that is there; of what has no end, a litre or a kilogram. */
  readonly matter: Matter
  readonly isEndless: boolean
  /** Of all that is there. */
  readonly cost: Cost
  /** Bottles there; for what is counted in bottles only. */
  readonly count?: number
}

/** Places from which comes what the book does not keep. */
export const tapPlace = 'outside:tap'
/** Citric acid that the pantry has not: bought for the blend, at a price not known yet. */
export const acidPlace = 'outside:acid'

export const waterPart = (limits: PartLimits = {}): BlendPart => ({
  ...limits,
  place: tapPlace,
  kind: 'water',
  unit: 'ml',
  matter: matterOf({ waterG: densityOfWater(20) }),
  isEndless: true,
  cost: { minor: 0, isComplete: true },
})

export const acidPart = (limits: PartLimits = {}): BlendPart => ({
  ...limits,
  place: acidPlace,
  kind: 'acid',
  unit: 'g',
  matter: matterOf({ acidG: 1000 }),
  isEndless: true,
  cost: { minor: 0, isComplete: false },
})

/** Amount of the part in its own unit, of all its matter. */
export function amountThere(part: BlendPart): number {
  switch (part.unit) {
    case 'ml':
      return liquidVolumeMl(part.matter)
    case 'g':
      return massOf(part.matter)
    case 'bottles':
      return part.count ?? 0
  }
}

/** More than any cellar holds, in kg: what has no end must still have a number. */
const endlessKg = 20_000

/** A part in the numbers that a linear program takes. */
export interface Measured {
  readonly part: BlendPart
  /** One step of the variable: a kilogram, or a bottle. */
  readonly step: Matter
  readonly amountPerStep: number
  readonly costPerStep: number
  readonly low: number
  readonly high: number
  readonly isWhole: boolean
  /** The least use was more than there is to use: it was lowered to that. */
  readonly isCutShort: boolean
}

export function measured(part: BlendPart): Measured {
  const there = amountThere(part)
  const massKg = massOf(part.matter) / 1000
  const isWhole = part.unit === 'bottles'
  const steps = isWhole ? there : massKg
  const amountPerStep = steps > 0 ? there / steps : 0
  const inSteps = (amount: number) => (amountPerStep > 0 ? amount / amountPerStep : 0)
  const whole = (value: number) => (isWhole ? Math.floor(value + 1e-9) : value)
  const left = part.isEndless ? Infinity : Math.max(there - (part.keepBack ?? 0), 0)
  const usable = Math.min(part.most ?? Infinity, left)
  const high = usable === Infinity ? endlessKg : whole(inSteps(usable))
  const asked = inSteps(part.least ?? 0)
  const low = isWhole ? Math.ceil(asked - 1e-9) : asked
  return {
    part,
    step: steps > 0 ? scaleMatter(part.matter, 1 / steps) : noMatter,
    amountPerStep,
    costPerStep: steps > 0 ? part.cost.minor / steps : 0,
    low: Math.min(low, high),
    high,
    isWhole,
    isCutShort: low > high + 1e-9,
  }
}

/** All that is in a blend of so many steps of each part. */
export const blended = (parts: readonly Measured[], steps: readonly number[]): Matter =>
  parts.reduce(
    (sum, { step }, index) => addMatter(sum, scaleMatter(step, steps[index] ?? 0)),
    noMatter,
  )
