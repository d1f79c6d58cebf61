/** A task in the words of a calendar: what, of which batch, and until when it keeps. */
import type { Task } from '../../shared/schemas/tasks.ts'
import type { PaperWords } from './words/paper-words.ts'

export interface TaskToTell {
  readonly task: Task
  readonly batchName: string
  readonly jarNames: readonly string[]
  readonly day: (instant: string) => string
}

export const taskSummary = ({ task, batchName }: TaskToTell, words: PaperWords): string =>
  words.task.summary(task.kind, batchName)

export function taskDescription({ task, jarNames, day }: TaskToTell, words: PaperWords): string {
  const { where, from, late } = words.task
  return [
    ...(jarNames.length === 0 ? [] : [where(jarNames.join(', '))]),
    from(day(task.early)),
    ...(task.late === undefined ? [] : [late(day(task.late), task.loss)]),
  ].join(' ')
}
