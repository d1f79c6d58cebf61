/** What is known of the whole shelf before its lots are looked at one by one. */
import { batchNames } from '../cellar/batch-store.ts'
import { allShelves } from '../cellar/shelf-store.ts'
import type { Shelf } from '../../shared/schemas/shelf.ts'
import {
  bottlesPlace,
  fruitsInBottles,
  usualStorage,
  type AgeingFruit,
  type BottleState,
  type FruitInBottles,
  type Stay,
  type Step,
} from '../engine/index.ts'
import type { CellarFruits } from './cellar-fruits.ts'
import { costsOfView } from './cellar-costs.ts'
import { nowMs } from './handlers/handler.ts'
import type { Session } from './session.ts'
import { shelfHistory, type LotHistory, type ShelfHistory } from './shelf-history.ts'

type Storage = Omit<Stay, 'fromMs'>

export interface ShelfFacts {
  readonly nowMs: number
  readonly history: ShelfHistory
  readonly fruits: CellarFruits
  readonly nameOfBatch: (batchId: string) => string
  /** What each fruit brought to a lot, and honey, the most first. */
  readonly broughtTo: (bottleLotId: string) => readonly FruitInBottles[]
  readonly storageOf: (shelfId: string | null) => Storage
  /** Changes whenever a shelf does. */
  readonly shelves: string
  readonly costOf: (bottleLotId: string) => { minor: number; isComplete: boolean } | undefined
}

const noHistory: LotHistory = Object.freeze({ steps: [], stands: [], tastings: [] })

export const historyOf = ({ history }: ShelfFacts, bottleLotId: string): LotHistory =>
  history.lots.get(bottleLotId) ?? noHistory

export function shelfFacts(session: Session): ShelfFacts {
  const { book, ledger, fruits } = session
  const history = shelfHistory(ledger.folded.steps)
  const shelves = allShelves(book)
  const storages = new Map<string | null, Storage>(shelves.map((shelf) => [shelf.id, shelf]))
  const names = batchNames(book)
  const brought = broughtBy(session, history)
  return {
    nowMs: nowMs(session),
    history,
    fruits,
    nameOfBatch: (batchId) => names.get(batchId) ?? batchId,
    broughtTo: (id) => brought.get(id) ?? [],
    storageOf: (shelfId) => storages.get(shelfId) ?? usualStorage,
    shelves: shelves.map(storageWords).join(),
    // Today asks for no costs, and must not wait for them.
    costOf: (id) => costsOfView(ledger).places.get(bottlesPlace(id)),
  }
}

const storageWords = ({ id, temperatureC, light }: Shelf) => `${id} ${temperatureC} ${light}`

type Brought = ReadonlyMap<string, readonly FruitInBottles[]>
const known = new WeakMap<Step, { bottlings: number; brought: Brought }>()

/** What is in a bottle is settled once it is filled: asked again only after the next bottling. */
function broughtBy({ ledger: { folded } }: Session, { bottlings }: ShelfHistory): Brought {
  const [first] = folded.steps
  if (!first) return new Map()
  const kept = known.get(first)
  if (kept?.bottlings === bottlings) return kept.brought
  const brought = fruitsInBottles(folded)
  known.set(first, { bottlings, brought })
  return brought
}

/** The fruits of a lot as ageing sees them, and the honey beside them. */
export function ageingFruits({ fruits, broughtTo }: ShelfFacts, bottleLotId: string) {
  const own: AgeingFruit[] = []
  let honeyShare = 0
  for (const { fruitId, massG } of broughtTo(bottleLotId)) {
    const fruit = fruits.find(fruitId)
    if (fruit) own.push({ fruit, share: massG })
    else honeyShare += massG
  }
  return { fruits: own, honeyShare }
}

/** Where most of the bottles stood from when on; what never had a place has no stays. */
export function staysOf({ storageOf }: ShelfFacts, { stands }: LotHistory): Stay[] {
  const stays: Stay[] = []
  let before: string | null = null
  for (const { atMs, shelves } of stands) {
    const shelfId = mainShelf(shelves)
    if (shelfId === undefined || shelfId === before) continue
    const { temperatureC, light } = storageOf(shelfId)
    stays.push({ fromMs: atMs, temperatureC, light })
    before = shelfId
  }
  return stays
}

/** Undefined once all are gone. */
function mainShelf(shelves: BottleState['shelves']): string | null | undefined {
  let most = 0
  let main: string | null | undefined
  for (const [shelfId, count] of shelves)
    if (count > most) {
      most = count
      main = shelfId
    }
  return main
}
