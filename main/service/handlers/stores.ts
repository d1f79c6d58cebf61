/** The pantry, the bottles and the shelves they stand on: lists read off the present state. */
import { batchNames } from '../../cellar/batch-store.ts'
import { allShelves, putShelf } from '../../cellar/shelf-store.ts'
import { sayShut } from '../../cellar/spirit-store.ts'
import { bottleLot, pantryLot } from '../describe.ts'
import { notFound, ServiceError } from '../service-error.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

type Stores = ChannelsOf<'pantry'> | ChannelsOf<'bottles'> | ChannelsOf<'shelves'>

export const storeHandlers: Handlers<Stores> = {
  'pantry.list': ({ ledger }) =>
    [...ledger.folded.cellar.lots].map(([id, lot]) => pantryLot(id, lot)),
  'pantry.sayShut': ({ book, ledger, options }, { lotId, isShut }) => {
    if (!ledger.folded.cellar.lots.has(lotId)) throw notFound('lot', lotId)
    const at = isShut ? options.now().toISOString() : null
    book.transaction(() => sayShut(book, lotId, at)).immediate()
    return {}
  },
  'bottles.list': ({ book, ledger }) => {
    const names = batchNames(book)
    return [...ledger.folded.cellar.bottles].map(([id, lot]) =>
      bottleLot(id, lot, names.get(lot.batchId) ?? lot.batchId),
    )
  },
  'shelves.list': ({ book }) => allShelves(book),
  'shelves.add': ({ book }, shelf) => {
    if (allShelves(book).some(({ id }) => id === shelf.id))
      throw new ServiceError('alreadyThere', `shelf ${shelf.id} exists`, { id: shelf.id })
    book.transaction(() => putShelf(book, shelf)).immediate()
    return shelf
  },
  'shelves.change': ({ book, ledger }, shelf) => {
    if (!allShelves(book).some(({ id }) => id === shelf.id)) throw notFound('shelf', shelf.id)
    const { bottles } = ledger.folded.cellar
    if (shelf.isRetired && [...bottles.values()].some(({ shelves }) => shelves.has(shelf.id)))
      throw new ServiceError('stillInUse', `bottles stand on shelf ${shelf.id}`, { id: shelf.id })
    book.transaction(() => putShelf(book, shelf)).immediate()
    return shelf
  },
}
