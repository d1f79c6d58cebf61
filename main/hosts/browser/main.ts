/** The browser host from start to end: book, server, window, and a clean close. */
import { randomBytes } from 'node:crypto'
import { join } from 'node:path'
import { openService } from '../open-service.ts'
import { hostWords } from '../words/host-words.ts'
import { openServer } from './open-server.ts'
import { openWindow } from './open-window.ts'

export interface BrowserHostOptions {
  version: string
  port: number
  cellarFile: string | undefined
  fileToOpen: string | undefined
  startsWithDemo: boolean
  /** Without a window of its own the host lives until it is told to stop. */
  opensWindow: boolean
}

/** Closing the last window ends the program, as on a desktop; a reload is back well before. */
const desertedMs = 5000

export async function startBrowserHost(options: BrowserHostOptions): Promise<void> {
  const { service, firstPath } = await openService({ ...options, host: 'browser' })
  const token = randomBytes(32).toString('base64url')
  let deserted: NodeJS.Timeout | undefined

  const server = await openServer({
    service,
    token,
    port: options.port,
    rendererFolder: join(import.meta.dirname, '..', 'renderer'),
    onWindowCount: (count) => {
      clearTimeout(deserted)
      if (count === 0 && options.opensWindow) deserted = setTimeout(stop, desertedMs)
    },
  }).catch((error: unknown) => {
    service.close()
    throw error
  })

  let isStopping = false
  function stop() {
    if (isStopping) return
    isStopping = true
    void server.close().then(() => {
      service.close()
      process.exit(0)
    })
  }
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, stop)

  const link = `${server.origin}/#${token}${firstPath === '/' ? '' : firstPath}`
  console.log(`Ratafia is open at ${link}`)
  if (options.opensWindow) openWindow(link, () => console.error(hostWords().starts.noWindow))
}
