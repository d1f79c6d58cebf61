/** Why so much of a kind is wanted, in sentences. */
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { dateFormat, listFormat } from '../../parts/formatters/formatters.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import type { SeasonKind } from '../../../shared/schemas/season.ts'

export function useKindWords() {
  const t = useWords()
  const { locale, units } = useSettings()
  const { text } = useQuantities()
  const times = useTimes()
  const month = dateFormat(locale, { month: 'long', year: 'numeric' })

  /** "3.00 L for drinking and 1.00 L for reserve". */
  const needs = ({ needs: all }: SeasonKind) =>
    listFormat(locale, { type: 'conjunction' }).format(
      all
        .filter(({ volumeMl }) => volumeMl > 0)
        .map(({ because, volumeMl }) =>
          t('season.kinds.for', {
            volume: text(volumeMl, 'volume'),
            because: t(`season.need.${because}`),
          }),
        ),
    )

  /** What is wanted, and how much one kilogram gives. */
  const asks = (kind: SeasonKind) =>
    [needs(kind), kind.plannedMl.value > 0 ? gives(kind) : '']
      .filter((part) => part !== '')
      .join('; ')

  const gives = ({ yield: { lPerKg, basis } }: SeasonKind) => {
    const isUs = units === 'us'
    const mlFromOne = lPerKg.value * (isUs ? 453.59237 : 1000)
    return t(isUs ? 'season.kinds.perPound' : 'season.kinds.perKg', {
      value: text(mlFromOne, 'volume'),
      basis: t(`season.basis.${basis}`),
    })
  }

  /** Stock and drinking, and so what is asked for. */
  const story = (kind: SeasonKind) => {
    const { stock, leftThenMl, readyAt, runsDryAt, wantedMl } = kind
    const perYear = text(stock.perYearMl.value, 'volume')
    const parts = [
      t('season.wishes.stock', {
        bottled: text(stock.bottledMl, 'volume'),
        inJars: text(stock.inJarsMl, 'volume'),
      }),
      stock.isOwnHistory
        ? t('season.wishes.perYear', { volume: perYear })
        : t('season.wishes.perYearBorrowed', { volume: perYear }),
      runsDryAt === undefined
        ? t('season.wishes.leftThen', {
            day: times.day(readyAt),
            volume: text(leftThenMl.value, 'volume'),
          })
        : t('season.wishes.dry', { month: month.format(new Date(runsDryAt)) }),
    ]
    const asked =
      wantedMl > 0
        ? t('season.wishes.asks', { volume: text(wantedMl, 'volume'), needs: needs(kind) })
        : t('season.wishes.asksNothing')
    return `${parts.join('; ')}. ${asked}`
  }

  return { needs, asks, story }
}
