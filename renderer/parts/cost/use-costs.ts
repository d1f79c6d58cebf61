/** What the matter in each place cost, by the ledger's names for places. */
import { useCallback, useMemo } from 'react'
import type { Cost, PlaceCost } from '../../../shared/schemas/marrying.ts'
import { useRead } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { useQuantities } from '../quantity/use-quantities.ts'

/** Empty until the book has answered. */
export function useCosts(): ReadonlyMap<string, PlaceCost> {
  const { data } = useRead('cellar.costs', {})
  return useMemo(() => new Map((data?.places ?? []).map((one) => [one.place, one])), [data])
}

/** Money as far as prices are known: “at least” where one is missing, nothing where all are. */
export function useCostWords(): (cost: Cost) => string | undefined {
  const t = useWords()
  const { text } = useQuantities()
  return useCallback(
    ({ minor, isComplete }) => {
      const rounded = Math.round(minor)
      if (isComplete) return text(rounded, 'money')
      return rounded === 0 ? undefined : t('parts.cost.atLeast', { cost: text(rounded, 'money') })
    },
    [t, text],
  )
}
