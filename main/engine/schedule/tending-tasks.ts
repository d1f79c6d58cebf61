/**
 * What keeps a jar well while it steeps: turning it, seeing that the fruit is covered, covering it,
 * and strengthening what may ferment.
 *
 * Turning: daily in the first week, when fruit floats and sugar lies at the bottom, and for as long
 * as its maker says so; else weekly (common practice, no source). A jar that is never turned is
 * looked into instead. A turning that was not logged is forgotten when the next one is due: nobody
 * writes down every shake of a jar. What may ferment is judged by Delle's number, and made
 * strong enough for the green of the craft reference (85; section 5).
 */
import { msPerDay } from '../../../shared/spans-of-time.ts'
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import type { Proposal, TaskKind } from '../../../shared/schemas/tasks.ts'
import { delleLimit, delleNumber, steepingLimitPctVol } from '../cautions/jar-cautions.ts'
import { uncoveredBy } from '../cautions/uncovered.ts'
import type { JarState } from '../ledger/cellar-state.ts'
import { describeJar } from '../ledger/jar-liquid.ts'
import type { BatchToSchedule } from './batch-to-schedule.ts'
import type { DoneMoves } from './done-moves.ts'
import { roundTo } from './fruit-tasks.ts'
import { taskId, usualLoss, windowFrom, type ScheduledTask, type Window } from './scheduled-task.ts'

const firstWeekMs = 7 * msPerDay

export function tendingTasks(
  batch: BatchToSchedule,
  done: DoneMoves,
  jarId: string,
  jar: JarState,
): ScheduledTask[] {
  const task = (kind: TaskKind, ordinal: number, window: Window, log: Proposal): ScheduledTask => ({
    id: taskId(batch.batchId, kind, jarId, ordinal),
    kind,
    batchId: batch.batchId,
    jarIds: [jarId],
    ordinal,
    ...window,
    from: kind === 'turn' || kind === 'lookIn' ? 'trade' : 'ledger',
    loss: usualLoss[kind],
    isWaiting: false,
    log,
  })
  return [
    ...turning(batch, done, jarId, jar, task),
    ...covering(batch, jarId, jar, task),
    ...strengthening(batch, jarId, jar, task),
  ]
}

type MakeTask = (kind: TaskKind, ordinal: number, window: Window, log: Proposal) => ScheduledTask

/** Less sugar than this at the bottom is no syrup that floats anything. */
const leastBedG = 1

function turning(
  { nowMs }: BatchToSchedule,
  done: DoneMoves,
  jarId: string,
  jar: JarState,
  task: MakeTask,
): ScheduledTask[] {
  const { turned } = jar.keeping
  const hasBed = jar.bodies.bed.sugarG > leastBedG
  const isSteeping = jar.stage === 'steeping' && jar.fruit !== null
  if (!isSteeping && !hasBed) return []
  if (turned === 'never' && !isSteeping) return []
  const isFirstWeek = nowMs - jar.stageSinceMs < firstWeekMs
  const days = turned === 'daily' || (turned === 'weekly' && isFirstWeek) ? 1 : 7
  const sinceMs = Math.max(jar.stageSinceMs, done.handledMs(jarId) ?? 0)
  // The last one that has come, or the first one to come.
  const rounds = Math.max(1, Math.floor((nowMs - sinceMs) / (days * msPerDay)))
  const dueMs = sinceMs + rounds * days * msPerDay
  const ordinal = Math.floor((dueMs - jar.stageSinceMs) / msPerDay) + 1
  const window = { earlyMs: dueMs, dueMs, lateMs: undefined }
  const made = task(turned === 'never' ? 'lookIn' : 'turn', ordinal, window, {
    kind: 'stir',
    jarIds: [jarId],
  })
  return [isSteeping && isFirstWeek ? { ...made, loss: 'mould' } : made]
}

function covering(
  { capacityMlOf }: BatchToSchedule,
  jarId: string,
  jar: JarState,
  task: MakeTask,
): ScheduledTask[] {
  const bare = uncoveredBy(jarId, jar)
  if (!bare) return []
  const bareMl = bare.gapsMl - bare.freeMl
  const capacityMl = capacityMlOf(jarId)
  const { fillMl } = describeJar(jarId, jar)
  const roomMl = capacityMl === undefined ? bareMl : safeFillFraction * capacityMl - fillMl
  const amount = roundTo(Math.min(bareMl, roomMl), 10)
  return [
    task('coverFruit', 1, windowFrom(jar.clock.atMs, [0, 1, 3]), {
      kind: 'pourSpirit',
      jarIds: [jarId],
      ...(amount > 0 && { amount }),
    }),
  ]
}

/** Delle number that is safe with room to spare; craft reference, section 5. */
const safeDelle = 85

function strengthening(
  { spiritPctVol }: BatchToSchedule,
  jarId: string,
  jar: JarState,
  task: MakeTask,
): ScheduledTask[] {
  const { resting } = describeJar(jarId, jar)
  if (!resting || resting.strengthPctVol === 0) return []
  const { strengthPctVol, sugarGPerL, volumeMl } = resting
  const delle = delleNumber(strengthPctVol, sugarGPerL)
  const isWeakForFruit = jar.fruit !== null && strengthPctVol < steepingLimitPctVol
  if (delle >= delleLimit && !isWeakForFruit) return []
  const amount = spiritPctVol === undefined ? 0 : spiritToKeepMl()
  return [
    task('strengthen', 1, windowFrom(jar.clock.atMs, [0, 0, 2]), {
      kind: 'pourSpirit',
      jarIds: [jarId],
      ...(amount > 0 && { amount }),
    }),
  ]

  /** Both limits are shares of the volume: what is poured in is taken to add to it in full. */
  function spiritToKeepMl(): number {
    const spirit = spiritPctVol as number
    const forDelle =
      (volumeMl * (safeDelle - delle)) / Math.max(1, delleNumber(spirit, 0) - safeDelle)
    const forFruit = isWeakForFruit
      ? (volumeMl * (steepingLimitPctVol - strengthPctVol)) /
        Math.max(1, spirit - steepingLimitPctVol)
      : 0
    return Math.ceil(Math.max(forDelle, forFruit) / 10) * 10
  }
}
