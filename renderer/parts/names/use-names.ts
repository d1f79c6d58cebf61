/** What the maker calls the places, batches and fruits that the book knows by id. */
import { useCallback, useMemo } from 'react'
import { useLanguage, useWords } from '../../app/words/use-words.ts'
import type { BatchSummary, Jar, JarContents } from '../../../shared/schemas/cellar.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { Goods } from '../../../shared/schemas/goods.ts'
import type { Shelf } from '../../../shared/schemas/shelf.ts'
import { useRead } from '../../app/queries.ts'
import { useQuantities } from '../quantity/use-quantities.ts'

/** A fruit's name in the language of the words. */
export function useFruitName(): (fruit: Pick<Fruit, 'nameEn' | 'namePl'>) => string {
  const language = useLanguage()
  return useCallback((fruit) => (language === 'pl' ? fruit.namePl : fruit.nameEn), [language])
}

export function useFruits(): ReadonlyMap<string, Fruit> {
  const { data } = useRead('fruits.list', {})
  return useMemo(() => new Map((data ?? []).map((fruit) => [fruit.id, fruit])), [data])
}

export interface JarInPlace {
  jar: Jar
  contents?: JarContents | undefined
}

export function useJars(): ReadonlyMap<string, JarInPlace> {
  const { data } = useRead('jars.list', {})
  return useMemo(() => new Map((data ?? []).map((entry) => [entry.jar.id, entry])), [data])
}

export function useShelves(): ReadonlyMap<string, Shelf> {
  const { data } = useRead('shelves.list', {})
  return useMemo(() => new Map((data ?? []).map((shelf) => [shelf.id, shelf])), [data])
}

/** A place on the shelf; null is where bottles stand that have none. */
export function useShelfName(): (shelfId: string | null) => string {
  const shelves = useShelves()
  const t = useWords()
  return useCallback(
    (shelfId) =>
      shelfId === null
        ? t('parts.place.noShelf')
        : (shelves.get(shelfId)?.name ?? t('parts.place.theShelf')),
    [shelves, t],
  )
}

/** "Damson", "Spirit 96.0 % vol", "Sugar", or the maker's own name for the lot. */
export function useGoodsName(): (goods: Goods) => string {
  const fruits = useFruits()
  const fruitName = useFruitName()
  const quantities = useQuantities()
  const t = useWords()
  return (goods) => {
    if (goods.name) return goods.name
    switch (goods.kind) {
      case 'fruit': {
        const fruit = fruits.get(goods.fruitId)
        return fruit ? fruitName(fruit) : goods.fruitId
      }
      case 'spirit':
        return t('parts.goods.spirit', {
          strength: quantities.text(goods.strengthPctVol, 'strength'),
        })
      case 'sweetener':
        return t(`parts.goods.${goods.sweetenerId}`)
      case 'acid':
        return t('parts.goods.acid')
    }
  }
}

/** A ledger place such as `jar:north-shelf` as a piece of a sentence: the jar “North shelf”. */
export function usePlaceName(): (place: string) => string {
  const shelfName = useShelfName()
  const jars = useJars()
  const goodsName = useGoodsName()
  const t = useWords()
  const pantry = useRead('pantry.list', {}).data
  const bottles = useRead('bottles.list', {}).data
  return (place) => {
    const [kind, id = ''] = place.split(/:(.*)/s)
    switch (kind) {
      case 'jar': {
        const jar = jars.get(id)?.jar
        return jar ? t('parts.place.jar', { name: jar.name }) : t('parts.place.theJar')
      }
      case 'lot': {
        const lot = pantry?.find((one) => one.id === id)
        return lot
          ? t('parts.place.pantry', { name: goodsName(lot.goods) })
          : t('parts.place.thePantryLot')
      }
      case 'bottles': {
        const lot = bottles?.find((one) => one.id === id)
        return lot ? t('parts.place.bottle', { name: lot.name }) : t('parts.place.theBottles')
      }
      case 'opened':
        return t('parts.place.theOpened')
      case 'shelf':
        return shelfName(id)
      default:
        return t('parts.place.theOutside')
    }
  }
}

/** Every batch by its id, as the list of batches has it. */
export function useBatches(): ReadonlyMap<string, BatchSummary> {
  const { data } = useRead('batches.list', {})
  return useMemo(() => new Map((data ?? []).map((entry) => [entry.batch.id, entry])), [data])
}
