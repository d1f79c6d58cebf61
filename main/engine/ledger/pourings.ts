/** When each pantry lot was first and last taken from: nothing else tells that it was opened. */
import type { Step } from './fold.ts'

export interface Pouring {
  readonly firstMs: number
  readonly lastMs: number
}

/** One step more, in place. What is put right in the book opens nothing, but somebody looked. */
export function takePouring(
  pourings: Map<string, Pouring>,
  { recorded, effect, atMs }: Step,
): void {
  const { kind } = recorded.move
  if (kind === 'buy') return
  for (const [lotId] of effect.lots ?? []) {
    const before = pourings.get(lotId)
    if (before) pourings.set(lotId, { firstMs: before.firstMs, lastMs: atMs })
    else if (kind !== 'correct') pourings.set(lotId, { firstMs: atMs, lastMs: atMs })
  }
}
