/** What every host must do with a call, asked of both in the way each is really reached. */
import type { IpcMainInvokeEvent } from 'electron'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { serveCalls } from '../../main/hosts/electron/serve-calls.ts'
import { fakeService } from './fake-service.ts'
import { runningServer } from './running-server.ts'

interface Host {
  call: (name: string, request: unknown) => Promise<unknown>
  close: () => Promise<void>
}

async function browserHost(): Promise<Host> {
  const server = await runningServer()
  return {
    call: async (name, request) => {
      const response = await server.rpc(encodeURIComponent(name), JSON.stringify(request))
      expect(response.status).toBe(200)
      return response.json()
    },
    close: server.close,
  }
}

async function electronHost(): Promise<Host> {
  type Handler = (event: IpcMainInvokeEvent, ...sent: unknown[]) => unknown
  let handler: Handler | undefined
  const ipcMain = { handle: (_channel: string, given: Handler) => void (handler = given) }
  serveCalls(ipcMain, fakeService(), 'app://ratafia/')
  const event = { senderFrame: { url: 'app://ratafia/', parent: null } } as IpcMainInvokeEvent
  return {
    // IPC copies what it carries, both ways.
    call: async (name, request) =>
      structuredClone(await handler?.(event, ...structuredClone([name, request]))),
    close: async () => {},
  }
}

describe.each([
  ['browser', browserHost],
  ['electron', electronHost],
])('the %s host', (_name, open) => {
  let host: Host
  beforeAll(async () => {
    host = await open()
  })
  afterAll(() => host.close())

  it('hands a request over and the answer back unchanged', async () => {
    const request = { name: 'Sloe · Schlehe · 梅', volumeMl: 1500.25, parts: [null, true, []] }
    expect(await host.call('echo', request)).toEqual({ ok: true, value: request })
  })

  it('hands a refusal back as data with its code and details', async () => {
    expect(await host.call('refuse', {})).toEqual({
      ok: false,
      error: { code: 'notEnough', message: 'too much', details: { available: 3 } },
    })
  })

  it.each(['no.such', 'constructor', '__proto__', 'a/b', '...', ' ', 'écho'])(
    'answers the unknown name %j with unknownChannel',
    async (name) => {
      expect(await host.call(name, {})).toMatchObject({
        ok: false,
        error: { code: 'unknownChannel' },
      })
    },
  )

  it('tells nothing of an error that the service did not expect', async () => {
    const log = vi.spyOn(console, 'error').mockImplementation(() => {})
    const reply = await host.call('break', {})
    expect(log).toHaveBeenCalledWith('break:', expect.any(Error))
    log.mockRestore()
    expect(reply).toMatchObject({ ok: false, error: { code: 'internal', details: {} } })
    expect(JSON.stringify(reply)).not.toContain('secret')
  })

  it('carries 4 MB both ways', async () => {
    const note = 'x'.repeat(4_000_000)
    expect(await host.call('echo', { note })).toEqual({ ok: true, value: { note } })
  })

  it('keeps twenty calls at once apart', async () => {
    const replies = await Promise.all(
      Array.from({ length: 20 }, (_, index) => host.call('echo', index)),
    )
    expect(replies).toEqual(Array.from({ length: 20 }, (_, index) => ({ ok: true, value: index })))
  })
})
