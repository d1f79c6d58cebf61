/** Everything the curve's drawing needs, worked out from finished series: scales, bands, readings. */
import type { StageBand } from '../../shared/schemas/cellar.ts'
import type { BatchCurve } from '../../shared/schemas/steeping.ts'
import { curveRows, type CurveRow } from './curve-rows.ts'
import { amountTicks, timeDomain, type TimeDomain } from './time-axis.ts'

export interface CurveReadingPoint {
  readonly moveId: string
  readonly jarId: string
  readonly atMs: number
  readonly strengthPctVol: number | undefined
  readonly sugarGPerL: number | undefined
  readonly isUsed: boolean
}

export interface BandSpan {
  readonly stage: StageBand['stage']
  readonly fromMs: number
  readonly toMs: number
}

export interface CurveView {
  readonly rows: readonly CurveRow[]
  readonly domain: TimeDomain
  readonly bands: readonly BandSpan[]
  readonly readings: readonly CurveReadingPoint[]
  readonly strengthTicks: readonly number[]
  readonly sugarTicks: readonly number[]
  /** The sweetest instant, where it lies above the scale. */
  readonly sugarPeak?: { readonly atMs: number; readonly sugarGPerL: number }
}

/** Both scales have as many intervals, so that one grid serves both. */
const intervals = 4

/** The curve of the whole batch (`whole`) or of one jar; readings of other jars are left out then. */
export function curveView(curve: BatchCurve, key: string, nowMs: number): CurveView {
  const rows = curveRows(curve, key)
  const bands = curve.bands.map(({ stage, from, to }) => ({
    stage,
    fromMs: Date.parse(from),
    toMs: Date.parse(to),
  }))
  const readings = curve.readings
    .filter(({ jarId }) => key === 'whole' || jarId === key)
    .map(({ moveId, jarId, at, interpretation, isUsed }) => ({
      moveId,
      jarId,
      atMs: Date.parse(at),
      strengthPctVol: interpretation.strengthPctVol,
      sugarGPerL: interpretation.sugarGPerL,
      isUsed,
    }))
  const times = [...rows, ...readings].map(({ atMs }) => atMs)
  const fromMs = Math.min(bands[0]?.fromMs ?? nowMs, ...times)
  const toMs = Math.max(bands.at(-1)?.toMs ?? fromMs, ...times)
  const domain = timeDomain(fromMs, toMs)
  const peak = briefPeak(rows, bands, domain)
  const onScale = peak ? rows.filter(({ atMs }) => atMs >= peak.untilMs) : rows
  return {
    rows,
    domain,
    bands,
    readings,
    strengthTicks: amountTicks(
      Math.max(10, 1.04 * greatest([...rows, ...readings].map((row) => row.strengthPctVol))),
      intervals,
    ),
    sugarTicks: amountTicks(
      Math.max(40, 1.04 * greatest([...onScale, ...readings].map((row) => row.sugarGPerL))),
      intervals,
    ),
    ...(peak && { sugarPeak: peak.top }),
  }
}

/** A syrup that stands for less than this share of the time does not set the scale. */
const briefShare = 0.15

/**
 * The syrup of fruit and sugar before the spirit is several times as sweet as all that follows. On
 * its scale months of steeping would be one flat line; where it was brief it runs off the top.
 */
function briefPeak(rows: readonly CurveRow[], bands: readonly BandSpan[], domain: TimeDomain) {
  const [first, second] = bands
  if (first?.stage !== 'layered' || !second) return undefined
  const untilMs = second.fromMs
  if (untilMs - domain.fromMs > briefShare * (domain.toMs - domain.fromMs)) return undefined
  const layered = rows.filter(({ atMs }) => atMs < untilMs)
  const later = greatest(rows.filter(({ atMs }) => atMs >= untilMs).map(sugarOf))
  const sweetest = greatest(layered.map(sugarOf))
  const top = layered.find((row) => row.sugarGPerL === sweetest)
  if (!top || sweetest < 1.6 * later || later === 0) return undefined
  return { untilMs, top: { atMs: top.atMs, sugarGPerL: sweetest } }
}

const sugarOf = ({ sugarGPerL }: CurveRow) => sugarGPerL

const greatest = (values: readonly (number | null | undefined)[]) =>
  Math.max(0, ...values.map((value) => value ?? 0))

/** The stage at an instant: the last band that had begun by then. */
export const stageAt = (bands: readonly BandSpan[], atMs: number): BandSpan['stage'] | undefined =>
  bands.findLast(({ fromMs }) => fromMs <= atMs)?.stage
