/**
 * Which of a batch's tasks is its next step? The first one due of those that can be done; with none
 * of them, the first that waits. Turning and looking in go on beside every step, and bottles that
 * are best drunk are the shelf's to tell.
 */
import type { TaskKind } from '../../../shared/schemas/tasks.ts'
import type { ScheduledTask } from './scheduled-task.ts'

const noStep: readonly TaskKind[] = ['turn', 'lookIn', 'drinkUp', 'finishOpened']

export function nextTask(tasks: readonly ScheduledTask[]): ScheduledTask | undefined {
  const steps = tasks.filter(({ kind }) => !noStep.includes(kind))
  const doable = steps.filter(({ isWaiting }) => !isWaiting)
  const [first] = (doable.length > 0 ? doable : steps).toSorted(
    (a, b) => a.dueMs - b.dueMs || (a.id < b.id ? -1 : 1),
  )
  return first
}
