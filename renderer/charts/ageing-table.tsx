/** The ageing chart as a table. */
import { useWords } from '../app/words/use-words.ts'
import { PhaseWord } from '../parts/ageing/phase-word.tsx'
import { Table } from '../parts/table/table.tsx'
import { useTimes } from '../parts/time/use-times.ts'
import type { AgeingBar, AgeingGroup } from './ageing-rows.ts'
import { useAgeingWords } from './use-ageing-words.ts'

interface Row extends AgeingBar {
  readonly kindId: string
  readonly isFirst: boolean
}

export interface AgeingTableProps {
  groups: readonly AgeingGroup[]
  kindName: (kindId: string) => string
}

export function AgeingTable({ groups, kindName }: AgeingTableProps) {
  const t = useWords()
  const times = useTimes()
  const words = useAgeingWords()
  const rows = groups.flatMap(({ kindId, bars }) =>
    bars.map((bar, index) => ({ ...bar, kindId, isFirst: index === 0 })),
  )
  return (
    <Table<Row>
      caption={t('shelf.ageing.caption')}
      rows={rows}
      rowKey={({ lotId }) => lotId}
      startsGroup={({ isFirst }) => isFirst}
      columns={[
        { key: 'lot', header: t('shelf.ageing.lot'), isRowHeader: true, cell: ({ name }) => name },
        { key: 'kind', header: t('shelf.ageing.kind'), cell: ({ kindId }) => kindName(kindId) },
        {
          key: 'left',
          header: t('shelf.ageing.left'),
          align: 'end',
          cell: ({ count }) => count,
        },
        {
          key: 'bottled',
          header: t('shelf.ageing.bottled'),
          isMinor: true,
          cell: ({ bottledMs }) => times.day(new Date(bottledMs).toISOString()),
        },
        {
          key: 'phase',
          header: t('shelf.ageing.phaseNow'),
          cell: ({ phase }) => <PhaseWord phase={phase} />,
        },
        {
          key: 'ready',
          header: t('shelf.ageing.readyFrom'),
          cell: ({ ready }) => words.edge(ready),
        },
        {
          key: 'fading',
          header: t('shelf.ageing.fadingFrom'),
          cell: ({ fading }) => words.edge(fading),
        },
      ]}
    />
  )
}
