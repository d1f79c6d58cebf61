/**
 * What happens in a jar between two moves?
 *
 * Method: each body relaxes to its resting value by first order, every kind of matter at its own
 * half-time (craft reference: equilibrium balance, half-time table; engineering estimates). Living
 * fruit under sugar gives water by osmosis; spirit kills the cells, and then the liquid mixes until
 * it is the same inside and outside, while sugar at the bottom dissolves.
 * In: grams, days at 20 °C. Out: the same grams, moved; settling a days, then b, is settling a + b.
 * RangeError when time runs backwards. Leaves out: temperature, stirring, profiles inside a piece.
 * @example settle({ free: matterOf({ waterG: 100 }), held: noMatter, bed: noMatter }, null, 5).free.waterG // 100
 */
import {
  addMatter,
  mapMatter,
  matterOf,
  noMatter,
  subtractMatter,
  type Matter,
} from '../../../shared/matter.ts'
import { sucroseSolubility } from '../solution/sucrose-solubility.ts'
import { liquidVolumeMl } from '../solution/liquid-volume.ts'

/** The three bodies of a jar: liquid that pours, fruit with what it holds, undissolved sugar. */
export interface Bodies {
  readonly free: Matter
  readonly held: Matter
  readonly bed: Matter
}

/** How the fruit in a jar treats liquid. */
export interface Tissue {
  readonly cells: 'living' | 'dead'
  /** Edible mass as charged, and the water it brought. */
  readonly edibleG: number
  readonly rawWaterG: number
  /** Liquid the fruit still holds once it is drained. */
  readonly holdMl: number
  readonly halfTimeDays: {
    readonly ethanol: number
    readonly extract: number
    readonly osmosis: number
  }
}

/** Time in which half the sugar at the bottom dissolves when turned now and then; estimate. */
const dissolvingHalfTimeDays = 1

/** Osmolality of fresh fruit against that of a sugar syrup; craft reference, sugar on raw fruit. */
const fruitOsmolPerKg = 0.075
const sugarOsmolPerKg = 0.292

export function settle(bodies: Bodies, tissue: Tissue | null, elapsedDays: number): Bodies {
  if (!(elapsedDays >= 0))
    throw new RangeError(`elapsed time is ${elapsedDays} d, must be 0 or more`)
  if (tissue?.cells === 'living') return drawJuice(bodies, tissue, elapsedDays)
  return mix(bodies, tissue, elapsedDays)
}

/** Raw fruit under sugar: water leaves the cells, and as much sugar dissolves as it can carry. */
function drawJuice(bodies: Bodies, tissue: Tissue, elapsedDays: number): Bodies {
  const { free, held, bed } = bodies
  const waterTotalG = free.waterG + held.waterG
  const sugarOutsideG = free.sugarG + bed.sugarG
  const heldWaterG =
    sugarOutsideG === 0
      ? held.waterG
      : relax(
          held.waterG,
          Math.min(held.waterG, tissue.rawWaterG * (1 - drawnShare(sugarOutsideG, tissue.edibleG))),
          elapsedDays / tissue.halfTimeDays.osmosis,
        )
  const freeWaterG = waterTotalG - heldWaterG
  const dissolvedG = Math.min(sugarOutsideG, freeWaterG * sucroseSolubility(plainWater))
  return {
    free: { ...free, waterG: freeWaterG, sugarG: dissolvedG },
    held: { ...held, waterG: heldWaterG },
    bed: { ...bed, sugarG: sugarOutsideG - dissolvedG },
  }
}

/** No spirit stands on living fruit: it would kill the cells. */
const plainWater = { ethanolMassFraction: 0, temperatureC: 20 }

/** Share of a raw fruit's water that sugar draws out in the end, with ideal membranes. */
function drawnShare(sugarG: number, edibleG: number): number {
  const pull = (sugarOsmolPerKg * sugarG) / edibleG
  return pull / (fruitOsmolPerKg + pull)
}

