/** A refusal as a sentence: what is there, what was asked, the nearest amount that can be. */
import { useWords } from '../../app/words/use-words.ts'
import type { Refusal } from '../../../shared/schemas/errors.ts'
import { useBatches, usePlaceName } from '../names/use-names.ts'
import { useQuantities } from '../quantity/use-quantities.ts'
import { useTimes } from '../time/use-times.ts'

export function useRefusalWords(): (refusal: Refusal) => string {
  const t = useWords()
  const placeName = usePlaceName()
  const batches = useBatches()
  const quantities = useQuantities()
  const times = useTimes()

  const amount = (value: number | undefined, unit: Refusal['unit']): string => {
    if (value === undefined) return '–'
    switch (unit) {
      case 'bottles':
        return t('parts.bottles', { count: value })
      case 'g':
        return quantities.text(value, 'mass')
      case 'ml':
      case undefined:
        return quantities.text(value, 'volume')
    }
  }

  return ({ code, place, unit, asked, available, nearest, batchId, from }) =>
    capitalised(
      t(`codes.refusal.${code}`, {
        place: placeName(place),
        asked: amount(asked, unit),
        available: amount(available, unit),
        nearest: amount(nearest, unit),
        batch: batches.get(batchId ?? '')?.batch.name ?? t('parts.batchUnknown'),
        from: from === undefined ? '–' : times.moment(from),
      }),
    )
}

const capitalised = (sentence: string) => sentence.charAt(0).toUpperCase() + sentence.slice(1)
