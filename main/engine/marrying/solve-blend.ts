/**
 * How much of each part makes a liquid of the wished strength, sugar, acid and volume?
 *
 * A linear program in masses, exact at one mixture; spirit and water contract, so it is solved
 * again at the mixture that came out until volume and solubility stand still (sequential linear
 * programming). In: parts, wishes and a solver. Out: steps of each part, undefined when nothing fits.
 * Leaves out: haze, taste, and how long sugar takes to dissolve.
 */
import { massOf, matterOf, type Matter } from '../../../shared/matter.ts'
import type { MarryWishes, Wish } from '../../../shared/schemas/marrying.ts'
import { composeSolution } from '../solution/compose-solution.ts'
import { liquidVolumeMl } from '../solution/liquid-volume.ts'
import { modelAt, type Model } from './blend-model.ts'
import { blended, measured, type BlendPart, type Measured } from './blend-part.ts'
import { bestBlend, type Aims, type Solved } from './blend-program.ts'
import type { SolveLinear } from './linear-program.ts'
import { addedVolumeMl, partialVolumes } from './partial-volumes.ts'

export interface Blend extends Solved {
  readonly parts: readonly Measured[]
  readonly mixture: Matter
  /** The program as it was at this mixture. */
  readonly model: Model
}

const rounds = 12
/** Of the volume: a hundredth of a millilitre in ten litres. */
const volumeTolerance = 1e-6

export function solveBlend(
  given: readonly BlendPart[],
  wishes: MarryWishes,
  aims: Aims,
  solve: SolveLinear,
): Blend | undefined {
  const parts = given.map(measured)
  let at = firstGuess(parts, wishes)
  if (!at) return undefined
  let best: Blend | undefined
  for (let round = 0; round < rounds; round += 1) {
    const growth = partialVolumes(at)
    const model = modelAt(parts, wishes, at, growth)
    const solved = bestBlend(model, aims, solve)
    if (!solved) return best
    const mixture = blended(parts, solved.steps)
    best = { ...solved, parts, mixture, model }
    if (massOf(mixture) < leastG) return best
    const volumeMl = liquidVolumeMl(mixture)
    const isStill =
      Math.abs(addedVolumeMl(mixture, growth) - volumeMl) <= volumeTolerance * volumeMl &&
      dissolvesAlike(model, mixture)
    if (isStill) return best
    at = mixture
  }
  return best
}

/** Less than this is no blend. */
const leastG = 0.1

/** Whether the mixture dissolves as much sugar as the program took it to, where that matters. */
function dissolvesAlike(model: Model, mixture: Matter): boolean {
  const { sugarPerWater } = modelAt([], {}, mixture, mixture)
  const mostG = Math.min(sugarPerWater, model.sugarPerWater) * mixture.waterG
  if (mixture.sugarG < 0.9 * mostG) return true
  return Math.abs(sugarPerWater - model.sugarPerWater) <= 1e-5 * sugarPerWater
}

const wished = (wish: Wish | undefined, otherwise: number) => wish?.low ?? wish?.high ?? otherwise

/** What is wished for, so that the first answer is right already; else all parts together. */
function firstGuess(parts: readonly Measured[], wishes: MarryWishes): Matter | undefined {
  const usable = parts.filter(({ high }) => high > 0)
  if (usable.length === 0) return undefined
  const together = blended(
    usable,
    usable.map(({ part, high }) => (part.isEndless ? Math.min(high, 0.01) : high)),
  )
  if (massOf(together) <= 0) return undefined
  const litres = liquidVolumeMl(together) / 1000
  try {
    return matterOf(
      composeSolution({
        volumeMl: 1000,
        strengthPctVol: wished(wishes.strengthPctVol, 20),
        sugarGPerL: wished(wishes.sugarGPerL, Math.min(together.sugarG / litres, 300)),
        acidGPerL: wished(wishes.acidGPerL, together.acidG / litres),
        solublesGPerL: together.solublesG / litres,
      }),
    )
  } catch (error) {
    if (error instanceof RangeError) return together
    throw error
  }
}
