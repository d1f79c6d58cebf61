/** A call as a program on this machine sends it, with a body that may be no JSON at all. */
import { once } from 'node:events'
import { request as httpRequest, type IncomingMessage } from 'node:http'
import { text as textOf } from 'node:stream/consumers'
import type { Reply } from '../../shared/schemas/errors.ts'

export interface Sent {
  readonly status: number
  /** What was answered; a refusal of HTTP's own counts as bad input. */
  readonly reply: Reply<unknown> | undefined
}

export async function post(call: {
  origin: string
  token: string
  channel: string
  request: unknown
}): Promise<Sent> {
  const asking = httpRequest(`${call.origin}/rpc/${call.channel}`, {
    method: 'POST',
    headers: { Authorization: `Bearer ${call.token}`, 'Content-Type': 'application/json' },
    // A connection for each call: one that is kept may be closed by the server while calls that
    // go another way hold up this process, which says nothing of Ratafia.
    agent: false,
  })
  asking.end(bodyOf(call.request))
  const [response] = (await once(asking, 'response')) as [IncomingMessage]
  const status = response.statusCode ?? 0
  const text = await textOf(response)
  if (status === 200) return { status, reply: JSON.parse(text) as Reply<unknown> }
  if (status >= 400 && status < 500)
    return { status, reply: { ok: false, error: { code: 'badInput', message: text, details: {} } } }
  return { status, reply: undefined }
}

/** What JSON has no words for goes as text that is no JSON. */
function bodyOf(request: unknown): string {
  const text = JSON.stringify(request, (_key, value: unknown) => {
    if (typeof value === 'bigint') return Number(value)
    return typeof value === 'number' && !Number.isFinite(value) ? `##${value}` : value
  }) as string | undefined
  return (text ?? 'undefined').replaceAll(/"##(-?Infinity|NaN)"/g, '$1')
}
