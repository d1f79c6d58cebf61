/**
 * What was drunk and given month by month, and for how long there was anything to take: a maker who
 * takes nothing from an empty shelf tells nothing of their thirst.
 */
import type { StockChange } from './stock-question.ts'
import { monthOf, shareOfMonth, startOfMonthMs } from './months.ts'

export const streams = ['drunk', 'given'] as const
export type Stream = (typeof streams)[number]

export interface MonthOfTaking {
  /** Counted through; see months.ts. */
  readonly month: number
  /** Share of the month in which there was some, 0 to 1. */
  exposure: number
  readonly takenMl: Record<Stream, number>
}

export interface TakingHistory {
  readonly months: readonly MonthOfTaking[]
  /** Each taking's volume. */
  readonly sizesMl: Record<Stream, readonly number[]>
}

/** Less than this is a wet glass: neither stock nor a taking. */
const traceMl = 1

/** Habits change: what lies further back says nothing of the years to come. */
const historyMonths = 60

/** From the changes in the order of time, and what stands there now. */
export function takingHistory(
  changes: readonly StockChange[],
  volumeMl: number,
  nowMs: number,
): TakingHistory {
  const last = monthOf(nowMs)
  const first = Math.max(monthOf(changes[0]?.atMs ?? nowMs), last - historyMonths)
  const months = Array.from({ length: last - first + 1 }, (_, index): MonthOfTaking => ({
    month: first + index,
    exposure: 0,
    takenMl: { drunk: 0, given: 0 },
  }))
  const expose = (fromMs: number, toMs: number) => {
    for (let at = Math.max(first, monthOf(fromMs)); at <= Math.min(last, monthOf(toMs)); at += 1)
      (months[at - first] as MonthOfTaking).exposure += shareOfMonth(at, fromMs, toMs)
  }
  const sizesMl: Record<Stream, number[]> = { drunk: [], given: [] }
  let untilMs = nowMs
  let levelMl = volumeMl
  const firstMs = startOfMonthMs(first)
  for (const { atMs, changeMl, way } of changes.toReversed()) {
    if (levelMl > traceMl) expose(atMs, untilMs)
    if (atMs < firstMs) break
    untilMs = atMs
    levelMl -= changeMl
    const month = months[monthOf(atMs) - first]
    if (!month || way === 'other' || changeMl > -traceMl) continue
    month.takenMl[way] -= changeMl
    sizesMl[way].push(-changeMl)
  }
  return { months: months.filter(({ exposure }) => exposure > 0), sizesMl }
}
