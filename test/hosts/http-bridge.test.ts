/** The renderer's bridge against the real server, as a page in the browser uses it. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { httpBridge } from '../../renderer/app/http-bridge.ts'
import { launchToken } from '../../renderer/app/launch-token.ts'
import { runningServer, token } from './running-server.ts'

let server: Awaited<ReturnType<typeof runningServer>>

/** A page's addresses are relative to where it came from. */
function standOnPageOf(origin: string) {
  const { fetch } = globalThis
  vi.stubGlobal('fetch', (path: string, init: RequestInit) => fetch(origin + path, init))
}

beforeEach(async () => {
  server = await runningServer()
  standOnPageOf(server.origin)
})
afterEach(async () => {
  vi.unstubAllGlobals()
  await server.close()
})

describe('httpBridge', () => {
  it('resolves to the reply, be it a value or a refusal', async () => {
    const bridge = httpBridge(token)
    expect(await bridge.call('echo', { volumeMl: 3 })).toEqual({ ok: true, value: { volumeMl: 3 } })
    expect(await bridge.call('refuse', {})).toMatchObject({ error: { code: 'notEnough' } })
  })

  it('resolves to a lost connection with another launch’s secret', async () => {
    expect(await httpBridge('U'.repeat(43)).call('echo', {})).toMatchObject({
      ok: false,
      error: { code: 'internal', details: { lost: true } },
    })
  })

  it('resolves to a lost connection when nobody answers', async () => {
    vi.unstubAllGlobals()
    standOnPageOf('http://127.0.0.1:1')
    expect(await httpBridge(token).call('echo', {})).toMatchObject({
      ok: false,
      error: { code: 'internal', details: { lost: true } },
    })
  })

  it('does not call a refused request a lost connection', async () => {
    expect(await httpBridge(token).call('echo', 'x'.repeat(6_000_000))).toEqual({
      ok: false,
      error: { code: 'internal', message: 'At most 5000000 bytes.', details: {} },
    })
  })

  it('tells each listener of a change until it stops listening', async () => {
    const bridge = httpBridge(token)
    const [first, second] = [vi.fn<() => void>(), vi.fn<() => void>()]
    const stop = bridge.onChange(first)
    bridge.onChange(second)
    await expect.poll(() => server.service.listenerCount).toBe(1)
    await expect
      .poll(() => {
        server.service.change()
        return first.mock.calls.length
      })
      .toBeGreaterThan(0)
    stop()
    const told = first.mock.calls.length
    const before = second.mock.calls.length
    server.service.change()
    await expect.poll(() => second.mock.calls.length).toBeGreaterThan(before)
    expect(first).toHaveBeenCalledTimes(told)
  })

  it('has read again what was asked before it listened', async () => {
    const bridge = httpBridge(token)
    await bridge.call('echo', {})
    const listener = vi.fn<() => void>()
    bridge.onChange(listener)
    await expect.poll(() => listener.mock.calls.length).toBe(1)
    await bridge.call('echo', {})
    server.service.change()
    await expect.poll(() => listener.mock.calls.length).toBe(2)
  })

  it('comes back after the host was gone, and has everything read again', async () => {
    const windowCounts: number[] = []
    await server.close()
    const onWindowCount = (count: number) => windowCounts.push(count)
    server = await runningServer({ onWindowCount, port: Number(new URL(server.origin).port) })
    const listener = vi.fn<() => void>()
    httpBridge(token).onChange(listener)
    await expect.poll(() => windowCounts).toEqual([1])
    const port = Number(new URL(server.origin).port)
    await server.close()
    expect(listener).not.toHaveBeenCalled()
    server = await runningServer({ onWindowCount, port })
    await expect.poll(() => windowCounts, { timeout: 4000 }).toEqual([1, 0, 1])
    await expect.poll(() => listener.mock.calls.length).toBe(1)
  })
})

const pageAt = (hash: string, kept?: string) => {
  const storage = new Map(kept === undefined ? [] : [['ratafia.token', kept]])
  const replaceState = vi.fn<History['replaceState']>()
  const page = {
    location: { hash },
    history: { replaceState },
    sessionStorage: {
      getItem: (key: string) => storage.get(key) ?? null,
      setItem: (key: string, value: string) => storage.set(key, value),
    },
  } as unknown as Window
  return { page, replaceState, storage }
}

describe('launchToken', () => {
  it('takes the secret out of the link and keeps it for this tab', () => {
    const { page, replaceState, storage } = pageAt(`#${token}`)
    expect(launchToken(page)).toBe(token)
    expect(replaceState).toHaveBeenCalledWith(null, '', '#/')
    expect(storage.get('ratafia.token')).toBe(token)
  })

  it('leaves the screen that the link names', () => {
    const { page, replaceState } = pageAt(`#${token}/look-into/one.zip`)
    expect(launchToken(page)).toBe(token)
    expect(replaceState).toHaveBeenCalledWith(null, '', '#/look-into/one.zip')
  })

  it('finds the kept one after a reload, wherever the page stands', () => {
    const { page, replaceState } = pageAt('#/batches/sloe', token)
    expect(launchToken(page)).toBe(token)
    expect(replaceState).not.toHaveBeenCalled()
  })

  it('is empty when there is none', () => {
    expect(launchToken(pageAt('').page)).toBe('')
  })
})
