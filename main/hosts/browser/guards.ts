/** Who may ask the browser host, and how: each guard throws the refusal it stands for. */
import { createHash, timingSafeEqual } from 'node:crypto'
import type { IncomingMessage } from 'node:http'
import { HttpRefusal } from './http-refusal.ts'
import type { WrongGuesses } from './wrong-guesses.ts'

type Asked = Pick<IncomingMessage, 'headers' | 'headersDistinct' | 'method'>

/** A page elsewhere whose name was pointed at 127.0.0.1 sends its own name here. */
export function mustNameOurHost({ headersDistinct }: Asked, origin: string): void {
  // Of two names one would be looked at here and the other elsewhere.
  const [host, ...others] = headersDistinct['host'] ?? []
  if (`http://${host}` !== origin || others.length > 0)
    throw new HttpRefusal(421, 'This address is not served here.')
}

/** A page elsewhere that posts to us sends where it comes from. */
export function mustNotComeFromElsewhere({ headers }: Asked, origin: string): void {
  if (headers.origin !== undefined && headers.origin !== origin)
    throw new HttpRefusal(403, 'Another site may not ask this.')
}

export function mustUseMethod({ method }: Asked, ...allowed: string[]): void {
  if (method === undefined || !allowed.includes(method))
    throw new HttpRefusal(405, `Only ${allowed.join(' or ')} here.`, { Allow: allowed.join(', ') })
}

/** Another program on this machine does not know this launch's secret. */
export function mustKnowToken({ headers }: Asked, token: string, guesses: WrongGuesses): void {
  const [, given] = /^Bearer ([\w-]+)$/.exec(headers.authorization ?? '') ?? []
  if (given === undefined || !isSame(given, token)) throw guesses.refusal(noToken())
}

const noToken = () =>
  new HttpRefusal(401, 'Open Ratafia from its launcher.', { 'WWW-Authenticate': 'Bearer' })

// Digests have one length, so comparing them tells nothing about the secret's.
const isSame = (a: string, b: string) => timingSafeEqual(digest(a), digest(b))
const digest = (text: string) => createHash('sha256').update(text).digest()
