/** Each kind's stock: how much, how fast it goes, what share is given away, when it runs out. */
import { useWords } from '../../../app/words/use-words.ts'
import { useSettings } from '../../../app/settings.tsx'
import { Button } from '../../../parts/button/button.tsx'
import { formatShare } from '../../../parts/quantity/format-share.ts'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { Table } from '../../../parts/table/table.tsx'
import type { KindStock, ShelfStock } from '../../../../shared/schemas/shelf.ts'
import { useRunsOutWords } from './use-runs-out-words.ts'
import styles from '../section.module.css'

interface KindsTableProps {
  stock: ShelfStock
  kindName: (kindId: string) => string
  onShow: (kindId: string) => void
}

export function KindsTable({ stock, kindName, onShow }: KindsTableProps) {
  const t = useWords()
  const { locale } = useSettings()
  const { text } = useQuantities()
  const runsOut = useRunsOutWords()
  const rows = stock.kinds.toSorted((a, b) => b.volumeMl - a.volumeMl)
  const isAll = (row: KindStock) => row === stock.all
  return (
    <Table<KindStock>
      caption={t('shelf.stock.kindsCaption')}
      rows={rows}
      foot={stock.all}
      rowKey={({ kindId }) => kindId}
      columns={[
        {
          key: 'kind',
          header: t('shelf.stock.kind'),
          isRowHeader: true,
          cell: (row) =>
            isAll(row) ? (
              t('shelf.stock.all')
            ) : (
              <Button
                kind="quiet"
                aria-label={t('shelf.stock.show', { kind: kindName(row.kindId) })}
                onPress={() => onShow(row.kindId)}
              >
                {kindName(row.kindId)}
              </Button>
            ),
        },
        {
          key: 'bottles',
          header: t('shelf.stock.bottles'),
          align: 'end',
          cell: ({ bottleCount }) => bottleCount,
        },
        {
          key: 'volume',
          header: t('shelf.stock.volume'),
          align: 'end',
          cell: ({ volumeMl }) => <Quantity value={volumeMl} dimension="volume" />,
        },
        {
          key: 'perYear',
          header: t('shelf.stock.perYear'),
          align: 'end',
          cell: ({ perYearMl }) => (
            <>
              <Quantity value={perYearMl.value} dimension="volume" />
              <br />
              <span className={styles.small}>
                {t('shelf.stock.range', {
                  low: text(perYearMl.low, 'volume'),
                  high: text(perYearMl.high, 'volume'),
                })}
              </span>
            </>
          ),
        },
        {
          key: 'given',
          header: t('shelf.stock.given'),
          align: 'end',
          isMinor: true,
          cell: ({ givenShare }) => formatShare(givenShare, locale),
        },
        { key: 'runsOut', header: t('shelf.stock.runsOut'), cell: (row) => runsOut(row) },
      ]}
    />
  )
}
