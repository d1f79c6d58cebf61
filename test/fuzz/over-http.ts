/** A call as a program on this machine sends it, with a body that may be no JSON at all. */
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
  const response = await fetch(`${call.origin}/rpc/${call.channel}`, {
    method: 'POST',
    headers: { Authorization: `Bearer ${call.token}`, 'Content-Type': 'application/json' },
    body: bodyOf(call.request),
  })
  const { status } = response
  const text = await response.text()
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
