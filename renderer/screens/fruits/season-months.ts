/** A season as months: which of the twelve lie in it, and which are the best. */
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import { dateFormat } from '../../parts/formatters/formatters.ts'

export type Season = NonNullable<Fruit['season']>

export const allMonths = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const

/** Seasons may run over New Year: November to April. What has none is sold all year. */
export function isInSeason(season: Season | undefined, month: number): boolean {
  if (!season) return true
  const { startMonth, endMonth } = season
  return startMonth <= endMonth
    ? startMonth <= month && month <= endMonth
    : month >= startMonth || month <= endMonth
}

export function monthName(month: number, locale: string, length: 'long' | 'narrow'): string {
  const name = dateFormat(locale, { month: length, timeZone: 'UTC' })
  return name.format(new Date(Date.UTC(2026, month - 1, 15)))
}
