/** What a test holds of one run of the double: what was asked of Electron, and by whom. */
import type { EventEmitter } from 'node:events'
import type { BrowserContext } from '@playwright/test'
import type { DoubleApp } from './double-app.ts'
import type { DoubleMenu } from './double-menu.ts'
import type { DoubleWindow } from './double-window.ts'

export interface Call {
  api: string
  args: unknown[]
}

export type IpcHandler = (
  event: { sender: unknown; senderFrame: { url: string; parent: unknown } | null },
  ...sent: unknown[]
) => unknown

export type SchemeHandler = (request: Request) => Promise<Response> | Response

export interface Control {
  context: BrowserContext
  userDataFolder: string
  /** False: another instance runs already. */
  getsLock: boolean
  /** Settled once the app's entry module has run through. */
  evaluated: Promise<void>
  calls: Call[]
  errors: unknown[]
  windows: DoubleWindow[]
  menu: DoubleMenu | null
  /** Shown on the desktop, in order. */
  notices: EventEmitter[]
  app: DoubleApp
  ipcHandlers: Map<string, IpcHandler>
  schemes: Map<string, SchemeHandler>
}

export const note = (control: Control, api: string, ...args: unknown[]): void =>
  void control.calls.push({ api, args })

/** Runs of the double by number: the only thing it shares with the test that launched it. */
const runs = ((globalThis as { ratafiaDoubleRuns?: Map<string, Control> }).ratafiaDoubleRuns ??=
  new Map<string, Control>())

export const putRun = (run: string, control: Control): void => void runs.set(run, control)

export function controlOfRun(run: string | null): Control {
  const control = runs.get(run ?? '')
  if (!control) throw new Error('electron double: loaded outside a launch')
  return control
}

/** Whatever this double does not model fails loudly instead of passing. */
export function strict<T extends object>(name: string, made: T): T {
  return new Proxy(made, {
    get: (target, key) => {
      if (typeof key === 'string' && !(key in target) && key !== 'then')
        throw new Error(`electron double: ${name}.${key} is not modelled`)
      const value: unknown = Reflect.get(target, key, target)
      return typeof value === 'function' ? (value.bind(target) as unknown) : value
    },
  })
}

/** An event that a listener can call off. */
export const cancellable = () => ({
  defaultPrevented: false,
  preventDefault() {
    this.defaultPrevented = true
  },
})
