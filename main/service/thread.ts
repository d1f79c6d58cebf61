/** Work in a thread of its own, so that the service answers meanwhile and can end it at once. */
import { Worker } from 'node:worker_threads'
import { workerFile } from './worker-file.ts'

export interface ThreadHandlers<Told> {
  readonly onMessage: (message: Told) => void
  /** The thread broke off by itself; called after its last message. */
  readonly onBroken: () => void
}

export interface Thread {
  /** Resolves when nothing of it runs any more. */
  end: () => Promise<void>
}

/** `path` is the thread's file from here as source, without its ending. */
export function startThread<Told>(
  path: string,
  data: unknown,
  { onMessage, onBroken }: ThreadHandlers<Told>,
): Thread {
  const worker = new Worker(workerFile(path), { workerData: data })
  // Work nobody waits for must not keep the program from ending.
  worker.unref()
  worker.on('message', onMessage)
  worker.on('error', (error) => {
    console.error(`ratafia: the thread ${path} failed:`, error)
    onBroken()
  })
  worker.on('exit', onBroken)
  return { end: async () => void (await worker.terminate()) }
}
