/**
 * Counts wrong secrets, and tells when there were too many of late. A right one always passes: who
 * guesses is some other program on this machine, and must not lock out the maker's own window. The
 * secrets are too long to be found by trying; this keeps the trying from costing anything, and says
 * so to a program that came with an old one.
 */
import { HttpRefusal } from './http-refusal.ts'

const mostWrong = 20
const spanMs = 60_000

export interface WrongGuesses {
  /** The refusal of a wrong secret: its own, or that there were too many. */
  refusal: (own: HttpRefusal) => HttpRefusal
}

/** `nowMs` is any clock that never goes back. */
export function wrongGuesses(nowMs: () => number = () => performance.now()): WrongGuesses {
  let sinceMs = Number.NEGATIVE_INFINITY
  let wrong = 0
  return {
    refusal: (own) => {
      const now = nowMs()
      if (now - sinceMs >= spanMs) {
        sinceMs = now
        wrong = 0
      }
      wrong += 1
      if (wrong <= mostWrong) return own
      const seconds = Math.ceil((sinceMs + spanMs - now) / 1000)
      return new HttpRefusal(429, 'Too many wrong tries: wait a little.', {
        'Retry-After': String(seconds),
      })
    },
  }
}
