/** The same tasks told three ways: in order of need, by batch, by what has to be out for them. */
import { Effort, type Task } from '../../../shared/schemas/tasks.ts'

export const views = ['need', 'batch', 'effort'] as const
export type View = (typeof views)[number]

export const isPressing = ({ state }: Task): boolean => state === 'late' || state === 'due'

/** Tasks come in the order of need: within a group that order stays. */
function grouped<Key extends string>(
  tasks: readonly Task[],
  keyOf: (task: Task) => Key,
): [Key, Task[]][] {
  const groups = new Map<Key, Task[]>()
  for (const task of tasks) {
    const group = groups.get(keyOf(task))
    if (group) group.push(task)
    else groups.set(keyOf(task), [task])
  }
  return [...groups]
}

export const byBatch = (tasks: readonly Task[]) => grouped(tasks, ({ batchId }) => batchId)

/** In the order in which things are got out. */
export const byEffort = (tasks: readonly Task[]) =>
  grouped(tasks, ({ effort }) => effort).toSorted(
    ([a], [b]) => Effort.options.indexOf(a) - Effort.options.indexOf(b),
  )

/** What is out for one pressing task, and serves another as well. */
export const worthTogether = (tasks: readonly Task[]) =>
  byEffort(tasks).filter(([, group]) => group.length > 1 && group.some(isPressing))

/** How many jars, or batches and lots, the tasks are about. */
export const placesOf = (tasks: readonly Task[]): number =>
  new Set(
    tasks.flatMap(({ jarIds, bottleLotId, batchId }) =>
      jarIds.length > 0 ? jarIds : [bottleLotId ?? batchId],
    ),
  ).size

/** One line for each task; all the turning together is one, where there is more than one jar. */
export function linesOf(tasks: readonly Task[]): Task[][] {
  const turning = tasks.filter(({ kind }) => kind === 'turn')
  if (turning.length < 2) return tasks.map((task) => [task])
  return tasks.flatMap((task) => {
    if (task.kind !== 'turn') return [[task]]
    return task === turning[0] ? [turning] : []
  })
}
