/**
 * What happens in a jar between two moves?
 *
 * Method: two well-mixed bodies, free liquid and liquid held in the fruit, go to where the mass
 * balance rests (one composition, the fruit holding what drained fruit holds) by diffusion out of a
 * limited volume, through a skin, or by first order, each kind of matter at its own pace; raw fruit
 * under sugar gives its water by osmosis instead (craft reference, sections 1.1, 2.1 to 2.4).
 * In: bodies in grams as the clock starts, tissue, keeping, days of lag; days passed. Out: the same
 * grams, moved, every kind conserved. RangeError when time runs backwards.
 * Leaves out: profiles inside a piece once a move has started the clock anew, and heat.
 */
import {
  mapMatter,
  matterOf,
  noMatter,
  subtractMatter,
  type Matter,
} from '../../../shared/matter.ts'
import { sucroseSolubility } from '../solution/sucrose-solubility.ts'
import { heldShare, restingBedG, wholeOf, type Bodies } from './bodies.ts'
import { daysThatCount, dissolvingHalfTimeDays, fasterThanAt20C, type Keeping } from './keeping.ts'
import type { Pace, Way } from './pace.ts'
import { uptakeCurve } from './uptake-fraction.ts'
import type { PieceShape } from './uptake-roots.ts'

/** How the fruit in a jar treats liquid. */
export interface Tissue {
  readonly cells: 'living' | 'dead'
  /** Edible mass as charged, and the water it brought. */
  readonly edibleG: number
  readonly rawWaterG: number
  /** Liquid the fruit still holds once it is drained. */
  readonly holdMl: number
  readonly pace: Pace
}

/** A jar at the instant its clock started. */
export interface Start {
  readonly start: Bodies
  readonly tissue: Tissue | null
  readonly keeping: Keeping
  /** Days until what was poured in is mixed. */
  readonly lagDays: number
}

export type SteepingPath = (elapsedDays: number) => { bodies: Bodies; colourFraction: number }

export const steep = (from: Start, elapsedDays: number): Bodies =>
  steepingPath(from)(elapsedDays).bodies

/** The same as a function of time; what does not change with time is worked out once. */
export function steepingPath(from: Start): SteepingPath {
  const path = from.tissue?.cells === 'living' ? osmosis(from, from.tissue) : mixing(from)
  return (elapsedDays) => {
    if (!(elapsedDays >= 0))
      throw new RangeError(`elapsed time is ${elapsedDays} d, must be 0 or more`)
    return elapsedDays === 0 ? { bodies: from.start, colourFraction: 0 } : path(elapsedDays)
  }
}

/** Osmolality of fresh fruit against that of a sugar syrup; craft reference, sugar on raw fruit. */
const fruitOsmolPerKg = 0.075
const sugarOsmolPerKg = 0.292

/** Raw fruit under sugar: water leaves the cells, and as much sugar dissolves as it can carry. */
function osmosis({ start, keeping }: Start, tissue: Tissue): SteepingPath {
  const { free, held, bed } = start
  const sugarOutsideG = free.sugarG + bed.sugarG
  const pull = (sugarOsmolPerKg * sugarOutsideG) / tissue.edibleG
  const drawnShare = pull / (fruitOsmolPerKg + pull)
  const restG = Math.min(held.waterG, tissue.rawWaterG * (1 - drawnShare))
  const faster = fasterThanAt20C(keeping.temperatureC)
  const sugarPerWater = sucroseSolubility({
    ethanolMassFraction: 0,
    temperatureC: keeping.temperatureC,
  })
  return (elapsedDays) => {
    const halfTimes = (faster * elapsedDays) / tissue.pace.halfTimeDays.osmosis
    const heldWaterG = restG + (held.waterG - restG) * 2 ** -halfTimes
    const freeWaterG = free.waterG + held.waterG - heldWaterG
    // Sugar that is dissolved already stays so.
    const dissolvedG = Math.min(sugarOutsideG, Math.max(free.sugarG, freeWaterG * sugarPerWater))
    return {
      bodies: {
        free: { ...free, waterG: freeWaterG, sugarG: dissolvedG },
        held: { ...held, waterG: heldWaterG },
        bed: { ...bed, sugarG: sugarOutsideG - dissolvedG },
      },
      colourFraction: 0,
    }
  }
}

/** Dead tissue, or no fruit: everything liquid tends to one composition, inside and outside. */
function mixing({ start, tissue, keeping, lagDays }: Start): SteepingPath {
  const { held, bed } = start
  const total = wholeOf(start)
  const bedRestG = restingBedG(start, total, keeping.temperatureC)
  const dissolvingDays = dissolvingHalfTimeDays[keeping.turned]
  const bedAt = (days: number) => bedRestG + (bed.sugarG - bedRestG) * 2 ** -(days / dissolvingDays)
  if (tissue === null)
    return (elapsedDays) => ({
      bodies: withHeld(total, held, bedAt(daysThatCount(elapsedDays, lagDays))),
      colourFraction: 0,
    })
  const share = heldShare(total, bedRestG, tissue.holdMl)
  const { way, halfTimeDays } = tissue.pace
  const progress = progressOf(way, share)
  const faster = fasterThanAt20C(keeping.temperatureC)
  return (elapsedDays) => {
    const days = daysThatCount(elapsedDays, lagDays)
    const bedG = bedAt(days)
    const spiritThrough = progress((faster * days) / halfTimeDays.ethanol)
    const extractThrough = progress((faster * days) / halfTimeDays.extract)
    const heldNow = mapMatter(held, (heldG, kind) => {
      if (kind === 'pulpG') return heldG
      const through = kind === 'ethanolG' || kind === 'waterG' ? spiritThrough : extractThrough
      const liquidG = kind === 'sugarG' ? total.sugarG - bedG : total[kind]
      return heldG + through * (share * liquidG - heldG)
    })
    return {
      bodies: withHeld(total, heldNow, bedG),
      colourFraction: progress((faster * days) / halfTimeDays.colour),
    }
  }
}

/** What is neither held nor at the bottom is free; found by subtraction, so that nothing is lost. */
function withHeld(total: Matter, held: Matter, bedG: number): Bodies {
  const bed = bedG === 0 ? noMatter : matterOf({ sugarG: bedG })
  return { free: subtractMatter(subtractMatter(total, held), bed), held, bed }
}

/** Half-times are told at this alpha (craft reference, section 2.2). */
const referenceAlpha = 1.5
/** Nearly everything ends in the fruit: no thinner layer of liquid is told apart. */
const leastAlpha = 0.05

/** Fourier number of half the way at the reference alpha: root of uptake = 0.5. */
const fourierOfHalf: Record<PieceShape, number> = {
  slab: 0.100468,
  cylinder: 0.02993,
  sphere: 0.014124,
}

/** Share of the way gone after some half-times, where `share` of the liquid ends up in the fruit. */
function progressOf(way: Way, share: number): (halfTimes: number) => number {
  if (way === 'firstOrder') return (halfTimes) => 1 - 2 ** -halfTimes
  const alpha = Math.max(leastAlpha, (1 - share) / share)
  if (way === 'skin') {
    const faster = (1 + 1 / alpha) / (1 + 1 / referenceAlpha)
    return (halfTimes) => 1 - 2 ** -(faster * halfTimes)
  }
  const uptake = uptakeCurve(way, alpha)
  return (halfTimes) => uptake(fourierOfHalf[way] * halfTimes)
}
