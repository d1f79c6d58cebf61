/** Weeks of a season as instants: week 0 begins with the plan. */
import { msPerDay } from '../../shared/spans-of-time.ts'
import type { TimeDomain } from './time-axis.ts'

export const msPerWeek = 7 * msPerDay

export const weekMs = (startMs: number, week: number): number => startMs + week * msPerWeek

export const weeksDomain = (startMs: number, count: number): TimeDomain => ({
  fromMs: startMs,
  toMs: weekMs(startMs, Math.max(1, count)),
})
