/** Stands in for the service: answers channels from what a test gives, typed by the contract. */
import type { Answer, Bridge, Channel, ParsedRequest } from '../../shared/channels.ts'
import type { ErrorReply } from '../../shared/schemas/errors.ts'

type Handler<C extends Channel> = (
  request: ParsedRequest<C>,
) => Answer<C> | Refused | Promise<Answer<C> | Refused>

/** For each channel an answer, or what makes one. */
export type Answers = { [C in Channel]?: Answer<C> | Handler<C> }

class Refused {
  readonly error: ErrorReply
  constructor(error: ErrorReply) {
    this.error = error
  }
}

/** What a handler returns when the service says no. */
export const refused = (
  code: ErrorReply['code'],
  details: ErrorReply['details'] = {},
  message = `refused: ${code}`,
): Refused => new Refused({ code, message, details })

export interface FakeBridge extends Bridge {
  /** Every call so far, in order. */
  readonly calls: { channel: string; request: unknown }[]
  /** The requests of one channel so far. */
  requests: <C extends Channel>(channel: C) => ParsedRequest<C>[]
  /** Changes what is answered from now on. */
  answer: (changed: Answers) => void
  /** Tells the screens that the book has changed, as the service does after a write. */
  bookChanged: () => void
}

export function fakeBridge(given: Answers): FakeBridge {
  const answers: Answers = { ...given }
  const listeners = new Set<() => void>()
  const calls: FakeBridge['calls'] = []
  return {
    calls,
    requests: <C extends Channel>(channel: C) =>
      calls
        .filter((call) => call.channel === channel)
        .map(({ request }) => request as ParsedRequest<C>),
    answer: (changed) => void Object.assign(answers, changed),
    bookChanged: () => {
      for (const listener of listeners) listener()
    },
    call: async (name, request) => {
      calls.push({ channel: name, request })
      const found: unknown = answers[name as Channel]
      const value: unknown =
        typeof found === 'function' ? await (found as (asked: unknown) => unknown)(request) : found
      if (value instanceof Refused) return { ok: false, error: value.error }
      if (value === undefined) {
        const message = `the test gave no answer for ${name}`
        return { ok: false, error: { code: 'internal', message, details: {} } }
      }
      return { ok: true, value }
    },
    onChange: (listener) => {
      listeners.add(listener)
      return () => void listeners.delete(listener)
    },
  }
}
