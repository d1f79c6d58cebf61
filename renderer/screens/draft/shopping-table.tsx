/** What to buy for a draft, and what it costs. */
import { memo } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { DraftOutcome, Purchase } from '../../../shared/schemas/drafts.ts'
import { Quantity } from '../../parts/quantity/quantity.tsx'
import { Table, type Column } from '../../parts/table/table.tsx'
import { useDraftWords } from './use-draft-words.ts'

export const ShoppingTable = memo(function ShoppingTable({ outcome }: { outcome: DraftOutcome }) {
  const t = useWords()
  const words = useDraftWords()
  const columns: Column<Purchase>[] = [
    {
      key: 'what',
      header: t('draft.editor.what'),
      isRowHeader: true,
      cell: (purchase) => words.purchase(purchase),
    },
    {
      key: 'howMuch',
      header: t('draft.editor.howMuch'),
      align: 'end',
      cell: ({ massG, volumeMl, count }) => {
        if (count !== undefined) return <Quantity value={count} dimension="count" />
        return massG === undefined ? (
          <Quantity value={volumeMl ?? 0} dimension="volume" />
        ) : (
          <Quantity value={massG} dimension="mass" />
        )
      },
    },
    {
      key: 'price',
      header: t('draft.editor.price'),
      align: 'end',
      cell: ({ priceMinor }) =>
        priceMinor === undefined ? '–' : <Quantity value={priceMinor} dimension="money" />,
    },
  ]
  return (
    <Table
      caption={t('draft.editor.shopping')}
      columns={columns}
      rows={outcome.purchases}
      rowKey={({ what, fruitId, strengthPctVol }) => `${what} ${fruitId} ${strengthPctVol}`}
    />
  )
})
