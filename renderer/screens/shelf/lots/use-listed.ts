/** The lots of the shelf with the names they are found by. */
import { useMemo } from 'react'
import type { ShelfLot } from '../../../../shared/schemas/shelf.ts'
import { useBatches, useShelfName } from '../../../parts/names/use-names.ts'
import { plain } from '../../../../shared/plain.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import type { ListedLot } from './list-of-lots.ts'

export function useListed(lots: readonly ShelfLot[]): ListedLot[] {
  const kindName = useKindName()
  const shelfName = useShelfName()
  const batches = useBatches()
  return useMemo(
    () =>
      lots.map((shelfLot) => {
        const { lot, fruitIds, kindId, vintage } = shelfLot
        const kind = kindName(kindId)
        const words = [
          lot.name,
          kind,
          vintage,
          batches.get(lot.batchId)?.batch.name ?? '',
          ...fruitIds.map(kindName),
          ...lot.places.map(({ shelfId }) => (shelfId === null ? '' : shelfName(shelfId))),
        ]
        return { shelfLot, kind, searched: plain(words.join(' ')) }
      }),
    [lots, kindName, shelfName, batches],
  )
}
