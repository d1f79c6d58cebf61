/** The jars' year as a table. */
import { useWords } from '../app/words/use-words.ts'
import { Quantity } from '../parts/quantity/quantity.tsx'
import { Table } from '../parts/table/table.tsx'
import { useTimes } from '../parts/time/use-times.ts'
import type { Occupancy, OccupancyBar, OccupancyRow } from './occupancy-rows.ts'
import { useOccupancyWords, type BarNames } from './use-occupancy-words.ts'

interface Row {
  readonly jar: OccupancyRow['jar']
  /** Absent where nothing stands in the jar all year. */
  readonly bar?: OccupancyBar
  readonly isFirst: boolean
}

export interface OccupancyTableProps extends BarNames {
  occupancy: Occupancy
}

export function OccupancyTable({ occupancy, ...names }: OccupancyTableProps) {
  const t = useWords()
  const times = useTimes()
  const words = useOccupancyWords(names)
  const day = (atMs: number) => times.day(new Date(atMs).toISOString())
  const rows = occupancy.rows.flatMap(({ jar, bars }): Row[] =>
    bars.length === 0
      ? [{ jar, isFirst: true }]
      : bars.map((bar, index) => ({ jar, bar, isFirst: index === 0 })),
  )
  return (
    <Table<Row>
      caption={t('season.jars.caption')}
      rows={rows}
      rowKey={({ jar, bar }) => bar?.key ?? jar.jarId}
      startsGroup={({ isFirst }) => isFirst}
      columns={[
        {
          key: 'jar',
          header: t('season.jars.jar'),
          isRowHeader: true,
          cell: ({ jar }) => jar.name,
        },
        {
          key: 'size',
          header: t('season.jars.size'),
          align: 'end',
          isMinor: true,
          cell: ({ jar }) => <Quantity value={jar.capacityMl} dimension="volume" isSize />,
        },
        { key: 'what', header: t('season.jars.what'), cell: ({ bar }) => bar && words.what(bar) },
        {
          key: 'use',
          header: t('season.jars.use'),
          cell: ({ bar }) => bar && t(`season.useName.${bar.use}`),
        },
        { key: 'from', header: t('season.jars.from'), cell: ({ bar }) => bar && day(bar.fromMs) },
        { key: 'to', header: t('season.jars.to'), cell: ({ bar }) => bar && day(bar.toMs) },
        {
          key: 'fill',
          header: t('season.jars.fill'),
          align: 'end',
          cell: ({ bar }) =>
            bar && bar.use !== 'cleaning' && <Quantity value={bar.fillMl} dimension="volume" />,
        },
      ]}
    />
  )
}
