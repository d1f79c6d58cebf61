/**
 * What do a batch's own readings say about its fruit?
 *
 * Method: regularised least squares over three unknowns: pace, liquid held, and the fruit's own
 * juice. Each residual is a reading's distance from the replayed ledger, in its standard
 * uncertainties; the library's ranges enter as three more, pulling towards 0 ± 1 (beliefs.ts).
 * Gauss-Newton with steps halved until the sum falls; readings far off weigh less (Huber), so that
 * one slip of the pen does not bend the curve. The bands are the Gaussian ones at the minimum.
 * In: the batch's replay, its readings as interpreted by the ledger, hold-up by the maker's own
 * jug. Out: unknowns, their covariance, residuals. Deterministic.
 * Leaves out: readings taken before any fruit was charged or after the last left the batch's jars.
 */
import { inverse, Matrix } from 'ml-matrix'
import type { Interpretation } from '../../../shared/schemas/readings.ts'
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
  let unknowns: Unknowns = noNews
  let seen = look(question, unknowns)
  for (let round = 0; round < 12; round += 1) {
    const { gradient, curvature } = slopes(question, unknowns, seen)
    const step = curvature.mmul(gradient).to1DArray()
    const next = better(question, unknowns, seen, step)
    if (!next) break
    const moved = Math.hypot(...next.unknowns.map((value, i) => value - (unknowns[i] ?? 0)))
    ;({ unknowns, seen } = next)
    if (moved < 1e-4) break
  }
  const { curvature } = slopes(question, unknowns, seen)
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

interface Seen {
  readonly residuals: readonly { readonly moveId: string; readonly sigmas: number }[]
  /** Residual of the measured hold-up, and of the prior. */
  readonly others: readonly number[]
  readonly sum: number
}

/** The residuals at some unknowns. A reading whose jar the replay finds empty counts as on the line. */
function look({ replay: told, spread, readings, measuredHold }: FitQuestion, at: Unknowns): Seen {
  const { steps } = replay(told, tuningOf(spread, at))
  const byId = new Map(steps.map((step) => [step.recorded.id, step]))
  const residuals = readings.flatMap((reading) => residualsOf(byId.get(reading.moveId), reading))
  const hold =
    measuredHold === undefined ? [] : [(spread.lnHold * at[1] - Math.log(measuredHold)) / jugLnHold]
  const others = [...hold, ...at]
  let sum = 0
  for (const { sigmas } of residuals) sum += loss(sigmas)
  for (const value of others) sum += value * value
  return { residuals, others, sum }
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

const loss = (sigmas: number): number => {
  const far = Math.abs(sigmas)
  return far <= huber ? far * far : huber * (2 * far - huber)
}

const weight = (sigmas: number): number => Math.min(1, huber / Math.abs(sigmas))

const nudge = 0.02

/** Where the sum falls, and the covariance: the inverse of half its curvature. */
function slopes(question: FitQuestion, at: Unknowns, seen: Seen) {
  const all = (from: Seen) => [...from.residuals.map(({ sigmas }) => sigmas), ...from.others]
  const here = all(seen)
  const weights = [
    ...seen.residuals.map(({ sigmas }) => weight(sigmas)),
    ...seen.others.map(() => 1),
  ]
  const columns = ([0, 1, 2] as const).map((index) => {
    const there = all(look(question, nudged(at, index)))
    return here.map((value, row) => ((there[row] as number) - value) / nudge)
  })
  const normal = columns.map((a) =>
    columns.map((b) =>
      a.reduce((sum, value, row) => sum + (weights[row] as number) * value * (b[row] as number), 0),
    ),
  )
  const gradient = columns.map((column) => [
    column.reduce(
      (sum, value, row) => sum - (weights[row] as number) * value * (here[row] as number),
      0,
    ),
  ])
  return { gradient: new Matrix(gradient), curvature: inverse(new Matrix(normal)) }
}

const nudged = (at: Unknowns, index: 0 | 1 | 2): Unknowns =>
  at.map((value, i) => (i === index ? value + nudge : value)) as unknown as Unknowns

/** The step, halved until the sum falls; undefined when it does not. */
function better(question: FitQuestion, from: Unknowns, seen: Seen, step: readonly number[]) {
  for (let share = 1; share > 0.01; share /= 2) {
    // No step leaves what the library thinks possible by far.
    const unknowns = from.map((value, i) =>
      Math.min(5, Math.max(-5, value + share * (step[i] as number))),
    ) as unknown as Unknowns
    const found = look(question, unknowns)
    if (found.sum < seen.sum - 1e-9) return { unknowns, seen: found }
  }
  return undefined
}
