/** What the maker calls the places of a lineage. */
import { useWords, type Words } from '../app/words/use-words.ts'
import { useRead } from '../app/queries.ts'
import type { LineageNode } from '../../shared/schemas/shelf.ts'
import { useBatches, useGoodsName, useJars } from '../parts/names/use-names.ts'

const outsides = [
  'supplier',
  'tap',
  'elsewhere',
  'glass',
  'gift',
  'waste',
  'filter',
  'correction',
] as const

export function useLineageNames(): (node: LineageNode) => string {
  const t = useWords()
  const jars = useJars()
  const batches = useBatches()
  const goodsName = useGoodsName()
  const pantry = useRead('pantry.list', {}).data
  const bottles = useRead('bottles.list', {}).data
  return ({ key, kind, id, batchId }) => {
    switch (kind) {
      case 'lot': {
        const lot = pantry?.find((one) => one.id === id)
        return lot ? goodsName(lot.goods) : t('parts.place.thePantryLot')
      }
      case 'jar': {
        const jar = jars.get(id ?? '')?.jar.name ?? t('parts.place.theJar')
        const batch = batches.get(batchId ?? '')?.batch.name
        return batch === undefined ? jar : t('shelf.lineage.jarOf', { jar, batch })
      }
      case 'bottles': {
        const lot = bottles?.find((one) => one.id === id)
        return lot ? t('shelf.lineage.bottlesOf', { name: lot.name }) : t('parts.place.theBottles')
      }
      case 'opened': {
        const batch = batches.get(batchId ?? '')?.batch.name
        return batch === undefined
          ? t('shelf.lineage.opened')
          : t('shelf.lineage.openedOf', { name: batch })
      }
      case 'outside':
        return outsideName(key, t)
    }
  }
}

function outsideName(key: string, t: Words): string {
  const name = outsides.find((one) => key.startsWith(`outside:${one}`))
  return t(`shelf.lineage.outside.${name ?? 'other'}`)
}
