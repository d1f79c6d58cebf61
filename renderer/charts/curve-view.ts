/** Everything the curve's drawing needs, worked out from finished series: scales, bands, readings. */
import type { StageBand } from '../../shared/schemas/cellar.ts'
import type { BatchCurve, CurveReading, CurveSeries } from '../../shared/schemas/steeping.ts'
import { curveRows, withRowAt, type CurveRow } from './curve-rows.ts'
import { scalesOf, type Scales } from './curve-scale.ts'
import type { RestingValues } from './resting-values.ts'
import { timeDomain, type TimeDomain } from './time-axis.ts'

export type ReadingStanding = 'used' | 'notUsed' | 'outlier'

export interface CurveReadingPoint {
  readonly moveId: string
  readonly jarId: string
  readonly atMs: number
  readonly strengthPctVol: number | undefined
  readonly sugarGPerL: number | undefined
  readonly strengthUncertaintyPctVol: number | undefined
  readonly sugarUncertaintyGPerL: number | undefined
  readonly standing: ReadingStanding
}

export interface BandSpan {
  readonly stage: StageBand['stage']
  readonly fromMs: number
  readonly toMs: number
}

export interface CurveView {
  readonly rows: readonly CurveRow[]
  readonly domain: TimeDomain
  /** What lies after it is a forecast. */
  readonly nowMs: number
  readonly hasForecast: boolean
  readonly bands: readonly BandSpan[]
  readonly readings: readonly CurveReadingPoint[]
  readonly scales: Scales
  /** Where the liquid comes to rest, when it is still on its way there. */
  readonly resting?: RestingValues | undefined
  /** The sweetest instant, where it lies above the scale. */
  readonly sugarPeak?: { readonly atMs: number; readonly sugarGPerL: number }
  /** The same liquid handled otherwise. */
  readonly changed?: ChangedCurve | undefined
}

export interface ChangedCurve {
  readonly rows: readonly CurveRow[]
  /** When it would be drawn off, where that is asked. */
  readonly drawOffMs: number | undefined
}

export interface CurveChoice {
  /** The whole batch (`whole`) or one jar; readings of other jars are left out then. */
  readonly key: string
  readonly resting?: RestingValues | undefined
  /** True ends where the liquid went into bottles: what follows is one flat line. */
  readonly endsAtBottles?: boolean
  readonly whatIf?: { series: readonly CurveSeries[]; drawOffMs: number | undefined } | undefined
}

export function curveView(curve: BatchCurve, choice: CurveChoice): CurveView {
  const { key, resting, whatIf, endsAtBottles = false } = choice
  const nowMs = Date.parse(curve.now)
  const endMs = endsAtBottles ? (bottledMs(curve) ?? Infinity) : Infinity
  const upToEnd = (all: readonly CurveRow[]) =>
    withRowAt(all, endMs).filter(({ atMs }) => atMs <= endMs)
  const changed = whatIf && { ...whatIf, rows: upToEnd(curveRows(whatIf.series, key)) }
  const rows = upToEnd(withRowAt(curveRows(curve.series, key), nowMs))
  const bands = curve.bands
    .map(({ stage, from, to }) => ({
      stage,
      fromMs: Date.parse(from),
      toMs: Math.min(endMs, Date.parse(to)),
    }))
    .filter(({ fromMs }) => fromMs < endMs)
  const readings = curve.readings
    .filter(({ jarId }) => key === 'whole' || jarId === key)
    .map(readingPoint)
    .filter(({ atMs }) => atMs <= endMs)
  const times = [...rows, ...readings].map(({ atMs }) => atMs)
  const fromMs = Math.min(bands[0]?.fromMs ?? nowMs, ...times)
  const toMs = Math.max(bands.at(-1)?.toMs ?? fromMs, ...times)
  const domain = timeDomain(fromMs, toMs)
  const peak = briefPeak(rows, bands, domain)
  const all = [...rows, ...(changed?.rows ?? [])]
  const onScale = peak ? all.filter(({ atMs }) => atMs >= peak.untilMs) : all
  return {
    rows,
    domain,
    nowMs,
    hasForecast: rows.some(({ atMs }) => atMs > nowMs),
    bands,
    readings,
    resting,
    scales: scalesOf(onScale, readings),
    ...(peak && { sugarPeak: peak.top }),
    ...(changed && changed.rows.length > 0 && { changed }),
  }
}

/** How long rest in bottles must be, against all before it, to press that to the edge. */
const longRest = 1

/** When the liquid had gone into bottles, where it has rested there for long since. */
export function bottledMs({ bands }: Pick<BatchCurve, 'bands'>): number | undefined {
  const first = bands[0]
  const rest = bands.findLast(({ stage }) => stage !== 'resting' && stage !== 'finished')
  const last = bands.at(-1)
  if (!first || !rest || !last || rest === last) return undefined
  const [from, bottled, to] = [first.from, rest.to, last.to].map((at) => Date.parse(at)) as [
    number,
    number,
    number,
  ]
  return to - bottled > longRest * (bottled - from) ? bottled : undefined
}

function readingPoint(reading: CurveReading): CurveReadingPoint {
  const { moveId, jarId, at, interpretation, isUsed, isOutlier } = reading
  return {
    moveId,
    jarId,
    atMs: Date.parse(at),
    strengthPctVol: interpretation.strengthPctVol,
    sugarGPerL: interpretation.sugarGPerL,
    strengthUncertaintyPctVol: interpretation.strengthUncertaintyPctVol,
    sugarUncertaintyGPerL: interpretation.sugarUncertaintyGPerL,
    standing: isOutlier ? 'outlier' : isUsed ? 'used' : 'notUsed',
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
  const top = layered.find((row) => row.values?.sugarGPerL === sweetest)
  if (!top || sweetest < 1.6 * later || later === 0) return undefined
  return { untilMs, top: { atMs: top.atMs, sugarGPerL: sweetest } }
}

const sugarOf = ({ values }: CurveRow) => values?.sugarGPerL

const greatest = (values: readonly (number | undefined)[]) =>
  Math.max(0, ...values.map((value) => value ?? 0))

/** The stage at an instant: the last band that had begun by then. */
export const stageAt = (bands: readonly BandSpan[], atMs: number): BandSpan['stage'] | undefined =>
  bands.findLast(({ fromMs }) => fromMs <= atMs)?.stage
