/** How a batch steeps: its curve with a band, what would be otherwise, where it goes, and others beside it. */
import {
  curveOf,
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
import { outlookOf, type Outlook } from '../batch-outlook.ts'
import { batchSteeping, priceOfEthanolMl, type BatchSteeping } from '../batch-steeping.ts'
import { interpretationOf } from '../describe.ts'
import { instant } from '../lot-rows.ts'
import { bandsOfBatch, batchOf } from '../one-batch.ts'
import { nowMs, type Handlers } from './handler.ts'

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
  steeping: BatchSteeping,
  { nowMs: now, endMs }: Outlook,
  batchId: string,
  asked: { whatIf: WhatIf; points: number },
): BatchCurve['whatIf'] {
  const { known, ensemble } = steeping
  if (!known) return undefined
  const { whatIf, points } = asked
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
    const outlook = outlookOf(steeping, batchId, nowMs(session))
    const changed = whatIf && whatIfReply(steeping, outlook, batchId, { whatIf, points })
    return {
      series: seriesOf(outlook.curve(points)),
      now: instant(outlook.nowMs),
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
      jars: outlookOf(steeping, batchId, nowMs(session)).jars.map((found) =>
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
