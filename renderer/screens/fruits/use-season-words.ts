/** A season in words: "June to August, best in July". */
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { monthName, type Season } from './season-months.ts'
import { listFormat, monthPhrase } from '../../parts/formatters/formatters.ts'

export function useSeasonWords(): (season: Season | undefined) => string {
  const t = useWords()
  const { locale } = useSettings()
  return (season) => {
    if (!season) return t('fruits.season.allYear')
    const { startMonth, endMonth, peakMonths } = season
    const name = (month: number) => monthName(month, locale, 'long')
    const phrase = monthPhrase(locale, { month: 'long' })
    const bent = (month: number) => phrase(new Date(2026, month - 1, 15))
    const months =
      startMonth === endMonth
        ? t('fruits.season.oneMonth', { month: name(startMonth) })
        : t('fruits.season.months', { from: bent(startMonth), to: bent(endMonth) })
    if (peakMonths.length === 0) return months
    const best = listFormat(locale).format(peakMonths.map(name))
    return `${months}, ${t('fruits.season.peak', { months: best })}`
  }
}
