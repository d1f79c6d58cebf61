/** What one move carried, in grams of each kind of matter, from place to place. */
import { useWords } from '../../../app/words/use-words.ts'
import { matterKinds, type Matter } from '../../../../shared/matter.ts'
import type { Transfer } from '../../../../shared/schemas/cellar.ts'
import { useSettings } from '../../../app/settings.tsx'
import { usePlaceName } from '../../../parts/names/use-names.ts'
import { Table } from '../../../parts/table/table.tsx'
import { numberFormat } from '../../../parts/formatters/formatters.ts'

const outside = [
  'supplier',
  'tap',
  'elsewhere',
  'glass',
  'gift',
  'waste',
  'filter',
  'correction',
] as const

export function TransfersTable({ transfers }: { transfers: readonly Transfer[] }) {
  const t = useWords()
  const { locale } = useSettings()
  const placeName = usePlaceName()
  if (transfers.length === 0) return <p>{t('batch.ledger.nothingMoved')}</p>
  const name = (place: string) => {
    const boundary = outside.find((one) => place === `outside:${one}`)
    return boundary ? t(`batch.ledger.placeNames.${boundary}`) : placeName(place)
  }
  // Only what moved gets a column.
  const carried = matterKinds.filter((kind) => transfers.some(({ matter }) => moves(matter, kind)))
  const grams = numberFormat(locale, {
    minimumFractionDigits: 1,
    maximumFractionDigits: 1,
  })
  return (
    <Table
      caption={t('batch.ledger.gramsCaption')}
      rows={transfers.map((transfer, index) => ({ ...transfer, index }))}
      rowKey={({ index }) => String(index)}
      columns={[
        {
          key: 'from',
          header: t('batch.ledger.from'),
          isRowHeader: true,
          cell: ({ from }) => name(from),
        },
        { key: 'to', header: t('batch.ledger.to'), cell: ({ to }) => name(to) },
        ...carried.map((kind) => ({
          key: kind,
          header: `${t(`codes.matter.${kind}`)}, g`,
          align: 'end' as const,
          cell: ({ matter }: Transfer) => grams.format(matter[kind]),
        })),
      ]}
    />
  )
}

const moves = (matter: Matter, kind: keyof Matter) => Math.abs(matter[kind]) >= 0.05
