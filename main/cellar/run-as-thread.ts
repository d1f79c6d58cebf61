/** The thread's end of safekeeping: carries out its one order and tells how far it is. */
import { parentPort, workerData } from 'node:worker_threads'
import type { FromThread, Outcome, Step } from './safekeeping-orders.ts'

export interface ThreadWork<Task> {
  readonly carryOut: (
    task: Task,
    onStep: (step: Step, share: number) => void,
  ) => Outcome | Promise<Outcome>
  readonly failed: (error: unknown, task: Task) => FromThread
}

// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has no origin
const tell = (message: FromThread) => parentPort?.postMessage(message)

export async function runAsThread<Task>({ carryOut, failed }: ThreadWork<Task>): Promise<void> {
  const task = workerData as Task
  try {
    const outcome = await carryOut(task, (step, share) => tell({ kind: 'progress', step, share }))
    tell({ kind: 'done', outcome })
  } catch (error) {
    tell(failed(error, task))
  }
}
