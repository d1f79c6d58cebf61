/** Calendar months in UTC, counted through from the year 0, so that history and forecast share them. */

export const monthsPerYear = 12

export function monthOf(ms: number): number {
  const date = new Date(ms)
  return date.getUTCFullYear() * monthsPerYear + date.getUTCMonth()
}

export const startOfMonthMs = (month: number): number =>
  Date.UTC(Math.floor(month / monthsPerYear), month % monthsPerYear)

export const endOfMonthMs = (month: number): number => startOfMonthMs(month + 1)

/** How much of the month lies between two instants, 0 to 1. */
export function shareOfMonth(month: number, fromMs: number, toMs: number): number {
  const [start, end] = [startOfMonthMs(month), endOfMonthMs(month)]
  return Math.max(0, Math.min(toMs, end) - Math.max(fromMs, start)) / (end - start)
}
