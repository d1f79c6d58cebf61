/** Ticks of a time axis with their words: days since the start, or dates of the calendar. */
import { msPerDay } from '../../shared/spans-of-time.ts'
import { dateTicks, dayTicks, type TimeDomain } from './time-axis.ts'
import { dateFormat } from '../parts/formatters/formatters.ts'

export type TimeAxisKind = 'days' | 'dates'

export interface TimeTick {
  readonly atMs: number
  readonly label: string
}

export interface AxisWords {
  readonly locale: string
  /** "Day 12"; a quarter of a day where days are too coarse. */
  readonly day: (day: number) => string
}

export function timeTicks(
  kind: TimeAxisKind,
  domain: TimeDomain,
  most: number,
  words: AxisWords,
): TimeTick[] {
  if (kind === 'days')
    return dayTicks(domain, most).map((atMs) => ({
      atMs,
      label: words.day((atMs - domain.fromMs) / msPerDay),
    }))
  const { ticks, precision } = dateTicks(domain, most)
  const format = dateFormat(words.locale, formats[precision])
  const withYear = dateFormat(words.locale, { month: 'short', year: 'numeric' })
  return ticks.map((atMs) => {
    const isNewYear = precision === 'month' && new Date(atMs).getMonth() === 0
    return { atMs, label: (isNewYear ? withYear : format).format(atMs) }
  })
}

const formats = {
  day: { day: 'numeric', month: 'short' },
  month: { month: 'short' },
  year: { year: 'numeric' },
} as const satisfies Record<string, Intl.DateTimeFormatOptions>
