/**
 * What does a batch need next, and when?
 *
 * The road to the bottle comes from the plan the batch was started with, for as long as that has moves
 * to come; else from the trade's intervals, the fruit's own weeks and the steeping forecast. What
 * keeps a jar well meanwhile is read off the jars. A task is done by logging its move: it is not
 * asked for any more, because the ledger shows that it happened.
 * In: one batch of the ledger, now. Out: its tasks, those that can be done and those that wait.
 */
import type { BatchToSchedule } from './batch-to-schedule.ts'
import { doneMoves, type DoneMoves } from './done-moves.ts'
import { fruitTasks } from './fruit-tasks.ts'
import { liquidTasks } from './liquid-tasks.ts'
import { tastings } from './lot-tasks.ts'
import { plannedTasks } from './planned-tasks.ts'
import { taskId, usualLoss, type ScheduledTask } from './scheduled-task.ts'
import { tendingTasks } from './tending-tasks.ts'

export function batchTasks(batch: BatchToSchedule): ScheduledTask[] {
  // All in bottles: whatever a plan still had is passed over.
  if (batch.progress?.stage === 'resting') return tastings(batch, undefined)
  const done = doneMoves(batch.steps, batch.batchId)
  const planned = plannedTasks(batch, done)
  const road = planned.length > 0 ? planned : usualRoad(batch, done)
  const tending = [...batch.jars].flatMap(([jarId, jar]) => tendingTasks(batch, done, jarId, jar))
  const bottling = road.find(({ kind }) => kind === 'bottle')
  return [...road, ...tending, ...tastings(batch, bottling)]
}

function usualRoad(batch: BatchToSchedule, done: DoneMoves): ScheduledTask[] {
  if (batch.jars.size === 0 && batch.lots.length === 0) {
    const stage = batch.progress?.stage ?? 'empty'
    return stage === 'empty' ? [charging(batch)] : []
  }
  const fruit = [...batch.jars].flatMap(([jarId, jar]) =>
    jar.fruit ? fruitTasks(batch, done, jarId, jar) : [],
  )
  return [...fruit, ...liquidTasks(batch, done, fruit)]
}

/** An empty batch waits for its fruit, on no day in particular. */
const charging = ({ batchId, openedAtMs }: BatchToSchedule): ScheduledTask => ({
  id: taskId(batchId, 'charge', undefined, 1),
  kind: 'charge',
  batchId,
  jarIds: [],
  ordinal: 1,
  earlyMs: openedAtMs,
  dueMs: openedAtMs,
  lateMs: undefined,
  from: 'ledger',
  loss: usualLoss.charge,
  isWaiting: false,
  log: { kind: 'charge', jarIds: [] },
})
