/** One typed call over the bridge; what the service refuses becomes a `CallError`. */
import * as z from 'zod'
import {
  channels,
  type Answer,
  type Bridge,
  type Channel,
  type Request,
} from '../../shared/channels.ts'
import { ErrorReply } from '../../shared/schemas/errors.ts'

export class CallError extends Error {
  override name = 'CallError'
  readonly reply: ErrorReply
  constructor(reply: ErrorReply) {
    super(reply.message)
    this.reply = reply
  }
}

const Envelope = z.discriminatedUnion('ok', [
  z.object({ ok: z.literal(true), value: z.unknown() }),
  z.object({ ok: z.literal(false), error: ErrorReply }),
])

export async function call<C extends Channel>(
  bridge: Bridge,
  channel: C,
  request: Request<C>,
): Promise<Answer<C>> {
  const reply = Envelope.safeParse(await bridge.call(channel, request))
  if (!reply.success) throw notUnderstood(channel)
  if (!reply.data.ok) throw new CallError(reply.data.error)
  const answer = channels[channel].reply.safeParse(reply.data.value)
  if (!answer.success) throw notUnderstood(channel)
  // Parsed by this channel's own schema just now.
  return answer.data as Answer<C>
}

const notUnderstood = (channel: Channel) =>
  new CallError({
    code: 'internal',
    message: `${channel}: the answer breaks the contract`,
    details: {},
  })
