/**
 * The fruits as this cellar reckons with them: the library's, the maker's copies in their place and
 * the maker's own kinds.
 */
import { ownFruits } from '../cellar/fruit-store.ts'
import type { Book } from '../cellar/open-book.ts'
import { fruitLibrary, fruitOf as libraryFruitOf } from '../engine/index.ts'
import type { Fruit, FruitOrigin } from '../../shared/schemas/fruits.ts'

export interface CellarFruits {
  /** By name. */
  readonly all: readonly Fruit[]
  readonly find: (id: string) => Fruit | undefined
  /** Throws RangeError for a fruit that is nowhere. */
  readonly fruitOf: (id: string) => Fruit
  readonly originOf: (id: string) => FruitOrigin
  /** Those that are not as the library has them. */
  readonly origins: readonly { readonly fruitId: string; readonly origin: FruitOrigin }[]
}

export function cellarFruits(book: Book): CellarFruits {
  const own = new Map(ownFruits(book).map((kept) => [kept.fruit.id, kept]))
  const byId = new Map(fruitLibrary)
  for (const [id, { fruit }] of own) byId.set(id, fruit)
  const find = (id: string) => byId.get(id)
  return {
    all: [...byId.values()].sort((a, b) => a.nameEn.localeCompare(b.nameEn, 'en')),
    find,
    fruitOf: (id) => find(id) ?? libraryFruitOf(id),
    originOf: (id) => own.get(id)?.origin ?? 'library',
    origins: [...own].map(([fruitId, { origin }]) => ({ fruitId, origin })),
  }
}
