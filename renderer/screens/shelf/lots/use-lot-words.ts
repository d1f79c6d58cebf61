/** What a row says beside its numbers, worked out once for the whole list. */
import { useMemo } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { useCostWords } from '../../../parts/cost/use-costs.ts'
import { useShelfName } from '../../../parts/names/use-names.ts'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { ShelfLot } from '../../../../shared/schemas/shelf.ts'
import { useWindowWords } from '../use-window-words.ts'

export interface LotWords {
  size: (bottleSizeMl: number) => string
  window: (shelfLot: ShelfLot) => string
  /** Undefined where no price is known. */
  cost: (shelfLot: ShelfLot) => string | undefined
  /** The first two places with what stands there; how many more there are. */
  places: (shelfLot: ShelfLot) => string
  left: (shelfLot: ShelfLot) => string
  ofFilled: (shelfLot: ShelfLot) => string
  draw: (shelfLot: ShelfLot) => string
  more: (shelfLot: ShelfLot) => string
}

const mostPlaces = 2

export function useLotWords(): LotWords {
  const t = useWords()
  const windowWords = useWindowWords()
  const costWords = useCostWords()
  const shelfName = useShelfName()
  const { size } = useQuantities()
  return useMemo(
    () => ({
      size: (bottleSizeMl) => size(bottleSizeMl, 'volume').text,
      window: ({ window }) => windowWords.short(window),
      cost: ({ costPerBottle }) =>
        costPerBottle === undefined
          ? undefined
          : costWords({ minor: costPerBottle, isComplete: true }),
      places: ({ lot }) => {
        const [first, ...others] = lot.places.toSorted((a, b) => b.count - a.count)
        if (!first) return ''
        if (others.length === 0) return shelfName(first.shelfId)
        const words = [first, ...others].map(({ shelfId, count }) =>
          t('shelf.lots.placeCount', { place: shelfName(shelfId), count }),
        )
        const more = words.length - mostPlaces
        return words.slice(0, mostPlaces).join(', ') + (more > 0 ? ` +${more}` : '')
      },
      left: ({ lot }) => (lot.count === 0 ? t('shelf.lots.none') : String(lot.count)),
      ofFilled: ({ lot }) => t('shelf.lots.ofFilled', { filled: lot.filledCount }),
      draw: ({ lot }) =>
        t('shelf.lots.actOf', { act: t('shelf.act.drawBottle.name'), name: lot.name }),
      more: ({ lot }) => t('shelf.lots.moreOf', { name: lot.name }),
    }),
    [t, windowWords, costWords, shelfName, size],
  )
}
