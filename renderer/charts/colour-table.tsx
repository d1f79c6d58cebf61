/** How much of the colour is left, as a table. */
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import type { ShelfPage } from '../../shared/schemas/shelf.ts'
import { formatShare } from '../parts/quantity/format-share.ts'
import { Table } from '../parts/table/table.tsx'
import { useTimes } from '../parts/time/use-times.ts'

export function ColourTable({ points }: { points: ShelfPage['colour'] }) {
  const t = useWords()
  const times = useTimes()
  const { locale } = useSettings()
  const share = (value: number) => formatShare(value, locale)
  return (
    <Table<ShelfPage['colour'][number]>
      caption={t('shelf.lot.colourCaption')}
      rows={points}
      rowKey={({ at }) => at}
      columns={[
        {
          key: 'at',
          header: t('shelf.lot.when'),
          isRowHeader: true,
          cell: ({ at }) => times.day(at),
        },
        {
          key: 'left',
          header: t('shelf.lot.colour'),
          align: 'end',
          cell: ({ left }) => share(left.value),
        },
        {
          key: 'low',
          header: t('shelf.stock.low'),
          align: 'end',
          cell: ({ left }) => share(left.low),
        },
        {
          key: 'high',
          header: t('shelf.stock.high'),
          align: 'end',
          cell: ({ left }) => share(left.high),
        },
      ]}
    />
  )
}
