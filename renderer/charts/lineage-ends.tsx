/** The two ends of a lineage as a table: what each purchase brought, or where it is now. */
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import { massOf } from '../../shared/matter.ts'
import type { Lineage, LineageNode } from '../../shared/schemas/shelf.ts'
import { formatShare } from '../parts/quantity/format-share.ts'
import { Quantity } from '../parts/quantity/quantity.tsx'
import { Table } from '../parts/table/table.tsx'

type End = Lineage['origins'][number]

export interface LineageEndsProps {
  ends: readonly End[]
  nodes: readonly LineageNode[]
  nameOf: (node: LineageNode) => string
  caption: string
  header: string
}

export function LineageEnds({ ends, nodes, nameOf, caption, header }: LineageEndsProps) {
  const t = useWords()
  const { locale } = useSettings()
  const allG = ends.reduce((sum, { matter }) => sum + massOf(matter), 0)
  return (
    <Table<End>
      caption={caption}
      rows={ends.toSorted((a, b) => massOf(b.matter) - massOf(a.matter))}
      rowKey={({ key }) => key}
      columns={[
        {
          key: 'end',
          header,
          isRowHeader: true,
          cell: ({ key }) => {
            const node = nodes.find((one) => one.key === key)
            return node ? nameOf(node) : key
          },
        },
        {
          key: 'mass',
          header: t('shelf.lineage.amounts.mass'),
          align: 'end',
          cell: ({ matter }) => <Quantity value={massOf(matter)} dimension="mass" />,
        },
        {
          key: 'ethanol',
          header: t('codes.matter.ethanolG'),
          align: 'end',
          cell: ({ matter }) => <Quantity value={matter.ethanolG} dimension="mass" />,
        },
        {
          key: 'sugar',
          header: t('codes.matter.sugarG'),
          align: 'end',
          cell: ({ matter }) => <Quantity value={matter.sugarG} dimension="mass" />,
        },
        {
          key: 'share',
          header: t('shelf.lineage.share'),
          align: 'end',
          cell: ({ matter }) => (allG > 0 ? formatShare(massOf(matter) / allG, locale) : ''),
        },
      ]}
    />
  )
}