/** Dead tissue, or no fruit: everything liquid tends to one composition, inside and outside. */
function mix(bodies: Bodies, tissue: Tissue | null, elapsedDays: number): Bodies {
  const { held, bed } = bodies
  const total = addMatter(addMatter(bodies.free, held), bed)
  const bedRestG = Math.min(bed.sugarG, undissolvableG(total))
  const share = heldShare(total, bedRestG, tissue)
  const dissolving = Math.LN2 / dissolvingHalfTimeDays
  const bedG = bedRestG + (bed.sugarG - bedRestG) * Math.exp(-dissolving * elapsedDays)
  if (tissue === null) {
    const bedNow = matterOf({ sugarG: bedG })
    return { free: subtractMatter(subtractMatter(total, held), bedNow), held, bed: bedNow }
  }
  const heldNow = mapMatter(held, (heldG, kind) => {
    if (kind === 'pulpG') return heldG
    if (kind === 'sugarG')
      return sugarHeldG(heldG, {
        share,
        totalG: total.sugarG,
        bedG: bed.sugarG,
        bedRestG,
        dissolving,
        passing: Math.LN2 / tissue.halfTimeDays.extract,
        elapsedDays,
      })
    const halfTime =
      kind === 'ethanolG' || kind === 'waterG'
        ? tissue.halfTimeDays.ethanol
        : tissue.halfTimeDays.extract
    return relax(heldG, share * total[kind], elapsedDays / halfTime)
  })
  const bedNow = matterOf({ sugarG: bedG })
  return {
    free: subtractMatter(subtractMatter(total, heldNow), bedNow),
    held: heldNow,
    bed: bedNow,
  }
}

/**
 * Sugar in the fruit while more dissolves outside: the solution of
 * dB/dt = -dissolving (B - Brest), dH/dt = passing (share (T - B) - H).
 */
function sugarHeldG(
  heldG: number,
  s: {
    share: number
    totalG: number
    bedG: number
    bedRestG: number
    dissolving: number
    passing: number
    elapsedDays: number
  },
): number {
  const restG = s.share * (s.totalG - s.bedRestG)
  const excessG = s.share * (s.bedG - s.bedRestG)
  const fading = Math.exp(-s.passing * s.elapsedDays)
  const difference = s.passing - s.dissolving
  // The two rates being equal is a removable singularity of the same solution.
  const lagged =
    Math.abs(difference * s.elapsedDays) < 1e-6
      ? s.passing * s.elapsedDays * fading
      : (s.passing / difference) * (Math.exp(-s.dissolving * s.elapsedDays) - fading)
  return restG + (heldG - restG) * fading - excessG * lagged
}

/** Everything liquid in the jar once it has come to rest. */
export function restingLiquid(bodies: Bodies): Matter {
  const total = addMatter(addMatter(bodies.free, bodies.held), bodies.bed)
  const bedRestG = Math.min(bodies.bed.sugarG, undissolvableG(total))
  return { ...total, sugarG: total.sugarG - bedRestG, pulpG: 0 }
}

/** Sugar that the jar's water and spirit together cannot dissolve. */
function undissolvableG(total: Matter): number {
  return Math.max(0, total.sugarG - total.waterG * gramsPerGramOfWater(total))
}

function gramsPerGramOfWater(matter: Matter): number {
  const liquidG = matter.ethanolG + matter.waterG
  return sucroseSolubility({
    ethanolMassFraction: liquidG === 0 ? 0 : matter.ethanolG / liquidG,
    temperatureC: 20,
  })
}

/** Share of all liquid that ends up inside the fruit. */
function heldShare(total: Matter, bedRestG: number, tissue: Tissue | null): number {
  if (tissue === null) return 0
  const volumeMl = liquidVolumeMl({ ...total, sugarG: total.sugarG - bedRestG })
  return volumeMl <= tissue.holdMl ? 1 : tissue.holdMl / volumeMl
}

const relax = (value: number, rest: number, halfTimes: number): number =>
  rest + (value - rest) * 2 ** -halfTimes

export const emptyBodies: Bodies = Object.freeze({ free: noMatter, held: noMatter, bed: noMatter })
