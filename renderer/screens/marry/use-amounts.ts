/** Amounts of parts in words: ml, grams or bottles, as each is counted. */
import { useWords } from '../../app/words/use-words.ts'
import type { AmountUnit, Cost } from '../../../shared/schemas/marrying.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'

export function useAmounts() {
  const t = useWords()
  const { text } = useQuantities()
  return {
    amount: (value: number, unit: AmountUnit): string => {
      switch (unit) {
        case 'ml':
          return text(value, 'volume')
        case 'g':
          return text(value, 'mass')
        case 'bottles':
          return t('parts.bottles', { count: Math.round(value) })
      }
    },
    cost: ({ minor, isComplete }: Cost): string => {
      const rounded = Math.round(minor)
      if (!isComplete && rounded === 0) return t('parts.cost.unknown')
      const money = text(rounded, 'money')
      return isComplete ? money : t('parts.cost.atLeast', { cost: money })
    },
  }
}
