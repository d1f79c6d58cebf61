/** What a run of the fuzzer came to, and which of it is a fault. */

export interface Fault {
  readonly what: 'crash' | 'internal' | 'status' | 'wrote' | 'lost' | 'unsound'
  readonly channel: string
  /** Enough to play it again: which seed, which call of it. */
  readonly seed: number
  readonly call: number
  readonly told: string
}

export interface ChannelCount {
  calls: number
  accepted: number
  slowestMs: number
}

export interface FuzzCounts {
  calls: number
  /** Of these, how many were sent by HTTP. */
  overHttp: number
  mutated: number
  accepted: number
  refused: number
  refusedByContract: number
  rounds: number
  books: number
  rows: number
  restarts: number
  byChannel: Map<string, ChannelCount>
  faults: Fault[]
}

export const noCounts = (): FuzzCounts => ({
  calls: 0,
  overHttp: 0,
  mutated: 0,
  accepted: 0,
  refused: 0,
  refusedByContract: 0,
  rounds: 0,
  books: 0,
  rows: 0,
  restarts: 0,
  byChannel: new Map(),
  faults: [],
})
