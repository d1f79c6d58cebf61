import { setTimeout as pause } from 'node:timers/promises'
import { afterEach, describe, expect, it } from 'vitest'
import { channels } from '../../shared/channels.ts'
import { openServer } from '../../main/hosts/browser/open-server.ts'
import { fakeService } from './fake-service.ts'
import { runningServer, token } from './running-server.ts'

const headers = { Authorization: `Bearer ${token}` }
let server: Awaited<ReturnType<typeof runningServer>> | undefined
afterEach(async () => {
  await server?.close()
  server = undefined
})

describe('openServer', () => {
  it('listens on 127.0.0.1 only', async () => {
    server = await runningServer()
    const { port } = new URL(server.origin)
    await expect(fetch(`http://[::1]:${port}/`)).rejects.toThrow('fetch failed')
    expect((await fetch(server.origin)).status).toBe(200)
  })

  it('serves the page with the strict policy and without a cookie', async () => {
    server = await runningServer()
    const response = await fetch(server.origin)
    expect(await response.text()).toBe('<title>page</title>')
    expect(response.headers.get('content-type')).toBe('text/html; charset=utf-8')
    const policy = response.headers.get('content-security-policy') ?? ''
    expect(policy).toContain("default-src 'none'")
    expect(policy).toContain("script-src 'self';")
    expect(policy).not.toContain('unsafe-eval')
    expect(response.headers.get('x-content-type-options')).toBe('nosniff')
    expect(response.headers.get('set-cookie')).toBeNull()
  })

  it('sends the same headers with a refusal', async () => {
    server = await runningServer()
    const response = await fetch(`${server.origin}/nothing`)
    expect(response.headers.get('content-security-policy')).toContain("default-src 'none'")
  })

  it('gives the JSON Schemas of every channel', async () => {
    server = await runningServer()
    const response = await fetch(`${server.origin}/contract`, { headers })
    const contract = (await response.json()) as {
      channels: Record<string, { effect: string; request: object; reply: object }>
    }
    expect(Object.keys(contract.channels)).toEqual(Object.keys(channels))
    const incomplete = Object.entries(contract.channels).filter(
      ([, { effect, request, reply }]) =>
        !/^(read|write)$/.test(effect) || !('$schema' in request) || !('$schema' in reply),
    )
    expect(incomplete).toEqual([])
    expect(contract.channels['batches.page']?.request).toMatchObject({
      type: 'object',
      required: ['batchId'],
      additionalProperties: false,
    })
  })

  it('tells every window of a change, and keeps quiet windows alive', async () => {
    server = await runningServer({ heartbeatMs: 20 })
    const windows = await Promise.all([1, 2].map(() => openStream(server?.origin ?? '')))
    server.service.change()
    for (const { until } of windows) {
      const text = await until(/still here[^]*still here/)
      expect(text).toContain('data: {"event":"bookChanged"}\n\n')
    }
    for (const { leave } of windows) leave()
  })

  it('counts the windows as they come and go', async () => {
    const counts: number[] = []
    server = await runningServer({ onWindowCount: (count) => counts.push(count) })
    const { leave } = await openStream(server.origin)
    leave()
    await expect.poll(() => counts).toEqual([1, 0])
  })

  it('closes with a window open, and stops listening to the service', async () => {
    server = await runningServer()
    const { service, close, origin } = server
    await openStream(origin)
    const started = performance.now()
    await close()
    server = undefined
    expect(performance.now() - started).toBeLessThan(1500)
    expect(service.listenerCount).toBe(0)
    await expect(fetch(origin)).rejects.toThrow('fetch failed')
  })

  it('answers the call in progress before it closes', async () => {
    const service = fakeService()
    const slow = {
      ...service,
      dispatch: async () => {
        await pause(200)
        return { ok: true as const, value: 'written' }
      },
    }
    server = await runningServer({ service: slow })
    const asked = server.rpc('echo', '{}')
    await pause(50)
    const { close } = server
    server = undefined
    const closed = close()
    expect(await (await asked).json()).toEqual({ ok: true, value: 'written' })
    await closed
  })

  it('says so when the port is taken', async () => {
    server = await runningServer()
    const port = Number(new URL(server.origin).port)
    await expect(
      openServer({ service: fakeService(), rendererFolder: '/', token, port }),
    ).rejects.toThrow(`Port ${port} of 127.0.0.1 cannot be used`)
  })
})

async function openStream(origin: string) {
  const leaving = new AbortController()
  const response = await fetch(`${origin}/events`, { headers, signal: leaving.signal })
  expect(response.headers.get('content-type')).toBe('text/event-stream')
  const reader = response.body!.pipeThrough(new TextDecoderStream()).getReader()
  let text = ''
  return {
    until: async (pattern: RegExp) => {
      while (!pattern.test(text)) {
        const { done, value } = await reader.read()
        if (done) break
        text += value
      }
      return text
    },
    leave: () => leaving.abort(),
  }
}
