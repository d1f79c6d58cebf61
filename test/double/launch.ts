/** Starts the really built main bundle on the double, as Electron would start it. */
import { mkdtempSync } from 'node:fs'
import { registerHooks } from 'node:module'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser, Page } from '@playwright/test'
import { serveSchemes } from './app-scheme.ts'
import { cancellable, putRun, type Control, type IpcHandler } from './control.ts'

const double = pathToFileURL(join(import.meta.dirname, 'electron.ts')).href
const evaluationLimitMs = 2000

// Each launch gets its own copy of the app's modules: '?run=N' spreads from the entry to what it
// imports, and tells the double whom it works for.
registerHooks({
  resolve(specifier, context, next) {
    const run = /[?&]run=(\d+)/.exec(context.parentURL ?? '')?.[1]
    if (specifier === 'electron' && run)
      return { url: `${double}?run=${run}`, format: 'module-typescript', shortCircuit: true }
    const found = next(specifier, context)
    const isOfApp = run && specifier.startsWith('.') && context.parentURL?.includes('/out/main/')
    return isOfApp ? { ...found, url: `${found.url}?run=${run}` } : found
  },
})

export interface LaunchOptions {
  entry?: string
  userDataFolder?: string
  cellarFile?: string
  /** As typed after the program, or double-clicked. */
  fileToOpen?: string
  /** As macOS hands it over: an event, before Electron is ready. */
  openedOnMac?: string
  /** False: as if another instance ran already. */
  getsLock?: boolean
}

export interface Launched {
  control: Control
  /** The first window's page. */
  page: () => Promise<Page>
  /** What was asked of one of Electron's functions, call by call. */
  calls: (api: string) => unknown[][]
  /** A call over IPC from any frame, as the double of a page could not make it. */
  invokeFrom: (frame: Parameters<IpcHandler>[0]['senderFrame'], ...sent: unknown[]) => unknown
  quit: () => Promise<void>
}

let runs = 0

export async function launch(browser: Browser, options: LaunchOptions = {}): Promise<Launched> {
  const context = await browser.newContext()
  const { promise: evaluated, resolve: isEvaluated } = Promise.withResolvers<void>()
  const userDataFolder = options.userDataFolder ?? mkdtempSync(join(tmpdir(), 'ratafia-double-'))
  const control: Control = {
    context,
    userDataFolder,
    getsLock: options.getsLock ?? true,
    evaluated,
    calls: [],
    errors: [],
    windows: [],
    menu: null,
    notices: [],
    ipcHandlers: new Map(),
    schemes: new Map(),
    // Put there by the double once it is loaded.
    app: undefined as unknown as Control['app'],
  }
  const run = String(++runs)
  putRun(run, control)
  await serveSchemes(context, control)

  const cellarFile = options.cellarFile ?? join(userDataFolder, 'cellar.ratafia')
  const named = options.fileToOpen ?? `--cellar=${cellarFile}`
  process.argv = [process.execPath, resolve('.'), named]
  const firstPage = context.waitForEvent('page')
  firstPage.catch(() => {}) // A launch that opens no window ends without one.
  try {
    await evaluate(
      `${pathToFileURL(resolve(options.entry ?? 'out/main/electron.js')).href}?run=${run}`,
    )
  } catch (error) {
    await context.close()
    throw error
  }
  if (options.openedOnMac !== undefined)
    control.app.emit('open-file', cancellable(), options.openedOnMac)
  isEvaluated()

  return {
    control,
    page: async () => {
      const page = await firstPage
      await page.waitForURL(/^https:/)
      return page
    },
    calls: (api) => control.calls.filter((call) => call.api === api).map((call) => call.args),
    invokeFrom: (senderFrame, ...sent) =>
      control.ipcHandlers.get('ratafia:call')?.({ sender: {}, senderFrame }, ...sent),
    quit: async () => {
      if (!control.app.isQuitting) control.app.quit()
      await context.close()
    },
  }
}

/** Electron gets ready only after the entry has run through, so an entry that waits for it hangs. */
async function evaluate(entry: string): Promise<void> {
  let limit: NodeJS.Timeout | undefined
  const hang = new Promise<never>((_, failed) => {
    const words = 'the entry did not run through: does it await app.whenReady() at the top level?'
    limit = setTimeout(() => failed(new Error(words)), evaluationLimitMs)
  })
  await Promise.race([import(entry), hang]).finally(() => clearTimeout(limit))
}
