/** What comes next for each batch: the schedule's word, wherever a batch is told. */
import { nextTask, type ScheduledTask } from '../engine/index.ts'
import type { Task } from '../../shared/schemas/tasks.ts'
import { scheduledTasks, toldTasks } from './schedule.ts'
import type { Session } from './session.ts'

/** By batch; one that wants nothing has none. */
export function nextTasks(
  session: Session,
  tasks: readonly ScheduledTask[] = scheduledTasks(session),
): ReadonlyMap<string, Task> {
  const next = [...Map.groupBy(tasks, ({ batchId }) => batchId).values()].flatMap(
    (own) => nextTask(own) ?? [],
  )
  return new Map(toldTasks(session, next).map((task) => [task.batchId, task]))
}
