/** Opens the form of the task that the page was asked for, filled in, once; then the page is a page again. */
import { useEffect, useRef } from 'react'
import { useLocation } from 'wouter'
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'
import { useRead } from '../../app/queries.ts'
import type { Task } from '../../../shared/schemas/tasks.ts'
import { kindOfTask } from '../../parts/moves/kinds.ts'
import { asProposed } from './log/task-prefill.ts'
import type { useLog } from './use-log.ts'

/** True when what the page was opened for is done already. */
export function useTaskForm(
  { batch }: BatchSummary,
  taskId: string | undefined,
  { open, openForm }: Pick<ReturnType<typeof useLog>, 'open' | 'openForm'>,
): boolean {
  const isAsked = taskId !== undefined
  const task = useRead('schedule.task', { taskId: taskId ?? nobody }, { isEnabled: isAsked }).data
  const [, navigate] = useLocation()
  const opened = useRef<string>(undefined)

  useEffect(() => {
    if (!isAsked || !task?.log || opened.current === taskId) return
    opened.current = taskId
    openTask(task, openForm)
  }, [isAsked, task, taskId, openForm])

  const wasOpen = useRef(false)
  useEffect(() => {
    const isLeft = wasOpen.current && open === undefined && opened.current === taskId
    wasOpen.current = open !== undefined
    if (isAsked && isLeft) navigate(`/batches/${encodeURIComponent(batch.id)}`, { replace: true })
  }, [isAsked, open, taskId, batch.id, navigate])

  return isAsked && task === null && open === undefined
}

/** The form of the task's move, filled in; nothing where that is done on the shelf. */
export function openTask(task: Task, openForm: ReturnType<typeof useLog>['openForm']): void {
  const kind = kindOfTask(task)
  const { log } = task
  if (kind && log) openForm(kind, (draft, context) => asProposed(draft, log, context))
}

/** Asked for only while there is no task to ask for. */
const nobody = 'none.none.1'
