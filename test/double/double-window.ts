/** Electron's windows, each of them a page of the Chromium that Debian brings. */
import { EventEmitter } from 'node:events'
import { readFileSync } from 'node:fs'
import type { BrowserWindowConstructorOptions, Rectangle } from 'electron'
import type { Frame, Page } from '@playwright/test'
import { toApp, toWeb } from './app-scheme.ts'
import { cancellable, note, strict, type Control } from './control.ts'
import { preloadRunner } from './preload-runner.ts'

/** Runs in the page. */
const push = ([channel, sent]: [string, unknown[]]): void =>
  (
    window as unknown as { ratafiaDoublePush: (channel: string, sent: unknown[]) => void }
  ).ratafiaDoublePush(channel, sent)

type WindowOpenHandler = (details: { url: string }) => { action: 'allow' | 'deny' }

export class DoubleWebContents extends EventEmitter {
  page: Page | undefined
  readonly #control: Control
  #openHandler: WindowOpenHandler | undefined

  constructor(control: Control) {
    super()
    this.#control = control
  }

  setWindowOpenHandler(handler: WindowOpenHandler): void {
    this.#openHandler = handler
  }

  send(channel: string, ...sent: unknown[]): void {
    this.page
      ?.evaluate(push, [channel, structuredClone(sent)] as [string, unknown[]])
      .catch((error: unknown) => this.#control.errors.push(error))
  }

  /** What happens when the page opens a window. */
  asksToOpen(url: string): void {
    const action = this.#openHandler?.({ url }).action ?? 'allow'
    note(this.#control, 'window.open', url, action)
  }
}

/** The class for one run: what a static method knows belongs to that run alone. */
export function windowClass(control: Control) {
  return class BrowserWindow extends DoubleWindow {
    constructor(options: BrowserWindowConstructorOptions = {}) {
      super(control, options)
    }
    static getAllWindows(): DoubleWindow[] {
      return [...control.windows]
    }
  }
}

export class DoubleWindow extends EventEmitter {
  readonly webContents: DoubleWebContents
  readonly #control: Control
  readonly #ready: Promise<Page>
  #bounds: Rectangle
  #isMaximised = false
  #isMinimised = false
  #loads: string | undefined

  constructor(control: Control, options: BrowserWindowConstructorOptions) {
    super()
    if (!control.app.isReady()) throw new Error('Cannot create BrowserWindow before app is ready')
    this.#control = control
    note(control, 'BrowserWindow', options)
    const { x = 0, y = 0, width = 800, height = 600 } = options
    this.#bounds = { x, y, width, height }
    const webContents = new DoubleWebContents(control)
    this.webContents = strict('webContents', webContents)
    control.windows.push(this)
    control.app.emit('web-contents-created', {}, this.webContents)
    this.#ready = this.#makePage(options.webPreferences?.preload).then((page) => {
      webContents.page = page
      return page
    })
  }

  async #makePage(preload: string | undefined): Promise<Page> {
    const page = await this.#control.context.newPage()
    await page.setViewportSize({ width: this.#bounds.width, height: this.#bounds.height })
    page.on('close', () => this.#isGone())
    page.on('pageerror', (error) => this.#control.errors.push(error))
    await page.exposeBinding('ratafiaDoubleInvoke', ({ frame }, channel, sent) =>
      this.#invoke(frame, channel as string, sent as unknown[]),
    )
    await page.exposeBinding('ratafiaDoubleOpen', (_source, url) =>
      this.webContents.asksToOpen(url as string),
    )
    await page.addInitScript(() => {
      window.open = (url) => {
        const { ratafiaDoubleOpen: open } = window as unknown as {
          ratafiaDoubleOpen: (url: string) => void
        }
        open(new URL(String(url), location.href).href)
        return null
      }
    })
    if (preload) await page.addInitScript({ content: preloadRunner(readFileSync(preload, 'utf8')) })
    return page
  }

  async #invoke(frame: Frame, channel: string, sent: unknown[]) {
    const handler = this.#control.ipcHandlers.get(channel)
    const parent = frame.parentFrame()
    const senderFrame = { url: toApp(frame.url()), parent: parent && { url: toApp(parent.url()) } }
    try {
      if (!handler) throw new Error(`No handler registered for '${channel}'`)
      const value: unknown = await handler({ sender: this.webContents, senderFrame }, ...sent)
      return { value: structuredClone(value) }
    } catch (error) {
      return { error: `Error invoking remote method '${channel}': ${String(error)}` }
    }
  }

  /** Whether the app itself, not the page, is loading this address. */
  expects(url: string): boolean {
    return url === this.#loads
  }

  async loadURL(url: string): Promise<void> {
    const page = await this.#ready
    this.#loads = url
    await page.goto(toWeb(url))
    this.#loads = undefined
    this.emit('ready-to-show', {})
  }

  show(): void {
    note(this.#control, 'BrowserWindow.show')
  }

  focus(): void {
    note(this.#control, 'BrowserWindow.focus')
  }

  maximize(): void {
    this.#isMaximised = true
    note(this.#control, 'BrowserWindow.maximize')
  }

  minimize(): void {
    this.#isMinimised = true
  }

  restore(): void {
    this.#isMinimised = false
    note(this.#control, 'BrowserWindow.restore')
  }

  isMaximized(): boolean {
    return this.#isMaximised
  }

  isMinimized(): boolean {
    return this.#isMinimised
  }

  /** As the person at the desk moves it. */
  moveTo(bounds: Rectangle): void {
    this.#bounds = bounds
  }

  getNormalBounds(): Rectangle {
    return this.#bounds
  }

  /** False when a listener called it off. */
  close(): boolean {
    const event = cancellable()
    this.emit('close', event)
    if (event.defaultPrevented) return false
    this.#isGone()
    void this.#ready.then((page) => page.close())
    return true
  }

  #isGone(): void {
    const { windows, app } = this.#control
    if (!windows.includes(this)) return
    windows.splice(windows.indexOf(this), 1)
    this.emit('closed')
    if (windows.length === 0 && !app.isQuitting) app.emit('window-all-closed')
  }
}
