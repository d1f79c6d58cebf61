/**
 * Stands in for the module 'electron', so that the really built main and preload bundles run
 * against a stock Chromium. What it proves, and what it cannot, is listed in DEVELOPERS.md.
 */
import { EventEmitter } from 'node:events'
import type { CustomScheme, MenuItemConstructorOptions } from 'electron'
import { controlOfRun, note, strict, type IpcHandler, type SchemeHandler } from './control.ts'
import { DoubleApp } from './double-app.ts'
import { DoubleMenu } from './double-menu.ts'
import { windowClass } from './double-window.ts'

const control = controlOfRun(new URL(import.meta.url).searchParams.get('run'))
/** A method that only notes that it was called. */
const noted =
  (api: string) =>
  (...args: unknown[]) =>
    note(control, api, ...args)

const doubleApp = new DoubleApp(control)
control.app = doubleApp
export const app = strict('app', doubleApp)

export const BrowserWindow = windowClass(control)

class IpcMain extends EventEmitter {
  handle(channel: string, handler: IpcHandler): void {
    if (control.ipcHandlers.has(channel))
      throw new Error(`Attempted to register a second handler for '${channel}'`)
    control.ipcHandlers.set(channel, handler)
  }
}
export const ipcMain = strict('ipcMain', new IpcMain())

export const protocol = strict('protocol', {
  registerSchemesAsPrivileged: (schemes: CustomScheme[]) => {
    if (doubleApp.isReady())
      throw new Error('registerSchemesAsPrivileged should be called before app is ready')
    note(control, 'protocol.registerSchemesAsPrivileged', schemes)
  },
  handle: (scheme: string, handler: SchemeHandler) => {
    if (!doubleApp.isReady()) throw new Error('protocol.handle: the session is not ready')
    control.schemes.set(scheme, handler)
  },
})

export const Menu = strict('Menu', {
  buildFromTemplate: (template: MenuItemConstructorOptions[]) => new DoubleMenu(template),
  setApplicationMenu: (menu: DoubleMenu | null) => {
    control.menu = menu
  },
})

/** Nothing is drawn: the notice is kept for the test to look at, and to click. */
class DoubleNotification extends EventEmitter {
  readonly #options: unknown
  constructor(options: { title: string; body: string }) {
    super()
    this.#options = options
  }
  static isSupported(): boolean {
    return true
  }
  show(): void {
    note(control, 'Notification.show', this.#options)
    control.notices.push(this)
  }
}
export const Notification = strict('Notification', DoubleNotification)

export const dialog = strict('dialog', { showErrorBox: noted('dialog.showErrorBox') })

export const shell = strict('shell', {
  openExternal: async (url: string) => note(control, 'shell.openExternal', url),
  showItemInFolder: noted('shell.showItemInFolder'),
})

export const session = strict('session', {
  defaultSession: strict('defaultSession', {
    setPermissionRequestHandler: noted('session.setPermissionRequestHandler'),
    setPermissionCheckHandler: noted('session.setPermissionCheckHandler'),
    setDevicePermissionHandler: noted('session.setDevicePermissionHandler'),
  }),
})

export const screen = strict('screen', {
  getAllDisplays: () => [{ workArea: { x: 0, y: 0, width: 1920, height: 1080 } }],
})
