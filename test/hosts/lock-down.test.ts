import { EventEmitter } from 'node:events'
import type { App, WebContents } from 'electron'
import { expect, it } from 'vitest'
import { lockDown } from '../../main/hosts/electron/lock-down.ts'

it('lets no page attach a webview, leave or be led elsewhere', () => {
  const app = new EventEmitter()
  lockDown(app as unknown as App)
  const contents = Object.assign(new EventEmitter(), {
    setWindowOpenHandler: (decide: WebContents['setWindowOpenHandler']) => void decide,
  })
  app.emit('web-contents-created', {}, contents)
  for (const name of ['will-attach-webview', 'will-navigate', 'will-redirect']) {
    let prevented = 0
    contents.emit(name, { preventDefault: () => (prevented += 1) })
    expect(prevented, name).toBe(1)
  }
})
