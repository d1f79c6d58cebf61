/** A kind of liqueur by the fruit that brought most of it. */
import { useCallback } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useFruitName, useFruits } from '../../parts/names/use-names.ts'

export function useKindName(): (kindId: string) => string {
  const t = useWords()
  const fruits = useFruits()
  const fruitName = useFruitName()
  return useCallback(
    (kindId) => {
      const fruit = fruits.get(kindId)
      return fruit ? fruitName(fruit) : t('shelf.lots.otherKind')
    },
    [fruits, fruitName, t],
  )
}
