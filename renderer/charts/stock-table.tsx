/** Stock over time as a table, month by month. */
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import { Quantity } from '../parts/quantity/quantity.tsx'
import { Table } from '../parts/table/table.tsx'
import type { StockRow } from './stock-rows.ts'
import { dateFormat } from '../parts/formatters/formatters.ts'

export function StockTable({ rows }: { rows: readonly StockRow[] }) {
  const t = useWords()
  const { locale } = useSettings()
  const format = dateFormat(locale, { dateStyle: 'medium' })
  return (
    <Table<StockRow>
      caption={t('shelf.stock.caption')}
      rows={rows.toReversed()}
      rowKey={({ atMs }) => String(atMs)}
      columns={[
        {
          key: 'month',
          header: t('shelf.stock.month'),
          isRowHeader: true,
          cell: ({ atMs, past }) =>
            past === undefined
              ? `${format.format(atMs)}, ${t('shelf.stock.isForecast')}`
              : format.format(atMs),
        },
        {
          key: 'volume',
          header: t('shelf.stock.volume'),
          align: 'end',
          cell: ({ past, forecast }) => (
            <Quantity value={past ?? forecast ?? 0} dimension="volume" />
          ),
        },
        {
          key: 'low',
          header: t('shelf.stock.low'),
          align: 'end',
          cell: (row) => bound(row, 0),
        },
        {
          key: 'high',
          header: t('shelf.stock.high'),
          align: 'end',
          cell: (row) => bound(row, 1),
        },
      ]}
    />
  )
}

/** What was is known; only what comes has bounds. */
const bound = ({ past, band }: StockRow, side: 0 | 1) =>
  past === undefined && band && <Quantity value={band[side]} dimension="volume" />
