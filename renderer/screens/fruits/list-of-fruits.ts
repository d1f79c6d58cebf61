/** Which fruits the list shows: by whose they are, by season, by words. */
import type { Fruit, FruitOrigin } from '../../../shared/schemas/fruits.ts'
import { isInSeason } from './season-months.ts'

export const fruitGroups = ['all', 'inSeason', 'yours'] as const
export type FruitGroup = (typeof fruitGroups)[number]

export interface ListedFruit {
  readonly fruit: Fruit
  readonly origin: FruitOrigin
  /** In the maker's language, as the list shows it. */
  readonly name: string
  readonly kind: string
}

export interface WantedFruit {
  readonly group: FruitGroup
  readonly search: string
  readonly month: number
}

export const isInGroup = ({ fruit, origin }: ListedFruit, group: FruitGroup, month: number) => {
  switch (group) {
    case 'all':
      return true
    case 'inSeason':
      // What is sold all year is no news this month.
      return fruit.season !== undefined && isInSeason(fruit.season, month)
    case 'yours':
      return origin !== 'library'
  }
}

export function listOfFruits(
  all: readonly ListedFruit[],
  { group, search, month }: WantedFruit,
): ListedFruit[] {
  const words = plain(search).split(/\s+/).filter(Boolean)
  return all.filter((listed) => {
    if (!isInGroup(listed, group, month)) return false
    const { nameEn, namePl, latin } = listed.fruit
    const text = plain([listed.name, nameEn, namePl, latin, listed.kind].join(' '))
    return words.every((word) => text.includes(word))
  })
}

/** Without case and accents, so that "sliwka" finds "śliwka". */
const plain = (text: string) =>
  text
    .normalize('NFD')
    .replace(/\p{Diacritic}/gu, '')
    .replaceAll('ł', 'l')
    .replaceAll('Ł', 'L')
    .toLowerCase()
