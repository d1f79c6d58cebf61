/** How a batch steeps: its curve with a band, what would be otherwise, where it goes, and others beside it. */
import {
  bandedCurve,
  curveOf,
  forecastJars,
  handledFromNow,
  handledFromStart,
  outcomesAt,
  sampleTimes,
  tuningOf,
  type Arrival,
  type CurveSample,
  type JarForecastFound,
  type OutcomeFound,
  type Step,
} from '../../engine/index.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type {
  ArrivalAt,
  BatchCurve,
  CurveReading,
  CurveSeries,
  DrawOffOutcome,
  JarForecast,
  WhatIf,
} from '../../../shared/schemas/steeping.ts'
import { batchSteeping, priceOfEthanolMl, type BatchSteeping } from '../batch-steeping.ts'
import { interpretationOf } from '../describe.ts'
import { instant } from '../lot-rows.ts'
import { bandsOfBatch, batchOf } from '../one-batch.ts'
import type { Session } from '../session.ts'
import { nowMs, type Handlers } from './handler.ts'

/** How far a curve looks past now: to where the slowest jar is drawn out, within reason. */
const leastAheadMs = 14 * msPerDay
const mostAheadMs = 180 * msPerDay

function curveEndMs(session: Session, { ensemble }: BatchSteeping, batchId: string): number {
  const now = nowMs(session)
  const arrivals = forecastJars(ensemble, batchId, now).map(({ settled, extracted }) =>
    Math.max(settled.typicalMs ?? Infinity, extracted.typicalMs ?? Infinity),
  )
  if (arrivals.length === 0) return now
  const aheadMs = 1.3 * (Math.max(...arrivals) - now)
  return Math.round(now + Math.min(mostAheadMs, Math.max(leastAheadMs, aheadMs)))
}

const seriesOf = (curves: ReadonlyMap<string, readonly CurveSample[]>): CurveSeries[] =>
  [...curves].map(([key, samples]) => ({
    key,
    points: samples.map(({ atMs, ...sample }) => ({ at: instant(atMs), ...sample })),
  }))

function readingsOf({ steps, residuals, outliers }: BatchSteeping): CurveReading[] {
  return steps.flatMap((step) => {
    const { move, id } = step.recorded
    const interpretation = interpretationOf(step)
    if (move.kind !== 'read' || !interpretation) return []
    const isUsed = interpretation.doubts.length === 0 || move.isConfirmed === true
    const residualSigmas = residuals.get(id)
    return [
      {
        moveId: id,
        jarId: move.jarId,
        at: move.at,
        interpretation,
        isUsed,
        ...(residualSigmas !== undefined && { residualSigmas }),
        isOutlier: outliers.has(id),
      },
    ]
  })
}

function whatIfReply(
  session: Session,
  steeping: BatchSteeping,
  batchId: string,
  asked: { whatIf: WhatIf; endMs: number; points: number },
): BatchCurve['whatIf'] {
  const { known, ensemble } = steeping
  if (!known) return undefined
  const { whatIf, endMs, points } = asked
  const now = nowMs(session)
  const drawOffMs = whatIf.drawOffAt === undefined ? undefined : Date.parse(whatIf.drawOffAt)
  const steps: readonly Step[] =
    whatIf.since === 'now'
      ? handledFromNow(ensemble.middle, batchId, whatIf, now)
      : handledFromStart(known.told, tuningOf(known.belief.spread, known.belief.unknowns), whatIf)
  const untilMs = drawOffMs ?? endMs
  const times = sampleTimes(steps, endMs, points).filter((ms) => ms <= untilMs)
  const outcomeMs = drawOffMs ?? firstDrawMs(steeping.steps) ?? endMs
  const asIs = new Map(outcomesAt(ensemble.middle, batchId, outcomeMs).map((o) => [o.jarId, o]))
  return {
    series: seriesOf(curveOf(steps, batchId, times)),
    outcomes: outcomesAt(steps, batchId, outcomeMs).flatMap((changed) => {
      const same = asIs.get(changed.jarId)
      return same ? [{ changed: outcomeReply(changed), asIs: outcomeReply(same) }] : []
    }),
  }
}

/** Where the liquid has been drawn off already, that instant is what handling is judged at. */
const firstDrawMs = (steps: readonly Step[]): number | undefined =>
  steps.find(({ recorded }) => recorded.move.kind === 'drawOff')?.atMs

const outcomeReply = ({ atMs, ...outcome }: OutcomeFound): DrawOffOutcome => ({
  ...outcome,
  at: instant(atMs),
})

const arrivalReply = ({ earlyMs, typicalMs, lateMs }: Arrival): ArrivalAt => ({
  ...(earlyMs !== undefined && { early: instant(earlyMs) }),
  ...(typicalMs !== undefined && { typical: instant(typicalMs) }),
  ...(lateMs !== undefined && { late: instant(lateMs) }),
})

function forecastReply(found: JarForecastFound, priceMinorPerMl: number | undefined): JarForecast {
  const { settled, extracted, sugarDraw, ...rest } = found
  return {
    ...rest,
    settledAt: arrivalReply(settled),
    extractedAt: arrivalReply(extracted),
    ...(sugarDraw && {
      sugarDraw: {
        ...sugarDraw,
        ...(priceMinorPerMl !== undefined && {
          valueMinor: priceMinorPerMl * sugarDraw.recoveredEthanolMl,
        }),
      },
    }),
  }
}

export const curveHandlers: Pick<
  Handlers<'batches.curve' | 'batches.forecast' | 'batches.compare'>,
  'batches.curve' | 'batches.forecast' | 'batches.compare'
> = {
  'batches.curve': (session, { batchId, points, whatIf }) => {
    batchOf(session, batchId)
    const steeping = batchSteeping(session, batchId)
    const endMs = curveEndMs(session, steeping, batchId)
    const changed = whatIf && whatIfReply(session, steeping, batchId, { whatIf, endMs, points })
    return {
      series: seriesOf(bandedCurve(steeping.ensemble, batchId, endMs, points)),
      now: instant(nowMs(session)),
      bands: bandsOfBatch(session, batchId),
      readings: readingsOf(steeping),
      ...(steeping.known && { fit: steeping.known.fit }),
      ...(changed && { whatIf: changed }),
    }
  },
  'batches.forecast': (session, { batchId }) => {
    batchOf(session, batchId)
    const steeping = batchSteeping(session, batchId)
    const price = priceOfEthanolMl(steeping.steps, session.ledger.folded.cellar)
    return {
      ...(steeping.known && { fit: steeping.known.fit }),
      jars: forecastJars(steeping.ensemble, batchId, nowMs(session)).map((found) =>
        forecastReply(found, price),
      ),
    }
  },
  'batches.compare': (session, { batchIds, points }) =>
    batchIds.map((batchId) => {
      batchOf(session, batchId)
      const { middle } = batchSteeping(session, batchId).ensemble
      const startMs = middle[0]?.atMs ?? nowMs(session)
      const times = sampleTimes(middle, nowMs(session), points)
      const whole = curveOf(middle, batchId, times).get('whole') ?? []
      return {
        batchId,
        points: whole.map(({ atMs, ...values }) => ({
          day: (atMs - startMs) / msPerDay,
          ...values,
        })),
      }
    }),
}
