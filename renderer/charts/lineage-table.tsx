/** The lineage as a table: what passed from place to place. */
import { useWords } from '../app/words/use-words.ts'
import { massOf } from '../../shared/matter.ts'
import type { Lineage, LineageNode } from '../../shared/schemas/shelf.ts'
import { Quantity } from '../parts/quantity/quantity.tsx'
import { Table } from '../parts/table/table.tsx'

type Link = Lineage['links'][number]

export interface LineageTableProps {
  lineage: Lineage
  nameOf: (node: LineageNode) => string
}

export function LineageTable({ lineage, nameOf }: LineageTableProps) {
  const t = useWords()
  const byKey = new Map(lineage.nodes.map((node) => [node.key, node]))
  const name = (key: string) => {
    const node = byKey.get(key)
    return node ? nameOf(node) : key
  }
  const depth = (key: string) => byKey.get(key)?.depth ?? 0
  return (
    <Table<Link>
      caption={t('shelf.lineage.caption')}
      rows={lineage.links.toSorted(
        (a, b) => depth(a.from) - depth(b.from) || massOf(b.matter) - massOf(a.matter),
      )}
      rowKey={({ from, to }) => `${from} ${to}`}
      columns={[
        {
          key: 'from',
          header: t('shelf.lineage.from'),
          isRowHeader: true,
          cell: ({ from }) => name(from),
        },
        { key: 'to', header: t('shelf.lineage.to'), cell: ({ to }) => name(to) },
        {
          key: 'ethanol',
          header: t('codes.matter.ethanolG'),
          align: 'end',
          cell: ({ matter }) => grams(matter.ethanolG),
        },
        {
          key: 'water',
          header: t('codes.matter.waterG'),
          align: 'end',
          cell: ({ matter }) => grams(matter.waterG),
        },
        {
          key: 'sugar',
          header: t('codes.matter.sugarG'),
          align: 'end',
          cell: ({ matter }) => grams(matter.sugarG),
        },
        {
          key: 'total',
          header: t('shelf.lineage.total'),
          align: 'end',
          cell: ({ matter }) => <strong>{grams(massOf(matter))}</strong>,
        },
      ]}
    />
  )
}

const grams = (amountG: number) => <Quantity value={amountG} dimension="mass" />
