/** How pressing a batch's next step is, and in what order batches want hands. */
import type { BatchSummary, NextStep } from '../../../shared/schemas/cellar.ts'

/** Ordered by what is lost by waiting. */
export const dueStates = ['late', 'due', 'ready', 'ripe', 'coming'] as const
export type DueState = (typeof dueStates)[number]

export function dueState({ action, early, due, late }: NextStep, now: Date): DueState {
  const isReached = (instant: string | undefined, by = now) =>
    instant !== undefined && new Date(instant) <= by
  // What is due at some hour of today is due today.
  const endOfToday = new Date(now.getFullYear(), now.getMonth(), now.getDate() + 1)
  // A bottle that rests longer than it must loses nothing.
  if (action === 'taste') return isReached(due) ? 'ripe' : 'coming'
  if (isReached(late)) return 'late'
  if (isReached(due, endOfToday)) return 'due'
  // A step without dates waits for nothing but its maker.
  if (early === undefined || isReached(early)) return 'ready'
  return 'coming'
}

export interface DueBatch {
  readonly summary: BatchSummary
  readonly state: DueState
}

export function inOrderOfNeed(batches: readonly BatchSummary[], now: Date): DueBatch[] {
  return batches
    .filter(({ next }) => next.action !== 'none')
    .map((summary) => ({ summary, state: dueState(summary.next, now) }))
    .toSorted(
      (a, b) =>
        dueStates.indexOf(a.state) - dueStates.indexOf(b.state) ||
        moment(a).localeCompare(moment(b)) ||
        a.summary.batch.name.localeCompare(b.summary.batch.name),
    )
}

/** Within a state: the earliest loss first, or the earliest date at all; undated last. */
function moment({ state, summary: { next } }: DueBatch): string {
  if (state === 'coming') return reachableAt(next) ?? undated
  return (state === 'ripe' ? next.due : (next.late ?? next.due)) ?? undated
}

const undated = '9999'

/** From when the step can be done: bottles are tasted when they have rested, not before. */
export const reachableAt = ({ action, early, due }: NextStep): string | undefined =>
  action === 'taste' ? due : early
