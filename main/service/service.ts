/** The one way in, whichever host is asked: look the channel up, check, run, check the answer. */
import type { Reply } from '../../shared/schemas/errors.ts'

export interface ServiceOptions {
  /** The maker's own book; made when absent. */
  ownFile: string
  /** Where the demo book lives, apart from the maker's own. */
  demoFile: string
  /** Opens the demo book first, without touching the maker's own. */
  startWithDemo: boolean
  host: 'electron' | 'browser'
  version: string
  /** The clock, so that tests can hold it still. */
  now: () => Date
  newId: () => string
  /** The maker's, as an IANA name; that of this machine when left out. */
  timeZone?: string
  /** Backs the maker's own book up by itself, as its schedule says. */
  backsUp?: boolean
  /** Fills an empty demo book through the service itself. */
  fillDemo: (dispatch: Dispatch, now: Date) => Promise<void>
}

export type Dispatch = (name: string, request: unknown) => Promise<Reply<unknown>>

export interface Service {
  dispatch: Dispatch
  /** Called after every write; returns a function that stops listening. */
  onChange: (listener: () => void) => () => void
  /** Closes the open book cleanly; no call is answered after it. */
  close: () => void
}
