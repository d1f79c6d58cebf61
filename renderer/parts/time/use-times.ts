/** Dates in this cellar's locale, told from the present minute. */
import { useMemo } from 'react'
import { useWordsLocale } from '../../app/settings.tsx'
import { formatDay, formatFromNow, formatMoment, formatSpan } from './format-time.ts'
import { useNow } from './use-now.ts'

export interface Times {
  readonly now: Date
  day: (instant: string) => string
  moment: (instant: string) => string
  fromNow: (instant: string) => string
  /** How long since then. */
  since: (instant: string) => string
}

export function useTimes(): Times {
  const locale = useWordsLocale()
  const now = useNow()
  return useMemo(
    () => ({
      now,
      day: (instant) => formatDay(instant, locale, now),
      moment: (instant) => formatMoment(instant, locale),
      fromNow: (instant) => formatFromNow(instant, locale, now),
      since: (instant) => formatSpan(instant, now, locale),
    }),
    [locale, now],
  )
}
