/**
 * Which day of a calendar does an instant fall on, in a time zone?
 *
 * In: an instant in ms, an IANA zone; out: `2026-11-25`. The zone's own rules decide, summer time
 * included. `addDays` counts on the calendar and knows no zone.
 * @example dayOf(Date.UTC(2026, 9, 24, 23, 30), 'Europe/Warsaw') // "2026-10-25"
 */
import { msPerDay } from '../../../shared/spans-of-time.ts'

const formats = new Map<string, Intl.DateTimeFormat>()

export function dayOf(ms: number, timeZone: string): string {
  const known = formats.get(timeZone)
  const format =
    known ??
    new Intl.DateTimeFormat('en-CA', {
      timeZone,
      calendar: 'iso8601',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
    })
  if (!known) formats.set(timeZone, format)
  return format.format(ms)
}

/** From 0 to 23, as the clock on the wall there shows it. */
export const hourOf = (ms: number, timeZone: string): number =>
  Number(
    new Intl.DateTimeFormat('en-GB', { timeZone, hour: '2-digit', hourCycle: 'h23' }).format(ms),
  )

export const addDays = (day: string, days: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * msPerDay).toISOString().slice(0, 10)
