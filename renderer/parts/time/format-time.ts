/** Instants and spans as people in a locale write them; in the time zone of this machine. */
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { Settings } from '../../../shared/channels.ts'
import { dateFormat, numberFormat, relativeTimeFormat } from '../formatters/formatters.ts'

type Locale = Settings['locale']

/** "12 Nov", with the year when it is not this one. */
export function formatDay(instant: string, locale: Locale, now: Date): string {
  const date = new Date(instant)
  return dateFormat(locale, {
    day: 'numeric',
    month: 'short',
    ...(date.getFullYear() !== now.getFullYear() && { year: 'numeric' }),
  }).format(date)
}

/** "12 Nov 2026, 18:00". */
export const formatMoment = (instant: string, locale: Locale): string =>
  dateFormat(locale, { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(instant))

/** Days from midnight to midnight: what people mean by "in three days". */
export function daysBetween(from: Date, to: Date): number {
  return Math.round((midnight(to) - midnight(from)) / msPerDay)
}

const midnight = (date: Date) => Date.UTC(date.getFullYear(), date.getMonth(), date.getDate())

/** "today", "in 3 days", "2 weeks ago", "in 5 months". */
export function formatFromNow(instant: string, locale: Locale, now: Date): string {
  const days = daysBetween(now, new Date(instant))
  const { amount, unit } = inFittingUnit(days)
  return relativeTimeFormat(locale, { numeric: 'auto' }).format(amount, unit)
}

/** "3 weeks", "5 months", "2 years": how long something has been. */
export function formatSpan(fromInstant: string, to: Date, locale: Locale): string {
  const { amount, unit } = inFittingUnit(daysBetween(new Date(fromInstant), to))
  return formatUnits(Math.abs(amount), unit, locale)
}

export const formatUnits = (
  amount: number,
  unit: 'hour' | 'day' | 'week' | 'month' | 'year',
  locale: Locale,
): string =>
  numberFormat(locale, {
    style: 'unit',
    unit,
    unitDisplay: 'long',
    maximumFractionDigits: 0,
  }).format(amount)

/** The largest unit of which there are at least two, so that little is lost by rounding. */
function inFittingUnit(days: number): { amount: number; unit: 'day' | 'week' | 'month' | 'year' } {
  const size = Math.abs(days)
  if (size < 14) return { amount: days, unit: 'day' }
  if (size < 61) return { amount: Math.trunc(days / 7), unit: 'week' }
  if (size < 730) return { amount: Math.trunc(days / 30.44), unit: 'month' }
  return { amount: Math.trunc(days / 365.25), unit: 'year' }
}
