/** The tastings as a table: a row a tasting, a column an axis. */
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import type { MoveOf, TasteAxis } from '../../shared/schemas/moves.ts'
import { Table, type Column } from '../parts/table/table.tsx'
import { useTimes } from '../parts/time/use-times.ts'
import { tastePanels, type TastedLot } from './taste-rows.ts'
import { numberFormat } from '../parts/formatters/formatters.ts'

interface Row {
  readonly lot: TastedLot
  readonly tasting: MoveOf<'taste'>
}

export function TasteTable({ lots }: { lots: readonly TastedLot[] }) {
  const t = useWords()
  const times = useTimes()
  const { locale } = useSettings()
  const plain = numberFormat(locale, { maximumFractionDigits: 1 })
  const rows = lots.flatMap((lot) => lot.tastings.map((tasting) => ({ lot, tasting })))
  const scoreColumn = (axis: TasteAxis): Column<Row> => ({
    key: axis,
    header: t(`shelf.axis.${axis}`),
    align: 'end',
    cell: ({ tasting }) => {
      const score = tasting.scores[axis]
      return score === undefined ? null : plain.format(score)
    },
  })
  const nameColumn: Column<Row> = {
    key: 'lot',
    header: t('shelf.ageing.lot'),
    cell: ({ lot }) => lot.name,
  }
  return (
    <Table<Row>
      caption={t('shelf.lot.chartCaption')}
      rows={rows.toSorted((a, b) => b.tasting.at.localeCompare(a.tasting.at))}
      rowKey={({ lot, tasting }) => `${lot.lotId} ${tasting.at}`}
      columns={[
        {
          key: 'at',
          header: t('shelf.lot.when'),
          isRowHeader: true,
          cell: ({ tasting }) => times.day(tasting.at),
        },
        ...(lots.length > 1 ? [nameColumn] : []),
        ...tastePanels(lots, 'date').map(({ axis }) => scoreColumn(axis)),
      ]}
    />
  )
}
