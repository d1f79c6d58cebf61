import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { openWindow } from '../../main/hosts/browser/open-window.ts'

const link = 'http://127.0.0.1:8123/#secret'
let folder: string
const said = () => join(folder, 'said.txt')

/** A program on the PATH that only writes down what it was asked. */
function install(name: string) {
  const file = join(folder, name)
  writeFileSync(file, `#!/bin/sh\nfor each in ${name} "$@"; do echo "$each"; done > ${said()}\n`)
  chmodSync(file, 0o755)
}

const askedWords = async () => {
  await expect.poll(() => existsSync(said()) && readFileSync(said(), 'utf8')).toContain(link)
  return readFileSync(said(), 'utf8').trim().split('\n')
}

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ratafia-window-'))
  vi.stubEnv('PATH', folder)
  vi.stubEnv('DISPLAY', ':0')
})
afterEach(() => {
  vi.unstubAllEnvs()
  rmSync(folder, { recursive: true })
})

describe.runIf(process.platform === 'linux')('openWindow', () => {
  it('opens a window without tabs in a browser that can', async () => {
    install('google-chrome')
    install('xdg-open')
    openWindow(link, () => expect.unreachable())
    const words = await askedWords()
    expect(words.slice(0, 2)).toEqual(['google-chrome', `--app=${link}`])
    expect(words.includes('--no-sandbox')).toBe(process.getuid?.() === 0)
  })

  it('asks the desktop when there is none', async () => {
    install('xdg-open')
    openWindow(link, () => expect.unreachable())
    expect(await askedWords()).toEqual(['xdg-open', link])
  })

  it('says so when nothing can open it', async () => {
    const onFailure = vi.fn<() => void>()
    openWindow(link, onFailure)
    await expect.poll(() => onFailure.mock.calls.length).toBe(1)
  })

  it('does not try without a display', () => {
    install('chromium')
    vi.stubEnv('DISPLAY', '')
    vi.stubEnv('WAYLAND_DISPLAY', '')
    const onFailure = vi.fn<() => void>()
    openWindow(link, onFailure)
    expect(onFailure).toHaveBeenCalledTimes(1)
  })
})
