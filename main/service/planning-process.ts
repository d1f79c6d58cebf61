/** A season planned in a process of its own, so that the service answers meanwhile and can end it at once. */
import { fork } from 'node:child_process'
import type { FromWorker, ToPlan } from './season-messages.ts'
import { workerFile } from './worker-file.ts'

export interface PlanningHandlers {
  readonly onMessage: (message: FromWorker) => void
  /** It is gone, after its last message. */
  readonly onEnded: () => void
}

/** Returns what ends it; a planner that has ended takes no harm. */
export function startPlanning(
  toPlan: ToPlan,
  { onMessage, onEnded }: PlanningHandlers,
): () => void {
  const planner = fork(workerFile('./season-worker'), {
    // Facts hold maps and absent values, which JSON would lose.
    serialization: 'advanced',
    execArgv: [],
    stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
  })
  planner.on('message', (message) => onMessage(message as FromWorker))
  planner.on('error', (error) => {
    console.error('ratafia: the season could not be planned:', error)
    onEnded()
  })
  planner.on('exit', onEnded)
  planner.send(toPlan)
  // A plan nobody waits for must not keep the program from ending.
  planner.unref()
  planner.channel?.unref()
  return () => void planner.kill('SIGKILL')
}
