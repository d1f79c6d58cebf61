/**
 * A marriage worked out: amounts in order of pouring, what they make, what breaks and why.
 *
 * In: parts, wishes, a solver. Out: what the contract replies, but for the vessel. Exact in mass;
 * volume and strength as describeSolution has them. Leaves out: where to pour it, and the book.
 */
import { massOf, scaleMatter, sumMatter } from '../../../shared/matter.ts'
import type {
  BlendAmount,
  BrokenWish,
  Cost,
  MarryReply,
  MarryWishes,
} from '../../../shared/schemas/marrying.ts'
import { describeLiquid } from '../ledger/jar-liquid.ts'
import { liquidVolumeMl } from '../solution/liquid-volume.ts'
import type { BlendPart } from './blend-part.ts'
import type { Aims } from './blend-program.ts'
import type { SolveLinear } from './linear-program.ts'
import { inPouringOrder } from './pour-order.ts'
import { pourTable, type PouredPart } from './pour-table.ts'
import { solveBlend, type Blend } from './solve-blend.ts'
import { brokenWishes, isAtEnd } from './why-broken.ts'

export interface MarryQuestion extends Aims {
  readonly parts: readonly BlendPart[]
  readonly wishes: MarryWishes
}

export type Married = Omit<MarryReply, 'fill'>

/** A blend of this size has nothing that limits it but the program's own bounds. */
const noEndMl = 9_000_000

export function marry({ parts, wishes, ...aims }: MarryQuestion, solve: SolveLinear): Married {
  const blend = solveBlend(parts, wishes, aims, solve)
  if (!blend) return nothing(wishes)
  const poured = pouredParts(blend)
  const mixture = sumMatter(poured.map(({ matter }) => matter))
  const liquid = describeLiquid(mixture)
  const bottles = (wishes.bottles ?? []).map(({ sizeMl }, index) => ({
    sizeMl,
    count: Math.round(blend.bottles[index] ?? 0),
  }))
  const filled = bottles.filter(({ count }) => count > 0)
  const bottledMl = filled.reduce((sum, { sizeMl, count }) => sum + sizeMl * count, 0)
  const volumeMl = liquid?.volumeMl ?? 0
  const apartMl = poured.reduce((sum, part) => sum + part.volumeMl, 0)
  const { sugarPerWater } = blend.model
  return {
    amounts: poured.map(({ amount }) => amount),
    ...(liquid && { liquid }),
    contractionMl: liquid ? apartMl - volumeMl : 0,
    undissolvedG: Math.max(mixture.sugarG - sugarPerWater * mixture.waterG, 0),
    cost: costOf(poured.map(({ amount }) => amount.cost)),
    broken: volumeMl > noEndMl ? [noEnd(volumeMl)] : brokenWishes(blend, solve),
    cutShort: blend.parts.flatMap((part) => (part.isCutShort ? [part.part.place] : [])),
    bottles,
    restMl: Math.max(volumeMl - bottledMl, 0),
    ...(filled.length > 0 && { pourTable: pourTable(poured, filled, volumeMl) }),
  }
}

const noEnd = (reached: number): BrokenWish => ({
  wish: 'volumeMl',
  reached,
  reason: 'noEnd',
  places: [],
})

/** Nothing was given that could be poured. */
const nothing = (wishes: MarryWishes): Married => ({
  amounts: [],
  contractionMl: 0,
  undissolvedG: 0,
  cost: { minor: 0, isComplete: true },
  broken: [{ wish: 'volumeMl', ...wishes.volumeMl, reached: 0, reason: 'stock', places: [] }],
  cutShort: [],
  bottles: [],
  restMl: 0,
})

export const costOf = (costs: readonly Cost[]): Cost => ({
  minor: costs.reduce((sum, { minor }) => sum + minor, 0),
  isComplete: costs.every(({ isComplete }) => isComplete),
})

/** Less than this of a part, in grams, is rounding. */
const leastG = 0.01

function pouredParts(blend: Blend): PouredPart[] {
  const used = blend.parts.flatMap((part, index): PouredPart[] => {
    const steps = blend.steps[index] ?? 0
    const matter = scaleMatter(part.step, steps)
    const massG = massOf(matter)
    if (massG < leastG) return []
    const volumeMl = liquidVolumeMl(matter)
    const amount: BlendAmount = {
      place: part.part.place,
      unit: part.part.unit,
      amount: steps * part.amountPerStep,
      volumeMl,
      massG,
      isUsedUp: isAtEnd(blend, index),
      cost: {
        minor: steps * part.costPerStep,
        isComplete: part.part.cost.isComplete,
      },
    }
    const densityKgPerM3 = (1000 * massG) / volumeMl
    return [{ amount, matter, kind: part.part.kind, volumeMl, densityKgPerM3 }]
  })
  return inPouringOrder(used)
}
