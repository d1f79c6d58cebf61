/** Where a task is done: on its batch's page, with the form filled in. */
import type { Task } from '../../../shared/schemas/tasks.ts'

export const taskPath = ({ id, batchId }: Task): string =>
  `/batches/${encodeURIComponent(batchId)}/do/${encodeURIComponent(id)}`
