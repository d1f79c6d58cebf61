/** The tasks of every batch in hand. Finished batches are never looked at, however many there are. */
import { allBatches, batchById } from '../cellar/batch-store.ts'
import { allJars } from '../cellar/jar-store.ts'
import { allPlans, planOfBatch } from '../cellar/plan-store.ts'
import { allPutOff } from '../cellar/task-store.ts'
import {
  batchTasks,
  dayOf,
  fadingTasks,
  forecastJars,
  stepsOf,
  toldTask,
  type BatchToSchedule,
  type DrawForecast,
  type JarState,
  type ScheduledTask,
} from '../engine/index.ts'
import type { Batch } from '../../shared/schemas/cellar.ts'
import type { Plan } from '../../shared/schemas/drafts.ts'
import type { Task } from '../../shared/schemas/tasks.ts'
import { batchSteeping, type BatchSteeping } from './batch-steeping.ts'
import { jarsOf } from './describe.ts'
import { nowMs } from './handlers/handler.ts'
import type { Session } from './session.ts'
import { shelfNews, shelfNewsOf } from './shelf-news.ts'

/** A batch is in hand until it is drunk. */
export function batchesInHand({ book, ledger }: Session): Batch[] {
  const { batches } = ledger.folded.cellar
  return allBatches(book).filter(({ id }) => batches.get(id)?.stage !== 'finished')
}

/** The one batch, unless it is drunk: its page must not read the whole cellar. */
function inHand({ book, ledger }: Session, batchId: string): Batch[] {
  const batch = batchById(book, batchId)
  const stage = ledger.folded.cellar.batches.get(batchId)?.stage
  return batch && stage !== 'finished' ? [batch] : []
}

/** `batchId` left out: of all batches in hand. */
export function scheduledTasks(session: Session, batchId?: string): ScheduledTask[] {
  const now = nowMs(session)
  const batches = batchId === undefined ? batchesInHand(session) : inHand(session, batchId)
  const known = knownOf(session, batchId)
  return [
    ...batches.flatMap((batch) => batchTasks(toSchedule(session, known, batch, now))),
    ...fadingTasks(known.shelf.fading, now),
  ]
}

/** As they stand today, with what the maker put off. */
export function toldTasks(session: Session, tasks: readonly ScheduledTask[]): Task[] {
  const putOff = allPutOff(session.book)
  const today = { nowMs: nowMs(session), timeZone: timeZoneOf(session), putOff }
  return tasks.map((task) => toldTask(task, today))
}

export const timeZoneOf = ({ options }: Session): string =>
  options.timeZone ?? new Intl.DateTimeFormat().resolvedOptions().timeZone

export const todayOf = (session: Session): string => dayOf(nowMs(session), timeZoneOf(session))

/** What is asked of every batch, read once; of the shelf and the plans only what the one batch needs. */
function knownOf(session: Session, batchId: string | undefined) {
  const { book, ledger } = session
  const { cellar } = ledger.folded
  const strengths = [...cellar.lots.values()].flatMap(({ goods, matter }) =>
    goods.kind === 'spirit' && matter.ethanolG > leastSpiritG ? [goods.strengthPctVol] : [],
  )
  return {
    shelf: batchId === undefined ? shelfNews(session) : shelfNewsOf(session, batchId),
    capacities: new Map(allJars(book).map(({ id, capacityMl }) => [id, capacityMl])),
    plans: new Map(plansOf(session, batchId).map((plan) => [plan.batchId, plan])),
    spiritPctVol: strengths.length === 0 ? undefined : Math.max(...strengths),
  }
}

function plansOf({ book }: Session, batchId: string | undefined): Plan[] {
  if (batchId === undefined) return allPlans(book)
  const plan = planOfBatch(book, batchId)
  return plan ? [plan] : []
}

/** Less ethanol than this is the wet bottom of a bottle. */
const leastSpiritG = 10

function toSchedule(
  session: Session,
  known: ReturnType<typeof knownOf>,
  batch: Batch,
  now: number,
): BatchToSchedule {
  const { cellar, steps } = session.ledger.folded
  const progress = cellar.batches.get(batch.id)
  const jars = jarsOf(cellar, batch.id, now)
  const lots = (progress?.bottleLotIds ?? [])
    .flatMap((id) => {
      const lot = cellar.bottles.get(id)
      if (!lot) return []
      const readyAtMs = known.shelf.readyAtMs.get(id)
      const { bottledAtMs, count } = lot
      return [{ id, bottledAtMs, count, ...(readyAtMs !== undefined && { readyAtMs }) }]
    })
    .sort((a, b) => a.bottledAtMs - b.bottledAtMs || (a.id < b.id ? -1 : 1))
  return {
    batchId: batch.id,
    openedAtMs: Date.parse(batch.openedAt),
    progress,
    steps: stepsOf(steps, batch.id),
    jars,
    lots,
    forecasts: drawForecasts(session, batch.id, jars),
    plan: known.plans.get(batch.id),
    fruitOf: session.fruits.fruitOf,
    capacityMlOf: (jarId) => known.capacities.get(jarId),
    spiritPctVol: known.spiritPctVol,
    nowMs: now,
  }
}

/** A forecast from the batch's last move on is the same on every later day. */
const kept = new WeakMap<BatchSteeping, ReadonlyMap<string, DrawForecast>>()

function drawForecasts(
  session: Session,
  batchId: string,
  jars: ReadonlyMap<string, JarState>,
): ReadonlyMap<string, DrawForecast> {
  if (![...jars.values()].some(({ stage }) => stage === 'steeping')) return new Map()
  const steeping = batchSteeping(session, batchId)
  const known = kept.get(steeping)
  if (known) return known
  const hasReadings = (steeping.known?.fit.readingsUsed ?? 0) > 0
  const found = new Map(
    forecastJars(steeping.ensemble, batchId, Number.NEGATIVE_INFINITY).map(
      ({ jarId, settled, extracted }) => [
        jarId,
        { settledMs: settled.typicalMs, extractedMs: extracted.typicalMs, hasReadings },
      ],
    ),
  )
  kept.set(steeping, found)
  return found
}
