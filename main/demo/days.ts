/** Dates of the demo: all relative to the day it is made on, at plausible hours, in UTC. */
import { msPerHour } from '../../shared/spans-of-time.ts'
export const instant = (ms: number): string => new Date(ms).toISOString()

export const yearOf = (ms: number): number => new Date(ms).getUTCFullYear()

export const monthOf = (ms: number): number => new Date(ms).getUTCMonth() + 1

/** The same day at another hour, such as 9.5 for half past nine. */
export function atHour(ms: number, hour: number): number {
  const day = new Date(ms)
  return Date.UTC(day.getUTCFullYear(), day.getUTCMonth(), day.getUTCDate()) + hour * msPerHour
}

/** The last time that day of the year came round, up to an instant, and some years before that. */
export function lastTime(
  [month, day]: readonly [month: number, day: number],
  untilMs: number,
  yearsBefore: number,
): number {
  const year = yearOf(untilMs)
  const thisYear = Date.UTC(year, month - 1, day)
  return Date.UTC((thisYear <= untilMs ? year : year - 1) - yearsBefore, month - 1, day)
}

/** Whether a month lies in a season that may run over the turn of the year. */
export const isWithin = (
  month: number,
  { startMonth, endMonth }: { startMonth: number; endMonth: number },
): boolean =>
  startMonth <= endMonth
    ? startMonth <= month && month <= endMonth
    : month >= startMonth || month <= endMonth
