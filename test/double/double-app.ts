/** Electron's `app`: it gets ready only once the entry module has run through, as the real one. */
import { EventEmitter } from 'node:events'
import { join } from 'node:path'
import { cancellable, note, type Control } from './control.ts'

export class DoubleApp extends EventEmitter {
  readonly #control: Control
  readonly #ready: Promise<void>
  #isReady = false
  isQuitting = false
  /** As `npm start` runs it. */
  readonly isPackaged = false

  constructor(control: Control) {
    super()
    this.#control = control
    this.#ready = control.evaluated.then(() => {
      this.#isReady = true
      this.emit('ready', {})
    })
  }

  whenReady(): Promise<void> {
    return this.#ready
  }

  isReady(): boolean {
    return this.#isReady
  }

  requestSingleInstanceLock(): boolean {
    note(this.#control, 'app.requestSingleInstanceLock')
    return this.#control.getsLock
  }

  getVersion(): string {
    return '0.0.0-double'
  }

  getPath(name: string): string {
    const { userDataFolder } = this.#control
    return name === 'userData' ? userDataFolder : join(userDataFolder, name)
  }

  exit(code = 0): void {
    note(this.#control, 'app.exit', code)
  }

  /** Asks each window, then says goodbye; a window that refuses to close calls it off. */
  quit(): void {
    const before = cancellable()
    this.emit('before-quit', before)
    if (before.defaultPrevented) return
    this.isQuitting = true
    for (const window of this.#control.windows.slice()) {
      if (window.close()) continue
      this.isQuitting = false
      return
    }
    this.emit('will-quit', cancellable())
    this.emit('quit', {}, 0)
    note(this.#control, 'app.quit')
  }
}
