/** Where a task is done: on its batch's page with the form filled in, or at its bottles. */
import type { Task } from '../../../shared/schemas/schedule.ts'

export function taskPath({ id, kind, batchId, bottleLotId }: Task): string {
  if ((kind === 'drinkUp' || kind === 'finishOpened') && bottleLotId !== undefined)
    return `/shelf/${encodeURIComponent(bottleLotId)}`
  return `/batches/${encodeURIComponent(batchId)}/do/${encodeURIComponent(id)}`
}
