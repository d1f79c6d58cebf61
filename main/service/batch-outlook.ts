/**
 * Where a batch's jars go and the curve that leads there, as long as nothing about them changes: a
 * what-if asks for both again at every movement of a slider, and they are most of its work.
 */
import { bandedCurve, forecastJars, type JarForecastFound } from '../engine/index.ts'
import type { CurveSample } from '../engine/index.ts'
import { msPerDay } from '../../shared/spans-of-time.ts'
import type { BatchSteeping } from './batch-steeping.ts'

export interface Outlook {
  /** The present that it was told from: less than a minute ago. */
  readonly nowMs: number
  readonly jars: readonly JarForecastFound[]
  /** The end of the curve. */
  readonly endMs: number
  /** Of each jar and of the whole, with a band. */
  readonly curve: (points: number) => ReadonlyMap<string, readonly CurveSample[]>
}

/** A fit belongs to one state of its batch, and what follows from it goes with it. */
const known = new WeakMap<BatchSteeping, Outlook>()

/** In a minute nothing steeps that could be seen. */
const freshMs = 60_000

export function outlookOf(steeping: BatchSteeping, batchId: string, nowMs: number): Outlook {
  const before = known.get(steeping)
  if (before && nowMs >= before.nowMs && nowMs - before.nowMs < freshMs) return before
  const outlook = newOutlook(steeping, batchId, nowMs)
  known.set(steeping, outlook)
  return outlook
}

function newOutlook({ ensemble }: BatchSteeping, batchId: string, nowMs: number): Outlook {
  const jars = forecastJars(ensemble, batchId, nowMs)
  const endMs = curveEndMs(jars, nowMs)
  const curves = new Map<number, ReturnType<Outlook['curve']>>()
  return {
    nowMs,
    jars,
    endMs,
    curve: (points) => {
      const found = curves.get(points) ?? bandedCurve(ensemble, batchId, endMs, points)
      curves.set(points, found)
      return found
    },
  }
}

/** How far a curve looks past now: to where the slowest jar is drawn out, within reason. */
const leastAheadMs = 14 * msPerDay
const mostAheadMs = 180 * msPerDay

function curveEndMs(jars: readonly JarForecastFound[], nowMs: number): number {
  if (jars.length === 0) return nowMs
  const arrivals = jars.map(({ settled, extracted }) =>
    Math.max(settled.typicalMs ?? Infinity, extracted.typicalMs ?? Infinity),
  )
  const aheadMs = 1.3 * (Math.max(...arrivals) - nowMs)
  return Math.round(nowMs + Math.min(mostAheadMs, Math.max(leastAheadMs, aheadMs)))
}
