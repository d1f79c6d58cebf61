/** Work in a thread of its own, so that the service answers meanwhile and can end it at once. */
import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { Worker } from 'node:worker_threads'

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
  const worker = new Worker(fileOf(path), { workerData: data })
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

/** Once built, threads lie beside the hosts, and this file may be among their chunks. */
function fileOf(path: string): URL {
  const name = path.split('/').at(-1)
  const found = [`${path}.ts`, `./${name}.js`, `../${name}.js`]
    .map((place) => new URL(place, import.meta.url))
    .find((url) => existsSync(fileURLToPath(url)))
  if (!found) throw new Error(`the thread ${name} is missing from the build`)
  return found
}
