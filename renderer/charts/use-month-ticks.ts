/** Marks at the months of about a year; January is called by its year, which is as long as a month. */
import { useMemo } from 'react'
import { useWordsLocale } from '../app/settings.tsx'
import { dateFormat } from '../parts/formatters/formatters.ts'
import { dateTicks, type TimeDomain } from './time-axis.ts'
import type { TimeTick } from './time-labels.ts'

const mostMonths = 15

export function useMonthTicks({ fromMs, toMs }: TimeDomain): TimeTick[] {
  const locale = useWordsLocale()
  return useMemo(
    () =>
      dateTicks({ fromMs, toMs }, mostMonths).ticks.map((atMs) => {
        const isNewYear = new Date(atMs).getMonth() === 0
        const format = dateFormat(locale, isNewYear ? { year: 'numeric' } : { month: 'short' })
        return { atMs, label: format.format(atMs) }
      }),
    [fromMs, toMs, locale],
  )
}
