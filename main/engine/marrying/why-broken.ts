/** Which wishes a blend breaks, why, and what its parts could reach. */
import type { BrokenWish, Wish, WishName } from '../../../shared/schemas/marrying.ts'
import { describeLiquid } from '../ledger/jar-liquid.ts'
import {
  addLitre,
  addMisses,
  quantities,
  quantityOf,
  ratioWishes,
  sumOf,
  type Model,
  type RatioWish,
} from './blend-model.ts'
import { blended } from './blend-part.ts'
import { ProgramBuilder, valueOf, type SolveLinear } from './linear-program.ts'
import type { Blend } from './solve-blend.ts'

/** Finer than any instrument of a home. */
const tolerance: Readonly<Record<WishName, number>> = {
  strengthPctVol: 0.01,
  sugarGPerL: 0.1,
  acidGPerL: 0.01,
  volumeMl: 0.5,
}

export function brokenWishes(blend: Blend, solve: SolveLinear): BrokenWish[] {
  const liquid = describeLiquid(blend.mixture)
  const reached = { strengthPctVol: 0, sugarGPerL: 0, acidGPerL: 0, volumeMl: 0, ...liquid }
  const broken: BrokenWish[] = []
  for (const wish of ratioWishes) {
    const side = missedSide(wish, blend.model.wishes[wish], reached[wish])
    if (side) broken.push(whyComposition(blend, wish, reached[wish], side, solve))
  }
  const volume = volumeWish(blend)
  const side = missedSide('volumeMl', volume, reached.volumeMl)
  if (side) broken.push(whyVolume(blend, volume, reached.volumeMl, side))
  return broken
}

type Side = 'below' | 'above'

function missedSide(wish: WishName, asked: Wish | undefined, reached: number): Side | undefined {
  if (asked?.low !== undefined && reached < asked.low - tolerance[wish]) return 'below'
  if (asked?.high !== undefined && reached > asked.high + tolerance[wish]) return 'above'
  return undefined
}

/** Bottles with a count are a volume at least; where none has, one bottle is. */
function volumeWish({ model: { wishes } }: Blend): Wish {
  if (!wishes.bottles) return wishes.volumeMl ?? {}
  const low = wishes.bottles.reduce((sum, { sizeMl, count }) => sum + sizeMl * (count ?? 0), 0)
  return { low: low > 0 ? low : Math.min(...wishes.bottles.map(({ sizeMl }) => sizeMl)) }
}

function whyComposition(
  blend: Blend,
  wish: RatioWish,
  reached: number,
  side: Side,
  solve: SolveLinear,
): BrokenWish {
  const { model } = blend
  const asked: Wish = model.wishes[wish] ?? {}
  const told = { wish, ...bounds(asked), reached, places: [] }
  const isIn = (range: Range) =>
    side === 'below'
      ? (asked.low ?? 0) <= range.high + tolerance[wish]
      : (asked.high ?? 0) >= range.low - tolerance[wish]
  const alone = reachable(model, wish, [], solve)
  if (wish === 'sugarGPerL' && side === 'below' && isSaturated(blend))
    return { ...told, reason: 'saturation', reachable: { low: alone?.low ?? 0, high: reached } }
  if (alone && !isIn(alone)) return { ...told, reason: 'beyondParts', reachable: alone }
  const others = ratioWishes.filter((one) => one !== wish && model.wishes[one])
  const together = reachable(model, wish, others, solve)
  if (together && isIn(together)) return { ...told, reason: 'stock', places: usedUp(blend) }
  return { ...told, reason: 'conflict', ...(together && { reachable: together }) }
}

const bounds = ({ low, high }: Wish): Wish => ({
  ...(low !== undefined && { low }),
  ...(high !== undefined && { high }),
})

function isSaturated({ model, mixture: { sugarG, waterG } }: Blend): boolean {
  return sugarG >= model.sugarPerWater * waterG * (1 - 1e-3)
}

interface Range {
  readonly low: number
  readonly high: number
}

/** The least and the most that some mixture of the parts has of it, the others met as well as can be. */
function reachable(
  model: Model,
  wish: RatioWish,
  others: readonly RatioWish[],
  solve: SolveLinear,
): Range | undefined {
  const end = (sign: 1 | -1) => {
    const builder = new ProgramBuilder()
    const steps = addLitre(builder, model)
    const misses = addMisses(builder, steps, model, others)
    const least = solve(builder.minimising(misses))
    if (!least) return undefined
    builder.atMost(misses, valueOf(misses, least) + 1e-6)
    const amounts = quantities(model.parts, wish).map((amount) => amount * sign)
    const values = solve(builder.minimising(sumOf(steps, amounts)))
    if (!values) return undefined
    const mixture = blended(
      model.parts,
      steps.map((step) => values[step] ?? 0),
    )
    const liquid = describeLiquid(mixture)
    return liquid && (1000 * quantityOf(wish, mixture)) / liquid.volumeMl
  }
  const low = end(1)
  const high = end(-1)
  return low === undefined || high === undefined ? undefined : { low, high }
}

function whyVolume(blend: Blend, asked: Wish, reached: number, side: Side): BrokenWish {
  const told = { wish: 'volumeMl' as const, ...bounds(asked), reached }
  return side === 'below'
    ? { ...told, reason: 'stock', places: usedUp(blend) }
    : { ...told, reason: 'leastUse', places: usedLeast(blend) }
}

/** In steps, a milligram: more than a later aim may take back of an earlier one's litres. */
const endHair = 1e-6

export const isAtEnd = (blend: Blend, index: number): boolean => {
  const part = blend.parts[index]
  const steps = blend.steps[index] ?? 0
  // Of whole bottles, another one would have to be opened.
  return part !== undefined && steps >= part.high * (1 - 1e-6) - endHair && !part.part.isEndless
}

const usedUp = (blend: Blend): string[] =>
  blend.parts.flatMap(({ part }, index) => (isAtEnd(blend, index) ? [part.place] : []))

const usedLeast = ({ parts, steps }: Blend): string[] =>
  parts.flatMap(({ part, low }, index) =>
    low > 0 && (steps[index] ?? 0) <= low * (1 + 1e-6) ? [part.place] : [],
  )
