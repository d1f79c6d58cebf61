/** A fruit's season in words: when, when best, the maker's own dates, what the pantry has. */
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import { listFormat, numberFormat } from '../parts/formatters/formatters.ts'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import { useTimes } from '../parts/time/use-times.ts'
import type { FruitSeason } from '../../shared/schemas/season.ts'

/** Under so many weeks the maker's dates and the region's are the same. */
const agreeWeeks = 0.25

export function useFruitYearWords() {
  const t = useWords()
  const { locale } = useSettings()
  const { text } = useQuantities()
  const times = useTimes()
  const list = listFormat(locale, { type: 'unit' })
  const span = (from: string, to: string) =>
    t('season.fruit.season', { from: times.day(from), to: times.day(to) })

  const inSeason = ({ isAllYear, spans }: FruitSeason) => {
    if (isAllYear) return t('season.fruit.allYear')
    if (spans.length === 0) return t('season.fruit.out')
    return list.format(spans.map(({ from, to }) => span(from.likely, to.likely)))
  }
  const best = ({ spans }: FruitSeason) =>
    list.format(
      spans.flatMap(({ peakFrom, peakTo }) =>
        peakFrom === undefined || peakTo === undefined ? [] : [span(peakFrom, peakTo)],
      ),
    )
  const dates = ({ learned }: FruitSeason) =>
    list.format((learned?.boughtAt ?? []).map((at) => times.day(at)))
  const shift = ({ learned }: FruitSeason) => {
    if (!learned) return undefined
    const weeks = learned.shiftWeeks.blended
    if (Math.abs(weeks) < agreeWeeks) return t('season.fruit.learnedSame')
    const size = numberFormat(locale, {
      style: 'unit',
      unit: 'week',
      unitDisplay: 'long',
      maximumFractionDigits: 1,
    }).format(Math.abs(weeks))
    return t(weeks > 0 ? 'season.fruit.learnedLater' : 'season.fruit.learnedEarlier', {
      weeks: size,
    })
  }
  const line = (name: string, fruit: FruitSeason) => {
    const peaks = fruit.spans.flatMap(({ peakFrom, peakTo }) =>
      peakFrom === undefined || peakTo === undefined
        ? []
        : [t('season.fruit.peak', { from: times.day(peakFrom), to: times.day(peakTo) })],
    )
    const own = shift(fruit)
    const told = [
      inSeason(fruit),
      ...peaks,
      ...(own === undefined ? [] : [own]),
      ...(fruit.learned ? [t('season.fruit.bought', { days: dates(fruit) })] : []),
      ...(fruit.pantryG > 0
        ? [t('season.fruit.pantry', { mass: text(fruit.pantryG, 'mass') })]
        : []),
    ]
    return t('season.fruit.line', { fruit: name, told: told.join('; ') })
  }
  return { inSeason, best, dates, line }
}
