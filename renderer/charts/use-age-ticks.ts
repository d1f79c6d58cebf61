/** Marks of an axis that counts the time in the bottle: whole months or years, before it negative. */
import { useSettings } from '../app/settings.tsx'
import { msPerDay } from '../../shared/spans-of-time.ts'
import { spanTicks, type TimeDomain } from './time-axis.ts'
import type { TimeTick } from './time-labels.ts'
import { numberFormat } from '../parts/formatters/formatters.ts'

const msPerMonth = 30.44 * msPerDay
const msPerYear = 365.25 * msPerDay

export function useAgeTicks(domain: TimeDomain, most: number): TimeTick[] {
  const { locale } = useSettings()
  const isInYears = domain.toMs - domain.fromMs > 2 * msPerYear
  const unitMs = isInYears ? msPerYear : msPerMonth
  const format = numberFormat(locale, {
    style: 'unit',
    unit: isInYears ? 'year' : 'month',
    unitDisplay: 'short',
    maximumFractionDigits: 1,
  })
  return spanTicks(domain.fromMs / unitMs, domain.toMs / unitMs, most)
    .filter((value) => value * unitMs >= domain.fromMs && value * unitMs <= domain.toMs)
    .map((value) => ({ atMs: value * unitMs, label: format.format(value) }))
}
