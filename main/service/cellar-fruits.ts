/**
 * The fruits as this cellar reckons with them: the library's, the maker's copies in their place,
 * the maker's own kinds, and what their batches taught.
 */
import { ownFruits } from '../cellar/fruit-store.ts'
import type { Book } from '../cellar/open-book.ts'
import { fruitLibrary, fruitOf as libraryFruitOf, learn, learnedTissue } from '../engine/index.ts'
import type { Fruit, FruitLearned, FruitOrigin, FruitTissue } from '../../shared/schemas/fruits.ts'
import type { LedgerView } from './ledger-view.ts'
import type { Session } from './session.ts'

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

interface Lessons {
  readonly fruits: CellarFruits
  readonly byFruit: ReadonlyMap<string, FruitLearned>
}

/** Learning reads the whole ledger: once for each ledger and each set of facts. */
const lessons = new WeakMap<LedgerView, Lessons>()

export function learnedOf(
  { ledger, fruits }: Pick<Session, 'ledger' | 'fruits'>,
  fruitId: string,
): FruitLearned | undefined {
  let found = lessons.get(ledger)
  if (found?.fruits !== fruits) {
    const byFruit = learn(ledger.folded, { fruitOf: fruits.fruitOf, paceOf: () => undefined })
    found = { fruits, byFruit }
    lessons.set(ledger, found)
  }
  return found.byFruit.get(fruitId)
}

/** What a charge recorded now keeps: later edits and lessons never change it. */
export const tissueFor = (session: Session, fruitId: string): FruitTissue =>
  learnedTissue(session.fruits.fruitOf(fruitId), learnedOf(session, fruitId))
