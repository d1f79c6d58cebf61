/** The ticks of a time axis in the words and locale of this cellar. */
import { useMemo } from 'react'
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import type { TimeDomain } from './time-axis.ts'
import { timeTicks, type TimeAxisKind, type TimeTick } from './time-labels.ts'

export function useTimeTicks(axis: TimeAxisKind, domain: TimeDomain, most: number): TimeTick[] {
  const t = useWords()
  const { locale } = useSettings()
  return useMemo(() => {
    const day = (value: number) =>
      Number.isInteger(value)
        ? t('batch.curve.day', { day: value })
        : t('batch.curve.hours', { hours: Math.round(value * 24) })
    return timeTicks(axis, domain, most, { locale, day })
  }, [axis, domain, most, locale, t])
}
