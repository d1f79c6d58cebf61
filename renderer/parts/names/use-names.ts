/** What the maker calls the places, batches and fruits that the book knows by id. */
import { useCallback } from 'react'
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
  return byId(useRead('fruits.list', {}).data, fruitId)
}
const fruitId = ({ id }: Fruit) => id

export interface JarInPlace {
  jar: Jar
  contents?: JarContents | undefined
}

export function useJars(): ReadonlyMap<string, JarInPlace> {
  return byId(useRead('jars.list', {}).data, jarId)
}
const jarId = ({ jar }: JarInPlace) => jar.id

export function useShelves(): ReadonlyMap<string, Shelf> {
  return byId(useRead('shelves.list', {}).data, shelfIdOf)
}
const shelfIdOf = ({ id }: Shelf) => id

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
  return byId(useRead('batches.list', {}).data, batchId)
}
const batchId = ({ batch }: BatchSummary) => batch.id

/** One map of a list for all who ask: each row of a table does. */
function byId<Entry>(
  list: readonly Entry[] = noEntries,
  idOf: (entry: Entry) => string,
): ReadonlyMap<string, Entry> {
  const known = maps.get(list) as ReadonlyMap<string, Entry> | undefined
  if (known) return known
  const map = new Map(list.map((entry) => [idOf(entry), entry]))
  maps.set(list, map)
  return map
}
const maps = new WeakMap<readonly unknown[], ReadonlyMap<string, unknown>>()
const noEntries: readonly never[] = []
