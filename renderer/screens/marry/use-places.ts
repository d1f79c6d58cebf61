/** All that can go into a blend, read from the book, under the names the maker knows. */
import { useMemo } from 'react'
import { useRead } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { useBatches, useGoodsName } from '../../parts/names/use-names.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { acid, bottlesShown, endless, jarShown, lotShown, tap, type PlaceShown } from './places.ts'

export interface Places {
  readonly all: readonly PlaceShown[]
  readonly byPlace: ReadonlyMap<string, PlaceShown>
  readonly isHere: boolean
}

export function usePlaces(): Places {
  const t = useWords()
  const jars = useRead('jars.list', {}).data
  const pantry = useRead('pantry.list', {}).data
  const bottles = useRead('bottles.list', {}).data
  const batches = useBatches()
  const goodsName = useGoodsName()
  const { size } = useQuantities()
  // One text, so that the places stay the same objects while no name changes.
  const lotNames = (pantry ?? []).map((lot) => goodsName(lot.goods)).join('\n')
  return useMemo(() => {
    const colourOf = (batchId: string | undefined) => batches.get(batchId ?? '')?.batch.colour
    const found = [
      ...(jars ?? []).map((entry) =>
        jarShown(entry, batches.get(entry.contents?.batchId ?? '')?.batch),
      ),
      ...(bottles ?? []).map((lot) =>
        bottlesShown(
          lot,
          t('marry.parts.vintage', {
            name: lot.name,
            size: size(lot.bottleSizeMl, 'volume').text,
          }),
          colourOf(lot.batchId),
        ),
      ),
      ...(pantry ?? []).map((lot, index) => lotShown(lot, lotNames.split('\n')[index] ?? lot.id)),
    ]
    const all = [
      ...found.filter((one) => one !== undefined),
      endless(tap, t('marry.parts.water'), 'water'),
      endless(acid, t('marry.parts.acid'), 'acid'),
    ]
    return {
      all,
      byPlace: new Map(all.map((one) => [one.place, one])),
      isHere: jars !== undefined && pantry !== undefined && bottles !== undefined,
    }
  }, [t, jars, pantry, bottles, batches, lotNames, size])
}
