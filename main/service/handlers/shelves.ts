/** The pantry and the bottles: lists read off the present state. */
import { allBatches } from '../../cellar/batch-store.ts'
import { bottleLot, pantryLot } from '../describe.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

export const shelfHandlers: Handlers<ChannelsOf<'pantry'> | ChannelsOf<'bottles'>> = {
  'pantry.list': ({ ledger }) =>
    [...ledger.folded.cellar.lots].map(([id, lot]) => pantryLot(id, lot)),
  'bottles.list': ({ book, ledger }) => {
    const names = new Map(allBatches(book).map((batch) => [batch.id, batch.name]))
    return [...ledger.folded.cellar.bottles].map(([id, lot]) =>
      bottleLot(id, lot, names.get(lot.batchId) ?? lot.batchId),
    )
  },
}
