/** Tasks: which there are, and putting one off. Doing one is logging its move. */
import { putOff } from '../../cellar/task-store.ts'
import { batchOf } from '../one-batch.ts'
import { scheduledTasks, toldTasks } from '../schedule.ts'
import { notFound } from '../service-error.ts'
import type { Session } from '../session.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

/** Batch ids have no dot: what stands before the first one is the batch. */
const batchIdOfTask = (taskId: string): string => taskId.split('.')[0] ?? ''

const findTask = (session: Session, taskId: string) =>
  scheduledTasks(session, batchIdOfTask(taskId)).find(({ id }) => id === taskId)

function keep(session: Session, taskId: string, until: string | null) {
  const { book, options } = session
  const at = options.now().toISOString()
  return { before: book.transaction(() => putOff(book, taskId, until, at)).immediate() }
}

export const scheduleHandlers: Handlers<ChannelsOf<'schedule'>> = {
  'schedule.list': (session, { batchId }) => {
    if (batchId !== undefined) batchOf(session, batchId)
    return toldTasks(session, scheduledTasks(session, batchId))
  },
  'schedule.task': (session, { taskId }) => {
    const task = findTask(session, taskId)
    return task ? (toldTasks(session, [task])[0] ?? null) : null
  },
  'schedule.putOff': (session, { taskId, until }) => {
    if (!findTask(session, taskId)) throw notFound('task', taskId)
    return keep(session, taskId, until)
  },
  'schedule.bringBack': (session, { taskId }) => keep(session, taskId, null),
}
