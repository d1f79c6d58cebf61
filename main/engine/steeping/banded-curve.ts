/**
 * A batch's curve with its band: where it may be, given what is still not known of its fruit.
 *
 * Method: the replay at the best unknowns; then along each principal axis of their covariance, 90 %
 * out on both sides. Deviations of the axes add in quadrature, the upper and the lower apart, so
 * that a band never leaves what the ledger can do as a straight line would. On fewer instants than
 * the curve itself: a band has no corners but at moves.
 */
import { EigenvalueDecomposition, Matrix } from 'ml-matrix'
import type { CurveValues } from '../../../shared/schemas/steeping.ts'
import { curveOf, sampleTimes, type CurveSample } from '../ledger/batch-curve.ts'
import type { Step } from '../ledger/fold.ts'
import { sigmasOf90Pct, tuningOf, type Spread, type Unknowns } from './beliefs.ts'
import { replay, type Replay } from './replay.ts'

/** The best unknowns and what surrounds them. */
export interface Belief {
  readonly spread: Spread
  readonly unknowns: Unknowns
  readonly covariance: readonly (readonly number[])[]
}

/** The ledger told at the best unknowns, and out on each axis. */
export interface Ensemble {
  readonly middle: readonly Step[]
  readonly outer: readonly (readonly [readonly Step[], readonly Step[]])[]
}

export function ensembleOf(told: Replay, { spread, unknowns, covariance }: Belief): Ensemble {
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(
    new Matrix(covariance.map((row) => [...row])),
    { assumeSymmetric: true },
  )
  const at = (out: number, axis: number): readonly Step[] => {
    const by = out * sigmasOf90Pct * Math.sqrt(Math.max(0, realEigenvalues[axis] ?? 0))
    const there = unknowns.map((value, row) => value + by * eigenvectorMatrix.get(row, axis))
    return replay(told, tuningOf(spread, there as unknown as Unknowns)).steps
  }
  return {
    middle: replay(told, tuningOf(spread, unknowns)).steps,
    outer: [0, 1, 2].map((axis) => [at(1, axis), at(-1, axis)] as const),
  }
}

/** Upper and lower end of a quantity from its value in the middle and at both ends of each axis. */
export function bandOf(middle: number, outer: readonly (readonly [number, number])[]) {
  let up = 0
  let down = 0
  for (const [a, b] of outer) {
    up += Math.max(0, a - middle, b - middle) ** 2
    down += Math.max(0, middle - a, middle - b) ** 2
  }
  return { low: middle - Math.sqrt(down), high: middle + Math.sqrt(up) }
}

export interface BandedSample extends CurveSample {
  readonly low?: CurveValues
  readonly high?: CurveValues
}

const quantities = [
  'strengthPctVol',
  'sugarGPerL',
  'acidGPerL',
  'volumeMl',
  'ethanolInFruitMl',
] as const satisfies readonly (keyof CurveValues)[]

/** How many instants the band is worked out at, apart from the moves'. */
const bandPoints = 40
const bandWider = 4

export function bandedCurve(
  ensemble: Ensemble,
  batchId: string,
  untilMs: number,
  points: number,
): Map<string, BandedSample[]> {
  const middle = curveOf(ensemble.middle, batchId, sampleTimes(ensemble.middle, untilMs, points))
  const bandTimes = sampleTimes(ensemble.middle, untilMs, bandPoints, bandWider)
  const coarse = curveOf(ensemble.middle, batchId, bandTimes)
  const outer = ensemble.outer.map((pair) =>
    pair.map((steps) => byTime(curveOf(steps, batchId, bandTimes))),
  )
  const banded = new Map<string, BandedSample[]>()
  for (const [key, samples] of middle) {
    const deviations = (coarse.get(key) ?? []).flatMap((sample) => {
      const pairs = outer.map(([a, b]) => [
        a?.get(key)?.get(sample.atMs),
        b?.get(key)?.get(sample.atMs),
      ])
      return pairs.every(([a, b]) => a && b) ? [deviationOf(sample, pairs as unknown as Pairs)] : []
    })
    banded.set(key, withBand(samples, deviations))
  }
  return banded
}

type Pairs = readonly (readonly [CurveSample, CurveSample])[]

const byTime = (curves: Map<string, CurveSample[]>) =>
  new Map([...curves].map(([key, samples]) => [key, new Map(samples.map((s) => [s.atMs, s]))]))

interface Deviation {
  readonly atMs: number
  readonly down: CurveValues
  readonly up: CurveValues
}

const eachQuantity = (of: (quantity: keyof CurveValues) => number): CurveValues => ({
  strengthPctVol: of('strengthPctVol'),
  sugarGPerL: of('sugarGPerL'),
  acidGPerL: of('acidGPerL'),
  volumeMl: of('volumeMl'),
  ethanolInFruitMl: of('ethanolInFruitMl'),
})

function deviationOf(sample: CurveSample, pairs: Pairs): Deviation {
  const bands = new Map(
    quantities.map((q) => [
      q,
      bandOf(
        sample[q],
        pairs.map(([a, b]) => [a[q], b[q]] as const),
      ),
    ]),
  )
  const band = (q: keyof CurveValues) => bands.get(q) as { low: number; high: number }
  return {
    atMs: sample.atMs,
    down: eachQuantity((q) => sample[q] - band(q).low),
    up: eachQuantity((q) => band(q).high - sample[q]),
  }
}

/** The band between two instants where it is known runs straight; beyond them there is none. */
function withBand(samples: readonly CurveSample[], known: readonly Deviation[]): BandedSample[] {
  let next = 0
  return samples.map((sample) => {
    while (next < known.length && (known[next] as Deviation).atMs < sample.atMs) next += 1
    const after = known[next]
    const before = after?.atMs === sample.atMs ? after : known[next - 1]
    if (!after || !before) return sample
    const gapMs = after.atMs - before.atMs
    const share = gapMs === 0 ? 0 : (sample.atMs - before.atMs) / gapMs
    return {
      ...sample,
      low: shifted(sample, before.down, after.down, share, -1),
      high: shifted(sample, before.up, after.up, share, 1),
    }
  })
}

/** A sample moved up or down by what lies between two deviations; no liquid has less than nothing. */
function shifted(
  sample: CurveValues,
  a: CurveValues,
  b: CurveValues,
  share: number,
  sign: 1 | -1,
): CurveValues {
  const by = (from: number, to: number) => sign * (from + share * (to - from))
  return {
    strengthPctVol: Math.max(0, sample.strengthPctVol + by(a.strengthPctVol, b.strengthPctVol)),
    sugarGPerL: Math.max(0, sample.sugarGPerL + by(a.sugarGPerL, b.sugarGPerL)),
    acidGPerL: Math.max(0, sample.acidGPerL + by(a.acidGPerL, b.acidGPerL)),
    volumeMl: Math.max(0, sample.volumeMl + by(a.volumeMl, b.volumeMl)),
    ethanolInFruitMl: Math.max(
      0,
      sample.ethanolInFruitMl + by(a.ethanolInFruitMl, b.ethanolInFruitMl),
    ),
  }
}
