import type { IpcMainInvokeEvent } from 'electron'
import { describe, expect, it } from 'vitest'
import { serveCalls } from '../../main/hosts/electron/serve-calls.ts'
import { fakeService } from './fake-service.ts'

type Handler = (event: IpcMainInvokeEvent, ...sent: unknown[]) => unknown

function callFrom(senderFrame: unknown, name: unknown = 'echo') {
  let handler: Handler | undefined
  serveCalls(
    { handle: (_channel, given) => void (handler = given) },
    fakeService(),
    'app://ratafia/',
  )
  return handler?.({ senderFrame } as IpcMainInvokeEvent, name, {})
}

describe('serveCalls', () => {
  it('answers our own page', async () => {
    expect(await callFrom({ url: 'app://ratafia/#/batches', parent: null })).toMatchObject({
      ok: true,
    })
  })

  it.each([
    ['another site', { url: 'https://ratafia/', parent: null }],
    ['a site whose name begins like ours', { url: 'app://ratafia.example/', parent: null }],
    ['a frame inside our page', { url: 'app://ratafia/', parent: { url: 'app://ratafia/' } }],
    ['a frame that is gone', null],
  ])('refuses %s', (_who, frame) => {
    expect(() => callFrom(frame)).toThrow('not for this page')
  })

  it('answers a name that is no text with unknownChannel', async () => {
    expect(
      await callFrom({ url: 'app://ratafia/', parent: null }, { toString: null }),
    ).toMatchObject({
      error: { code: 'unknownChannel' },
    })
  })
})
