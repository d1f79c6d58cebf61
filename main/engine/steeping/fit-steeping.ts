/**
 * What do a batch's own readings say about its fruit?
 *
 * Method: regularised least squares over three unknowns: pace, liquid held, and the fruit's own
 * juice. Each residual is a reading's distance from the replayed ledger, in its standard
 * uncertainties; the library's ranges enter as three more, pulling towards 0 ± 1 (beliefs.ts).
 * Readings far off weigh less (Huber), so that one slip of the pen does not bend the curve; the least
 * sum is found as any other (least-squares.ts). The bands are the Gaussian ones at the minimum.
 * In: the batch's replay, its readings as interpreted by the ledger, hold-up by the maker's own
 * jug. Out: unknowns, their covariance, residuals. Deterministic.
 * Leaves out: readings taken before any fruit was charged or after the last left the batch's jars.
 */
import { inverse, Matrix } from 'ml-matrix'
import type { Interpretation } from '../../../shared/schemas/readings.ts'
import { leastSquares, slopesAt } from '../least-squares.ts'
import type { Step } from '../ledger/fold.ts'
import { describeLiquid } from '../ledger/jar-liquid.ts'
import { noNews, tuningOf, type Spread, type Unknowns } from './beliefs.ts'
import { replay, type Replay } from './replay.ts'

/** A reading that counts, by the move that recorded it. */
export interface FitReading {
  readonly moveId: string
  readonly jarId: string
  readonly interpretation: Interpretation
}

export interface FitQuestion {
  readonly replay: Replay
  readonly spread: Spread
  readonly readings: readonly FitReading[]
  /** Measured hold-up of the drained fruit against the ledger's own, as a factor. */
  readonly measuredHold?: number | undefined
}

export interface SteepingFit {
  readonly unknowns: Unknowns
  /** 3 × 3, rows of the unknowns on their own scales. */
  readonly covariance: readonly (readonly number[])[]
  /** Distance of each reading from the fitted curve, in standard uncertainties of strength or sugar. */
  readonly residuals: ReadonlyMap<string, number>
  readonly outliers: ReadonlySet<string>
}

/** What the model itself is good for beside a perfect reading; engineering estimates. */
const modelPctVol = 0.3
const modelSugarGPerL = 4
const modelVolumeFraction = 0.02
/** A kitchen jug reads a drained jar to about 3 %, which is more of what stays than of what left. */
const jugLnHold = 0.08

/** Beyond so many standard uncertainties a residual counts only in proportion. */
const huber = 2
const outlierBeyond = 3

export function fitSteeping(question: FitQuestion): SteepingFit {
  const { x } = leastSquares({
    ...bounds,
    residualsAt: (at) => robust(look(question, at as unknown as Unknowns)),
    start: noNews,
    // What the library says of each unknown is a measurement too: 0 ± 1.
    pull: [1, 1, 1],
    stop: { met: 0, gain: 1e-9, move: 1e-4 },
  })
  const unknowns = x as unknown as Unknowns
  const seen = look(question, unknowns)
  const curvature = covarianceAt(question, unknowns, seen)
  const residuals = new Map<string, number>()
  for (const { moveId, sigmas } of seen.residuals)
    if (Math.abs(sigmas) >= Math.abs(residuals.get(moveId) ?? 0)) residuals.set(moveId, sigmas)
  return {
    unknowns,
    covariance: curvature.to2DArray(),
    residuals,
    outliers: new Set(
      [...residuals].filter(([, r]) => Math.abs(r) > outlierBeyond).map(([id]) => id),
    ),
  }
}

/** No answer lies farther from what the library thinks possible. */
const bounds = { low: [-5, -5, -5], high: [5, 5, 5], nudge: 0.005 }

interface Seen {
  readonly residuals: readonly { readonly moveId: string; readonly sigmas: number }[]
  /** Residual of the measured hold-up, where there is one. */
  readonly others: readonly number[]
}

/** The residuals at some unknowns. A reading whose jar the replay finds empty counts as on the line. */
function look({ replay: told, spread, readings, measuredHold }: FitQuestion, at: Unknowns): Seen {
  const { steps } = replay(told, tuningOf(spread, at))
  const byId = new Map(steps.map((step) => [step.recorded.id, step]))
  const residuals = readings.flatMap((reading) => residualsOf(byId.get(reading.moveId), reading))
  const hold =
    measuredHold === undefined ? [] : [(spread.lnHold * at[1] - Math.log(measuredHold)) / jugLnHold]
  return { residuals, others: hold }
}

function residualsOf(step: Step | undefined, { moveId, jarId, interpretation }: FitReading) {
  const jar = step?.effect.jars?.get(jarId)
  const liquid = jar && describeLiquid(jar.bodies.free)
  const against = (read: number | undefined, told: number | undefined, sigma: number) => ({
    moveId,
    sigmas: read === undefined || told === undefined ? 0 : (told - read) / sigma,
  })
  const { strengthPctVol, sugarGPerL, volumeMl } = interpretation
  return [
    against(
      strengthPctVol,
      liquid?.strengthPctVol,
      Math.hypot(interpretation.strengthUncertaintyPctVol ?? 0, modelPctVol),
    ),
    against(
      sugarGPerL,
      liquid?.sugarGPerL,
      Math.hypot(
        interpretation.sugarUncertaintyGPerL ?? 0,
        modelSugarGPerL,
        0.02 * (sugarGPerL ?? 0),
      ),
    ),
    against(volumeMl, liquid?.volumeMl, 10 + modelVolumeFraction * (volumeMl ?? 0)),
  ]
}

/** What is squared and summed: beyond `huber` it grows with the root of the distance only. */
function robust({ residuals, others }: Seen): number[] {
  const damped = residuals.map(({ sigmas }) => {
    const far = Math.abs(sigmas)
    return far <= huber ? sigmas : Math.sign(sigmas) * Math.sqrt(huber * (2 * far - huber))
  })
  return [...damped, ...others]
}

/** The inverse of half the curvature at the least sum, each reading by its weight. */
function covarianceAt(question: FitQuestion, at: Unknowns, seen: Seen): Matrix {
  const all = (from: Seen) => [...from.residuals.map(({ sigmas }) => sigmas), ...from.others]
  const here = all(seen)
  const residualsAt = (there: readonly number[]) =>
    all(look(question, there as unknown as Unknowns))
  const slopes = slopesAt({ ...bounds, residualsAt }, at, here)
  const weights = [
    ...seen.residuals.map(({ sigmas }) => Math.min(1, huber / Math.abs(sigmas))),
    ...seen.others.map(() => 1),
  ]
  const normal = slopes.map((a, i) =>
    slopes.map((b, j) =>
      a.reduce(
        (sum, value, row) => sum + (weights[row] as number) * value * (b[row] as number),
        i === j ? 1 : 0,
      ),
    ),
  )
  return inverse(new Matrix(normal))
}
