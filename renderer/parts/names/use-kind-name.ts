/** A kind of liqueur by the fruit that it is made of. */
import { useCallback } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useFruitName, useFruits } from './use-names.ts'

export function useKindName(): (kindId: string) => string {
  const t = useWords()
  const fruits = useFruits()
  const fruitName = useFruitName()
  return useCallback(
    (kindId) => {
      const fruit = fruits.get(kindId)
      if (fruit) return fruitName(fruit)
      // Until the fruits are read there is no telling.
      return fruits.size === 0 ? '' : t('parts.kindUnknown')
    },
    [fruits, fruitName, t],
  )
}
