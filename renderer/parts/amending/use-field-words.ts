/** The values of a move's fields in words, each by what it is. */
import { useRead } from '../../app/queries.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import type { Goods } from '../../../shared/schemas/goods.ts'
import type { Instrument } from '../../../shared/schemas/readings.ts'
import type {
  Cut,
  FilterMedium,
  TasteAxis,
  Turned,
  Verdict,
} from '../../../shared/schemas/moves.ts'
import { listFormat } from '../formatters/formatters.ts'
import {
  useBatches,
  useFruitName,
  useFruits,
  useGoodsName,
  useJars,
  useShelfName,
} from '../names/use-names.ts'
import { useQuantities } from '../quantity/use-quantities.ts'
import { useTimes } from '../time/use-times.ts'
import { moveFields, type FieldChange } from './move-fields.ts'

export interface FieldWords {
  label: (change: FieldChange) => string
  value: (change: FieldChange, side: 'before' | 'after') => string
}

export function useFieldWords(): FieldWords {
  const t = useWords()
  const { locale } = useSettings()
  const { text } = useQuantities()
  const times = useTimes()
  const batches = useBatches()
  const vessels = useJars()
  const shelfName = useShelfName()
  const goodsName = useGoodsName()
  const fruits = useFruits()
  const fruitName = useFruitName()
  const pantry = useRead('pantry.list', {}).data
  const bottles = useRead('bottles.list', {}).data

  function pantryLot(id: string): string {
    const lot = pantry?.find((one) => one.id === id)
    return lot ? goodsName(lot.goods) : t('parts.place.thePantryLot')
  }
  function fruitList(ids: readonly string[]): string {
    const names = ids.map((id) => {
      const fruit = fruits.get(id)
      return fruit ? fruitName(fruit) : id
    })
    return listFormat(locale, { type: 'conjunction' }).format(names)
  }

  /** The casts say what the contract says of the field. */
  function told(field: FieldChange['field'], value: unknown): string {
    const kind = moveFields[field]
    switch (kind) {
      case 'moment':
        return times.moment(value as string)
      case 'text':
        return value as string
      case 'truth':
        return t(value === true ? 'amending.history.yes' : 'amending.history.no')
      case 'bottles':
        return t('parts.bottles', { count: value as number })
      case 'score':
        return text(value as number, 'count')
      case 'minorMoney':
        return text(value as number, 'money')
      case 'batch':
        return batches.get(value as string)?.batch.name ?? (value as string)
      case 'jar':
        return vessels.get(value as string)?.jar.name ?? t('parts.place.theJar')
      case 'pantryLot':
        return pantryLot(value as string)
      case 'bottleLot':
        return bottles?.find((one) => one.id === value)?.name ?? t('parts.place.theBottles')
      case 'shelf':
        return shelfName(value as string | null)
      case 'opened':
        return t('parts.place.theOpened')
      case 'fruits':
        return fruitList(value as string[])
      case 'goods':
        return goodsName(value as Goods)
      case 'cut':
        return t(`codes.cut.${value as Cut}`)
      case 'turned':
        return t(`codes.turned.${value as Turned}`)
      case 'medium':
        return t(`codes.medium.${value as FilterMedium}`)
      case 'instrument':
        return t(`codes.instrument.${value as Instrument}`)
      case 'verdict':
        return t(`shelf.phase.${value as Verdict}`)
      case 'part':
        return t(`batch.form.parts3.${value as 'all' | 'pulp' | 'liquid'}`)
      case 'facts':
        return t('amending.history.facts')
      default:
        return text(value as number, kind)
    }
  }

  return {
    label: ({ field, axis }) =>
      field === 'scores'
        ? t(`shelf.axis.${axis as TasteAxis}`)
        : t(`amending.history.field.${field}`),
    value: (change, side) => {
      const value = change[side]
      return value === undefined || value === ''
        ? t('amending.history.nothing')
        : told(change.field, value)
    },
  }
}
