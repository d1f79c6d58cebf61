/** Where the marks of a time axis stand: whole days since a start, or the calendar's own joints. */
import { msPerDay } from '../../shared/spans-of-time.ts'

export interface TimeDomain {
  readonly fromMs: number
  readonly toMs: number
}

/** A domain that has some width, so that a batch of one move can be drawn too. */
export function timeDomain(fromMs: number, toMs: number): TimeDomain {
  return { fromMs, toMs: Math.max(toMs, fromMs + msPerDay) }
}

const daySteps = [1 / 4, 1 / 2, 1, 2, 5, 7, 14, 30, 60, 90, 180, 365, 730, 1825, 3650] as const

/** Marks at whole steps of days from the domain's start, at most `most` of them after it. */
export function dayTicks({ fromMs, toMs }: TimeDomain, most: number): number[] {
  const days = (toMs - fromMs) / msPerDay
  const step = daySteps.find((candidate) => days / candidate <= most) ?? 3650
  const ticks: number[] = []
  for (let day = 0; day <= days; day += step) ticks.push(fromMs + day * msPerDay)
  return ticks
}

type CalendarStep = {
  readonly unit: 'day' | 'month'
  readonly count: number
  readonly days: number
}

const calendarSteps: readonly CalendarStep[] = [
  { unit: 'day', count: 1, days: 1 },
  { unit: 'day', count: 2, days: 2 },
  { unit: 'day', count: 7, days: 7 },
  { unit: 'day', count: 14, days: 14 },
  { unit: 'month', count: 1, days: 30 },
  { unit: 'month', count: 2, days: 61 },
  { unit: 'month', count: 3, days: 91 },
  { unit: 'month', count: 6, days: 182 },
  { unit: 'month', count: 12, days: 365 },
  { unit: 'month', count: 24, days: 730 },
  { unit: 'month', count: 60, days: 1826 },
  { unit: 'month', count: 120, days: 3652 },
]

export interface DateTicks {
  readonly ticks: readonly number[]
  /** What a mark should be called: a day, a month, or a year. */
  readonly precision: 'day' | 'month' | 'year'
}

/** Marks at midnights, firsts of months, or New Years of the local calendar inside the domain. */
export function dateTicks(domain: TimeDomain, most: number): DateTicks {
  const days = (domain.toMs - domain.fromMs) / msPerDay
  const step = calendarSteps.find((candidate) => days / candidate.days <= most) ?? lastStep
  const ticks: number[] = []
  for (let at = firstJoint(domain.fromMs, step); at.getTime() <= domain.toMs; advance(at, step))
    if (at.getTime() >= domain.fromMs) ticks.push(at.getTime())
  const precision = step.unit === 'day' ? 'day' : step.count % 12 === 0 ? 'year' : 'month'
  return { ticks, precision }
}

const lastStep: CalendarStep = { unit: 'month', count: 120, days: 3652 }

function firstJoint(fromMs: number, { unit, count }: CalendarStep): Date {
  const from = new Date(fromMs)
  if (unit === 'day') return new Date(from.getFullYear(), from.getMonth(), from.getDate())
  const months = from.getFullYear() * 12 + from.getMonth()
  const start = Math.floor(months / count) * count
  return new Date(Math.floor(start / 12), start % 12, 1)
}

function advance(at: Date, { unit, count }: CalendarStep): void {
  if (unit === 'day') at.setDate(at.getDate() + count)
  else at.setMonth(at.getMonth() + count)
}

const niceFactors = [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10]

/** A round number of at least `greatest`, and the marks from zero up to it. */
export function amountTicks(greatest: number, intervals: number): number[] {
  const raw = Math.max(greatest, 1e-9) / intervals
  const power = 10 ** Math.floor(Math.log10(raw))
  const step = (niceFactors.find((factor) => factor * power >= raw) ?? 10) * power
  return Array.from({ length: intervals + 1 }, (_, index) => index * step)
}

/** Round marks from at most `least` to at least `greatest`, about `intervals` steps apart. */
export function spanTicks(least: number, greatest: number, intervals: number): number[] {
  const raw = Math.max(greatest - least, 1e-9) / intervals
  const power = 10 ** Math.floor(Math.log10(raw))
  const step = (spanFactors.find((factor) => factor * power >= raw) ?? 10) * power
  const first = Math.floor(least / step + 1e-9)
  const last = Math.max(first + 1, Math.ceil(greatest / step - 1e-9))
  return Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step)
}

/** Steps that people count in. */
const spanFactors = [1, 2, 5, 10]
