/**
 * How do tasks stand today, and in what order does a maker want to hear of them?
 *
 * Late when what waiting costs is being lost; due when its day has come; open when it can be done.
 * What is lost by waiting decides the order of what can be done; among equals the state, then what
 * is late first. A task put off is not told until its day, unless it is late by then: it comes back.
 */
import { Loss, TaskState, type Task } from '../../../shared/schemas/tasks.ts'
import { dayOf } from './day-of.ts'
import { effortOf, type ScheduledTask } from './scheduled-task.ts'

export interface Today {
  readonly nowMs: number
  readonly timeZone: string
  /** By task: the day until which its maker put it off. */
  readonly putOff: ReadonlyMap<string, string>
}

const instant = (ms: number): string => new Date(Math.round(ms)).toISOString()

export function toldTask(task: ScheduledTask, today: Today): Task {
  const { earlyMs, dueMs, lateMs, isWaiting, ...same } = task
  const { nowMs, timeZone } = today
  const day = dayOf(nowMs, timeZone)
  const until = today.putOff.get(task.id)
  const isLate = lateMs !== undefined && lateMs <= nowMs
  return {
    ...same,
    jarIds: [...task.jarIds],
    early: instant(earlyMs),
    due: instant(dueMs),
    ...(lateMs !== undefined && { late: instant(lateMs) }),
    effort: effortOf[task.kind],
    isWaiting,
    state: isWaiting ? 'coming' : stateOf(task, day, timeZone, isLate),
    ...(until !== undefined && until > day && { putOff: { until, isBack: isLate && !isWaiting } }),
  }
}

function stateOf(
  { earlyMs, dueMs, loss }: ScheduledTask,
  day: string,
  timeZone: string,
  isLate: boolean,
): TaskState {
  if (isLate) return 'late'
  // What is due at some hour of today is due today. What loses nothing is never pressing.
  if (loss !== 'nothing' && dayOf(dueMs, timeZone) <= day) return 'due'
  return dayOf(earlyMs, timeZone) <= day ? 'open' : 'coming'
}

/** Until its day a task that was put off is nobody's business, but for one that came back. */
export const isHidden = ({ putOff }: Task): boolean => putOff !== undefined && !putOff.isBack

const rank = <Value extends string>(of: { readonly options: readonly Value[] }, value: Value) =>
  of.options.indexOf(value)

const isPressing = ({ state }: Task): boolean => state === 'late' || state === 'due'

/** Pressing ones first; then by what is lost, by state, by when it is lost, by when it is due. */
export const byNeed = (a: Task, b: Task): number =>
  Number(isPressing(b)) - Number(isPressing(a)) ||
  rank(Loss, a.loss) - rank(Loss, b.loss) ||
  rank(TaskState, a.state) - rank(TaskState, b.state) ||
  (a.late ?? a.due).localeCompare(b.late ?? b.due) ||
  a.due.localeCompare(b.due) ||
  a.id.localeCompare(b.id)

export const byDay = (a: Task, b: Task): number =>
  a.early.localeCompare(b.early) || a.id.localeCompare(b.id)
