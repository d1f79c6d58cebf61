/**
 * What the fruit of one jar goes through until it is thrown out, by the trade's intervals: spirit
 * after the sugar night, drawing off, sugar, the sugar draw, pressing, and the jar cleared. The
 * first of these can be done; the others wait, each counted from the day the one before is due.
 */
import type { JarState } from '../ledger/cellar-state.ts'
import { usualDays } from '../ledger/usual-days.ts'
import type { Proposal, TaskKind, TaskSource } from '../../../shared/schemas/tasks.ts'
import type { BatchToSchedule } from './batch-to-schedule.ts'
import type { DoneMoves } from './done-moves.ts'
import { drawOffWindow } from './draw-off-window.ts'
import { taskId, usualLoss, windowFrom, type ScheduledTask, type Window } from './scheduled-task.ts'

const phases = [
  'addSpirit',
  'drawOff',
  'coverWithSugar',
  'pourOffSugarDraw',
  'press',
  'clearJar',
] as const
type Phase = (typeof phases)[number]

/** Phases that bring an extract of their own. */
export const givesExtract = (kind: TaskKind): boolean =>
  kind === 'drawOff' || kind === 'pourOffSugarDraw' || kind === 'press'

export function fruitTasks(
  batch: BatchToSchedule,
  done: DoneMoves,
  jarId: string,
  jar: JarState,
): ScheduledTask[] {
  const first = firstPhase(jar, batch.progress?.stage)
  const tasks: ScheduledTask[] = []
  let baseMs = jar.stageSinceMs
  for (const phase of phases.slice(phases.indexOf(first))) {
    const window = windowOf(batch, phase, jarId, jar, baseMs)
    const ordinal = done.count(phase, jarId) + 1
    tasks.push({
      id: taskId(batch.batchId, phase, jarId, ordinal),
      kind: phase,
      batchId: batch.batchId,
      jarIds: [jarId],
      ordinal,
      earlyMs: window.earlyMs,
      dueMs: window.dueMs,
      lateMs: window.lateMs,
      from: window.from ?? 'trade',
      loss: window.isForStones ? 'stones' : usualLoss[phase],
      isWaiting: tasks.length > 0,
      log: proposalOf(batch, phase, jarId, jar),
    })
    // What is overdue is done today at the earliest, and the rest after it.
    baseMs = Math.max(window.dueMs, batch.nowMs)
  }
  return tasks
}

function firstPhase(jar: JarState, batchStage: string | undefined): Phase {
  // Once its extracts are together nobody draws from the fruit again.
  const isMarried = ['married', 'filtered', 'resting'].includes(batchStage ?? '')
  switch (jar.stage) {
    case 'layered':
      return 'addSpirit'
    case 'steeping':
      return 'drawOff'
    case 'sugarDraw':
      return 'pourOffSugarDraw'
    case 'drawnOff':
      if (isMarried) return 'clearJar'
      return jar.fruit?.sugarDraws === 0 ? 'coverWithSugar' : 'press'
    default:
      return 'clearJar'
  }
}

function windowOf(
  batch: BatchToSchedule,
  phase: Phase,
  jarId: string,
  jar: JarState,
  baseMs: number,
): Window & { from?: TaskSource; isForStones?: boolean } {
  return phase === 'drawOff'
    ? drawOffWindow(batch, jarId, jar, baseMs)
    : windowFrom(baseMs, usualDays[phase])
}

/** Sugar that covers a kilogram of spent fruit; craft reference, section 2.4, common practice. */
const sugarPerFruit = 0.25

function proposalOf(
  { fruitOf }: BatchToSchedule,
  phase: Phase,
  jarId: string,
  { fruit }: JarState,
): Proposal {
  const jarIds = [jarId]
  const edibleG = fruit?.edibleG ?? 0
  switch (phase) {
    case 'addSpirit': {
      const amount = spiritFor(fruit?.fruits ?? [], fruitOf)
      return { kind: 'pourSpirit', jarIds, ...(amount > 0 && { amount }) }
    }
    case 'coverWithSugar': {
      const amount = roundTo(sugarPerFruit * edibleG, 10)
      return { kind: 'coverWithSugar', jarIds, ...(amount > 0 && { amount }) }
    }
    case 'press':
      return { kind: 'press', jarIds }
    case 'clearJar':
      return { kind: 'discard', jarIds }
    case 'drawOff':
    case 'pourOffSugarDraw':
      return { kind: 'drawOff', jarIds }
  }
}

/** As much as the trade pours on this much fruit; nothing where that is not known. */
function spiritFor(
  fruits: readonly { fruitId: string; massG: number }[],
  fruitOf: BatchToSchedule['fruitOf'],
): number {
  const ml = fruits.reduce((sum, { fruitId, massG }) => {
    const kgPerL = fruitOf(fruitId).fruitKgPerLSpirit?.typical
    return kgPerL ? sum + massG / kgPerL : sum
  }, 0)
  return roundTo(ml, 10)
}

export const roundTo = (value: number, step: number): number => Math.round(value / step) * step
