/**
 * What is read off the ledger step by step is read once: a ledger that has only grown is gone on
 * with from where it stood, so that a screen after each move does not walk through decades again.
 */
import type { Step } from './fold.ts'

export interface Walk<State> {
  readonly start: () => State
  /** Carries the state on by one step, in place. */
  readonly take: (state: State, step: Step) => void
}

interface Standing<State> {
  readonly state: State
  taken: number
  last: Step | undefined
}

/** The state after the given steps. It is valid until more steps are asked about. */
export function alongLedger<State>({ start, take }: Walk<State>) {
  // Folding anew makes new steps, so the first one tells which ledger this is.
  const known = new WeakMap<Step, Standing<State>>()
  return (steps: readonly Step[]): State => {
    const [first] = steps
    if (!first) return start()
    let standing = known.get(first)
    const hasGrown =
      standing && standing.taken <= steps.length && steps[standing.taken - 1] === standing.last
    if (!standing || !hasGrown) {
      standing = { state: start(), taken: 0, last: undefined }
      known.set(first, standing)
    }
    for (; standing.taken < steps.length; standing.taken += 1)
      take(standing.state, steps[standing.taken] as Step)
    standing.last = steps.at(-1)
    return standing.state
  }
}
