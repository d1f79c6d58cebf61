/** The two lines as a table, for those who read rather than look. */
import { useWords } from '../app/words/use-words.ts'
import type { SightLine } from '../../shared/schemas/bench.ts'
import { Strength } from '../parts/quantity/composition.tsx'
import { Quantity } from '../parts/quantity/quantity.tsx'
import { Table } from '../parts/table/table.tsx'
import { crossingRows, type CrossingRow } from './crossing-rows.ts'

export interface CrossingTableProps {
  density: SightLine
  refraction: SightLine
}

export function CrossingTable({ density, refraction }: CrossingTableProps) {
  const t = useWords()
  return (
    <Table<CrossingRow>
      caption={t('bench.crossing.title')}
      rows={crossingRows(density, refraction)}
      rowKey={({ strengthPctVol }) => String(strengthPctVol)}
      columns={[
        {
          key: 'strength',
          header: t('bench.crossing.strength'),
          isRowHeader: true,
          cell: ({ strengthPctVol }) => <Strength pctVol={strengthPctVol} />,
        },
        {
          key: 'density',
          header: t('bench.crossing.densitySugar'),
          align: 'end',
          cell: ({ density: gPerL }) => <Possible gPerL={gPerL} />,
        },
        {
          key: 'refraction',
          header: t('bench.crossing.refractionSugar'),
          align: 'end',
          cell: ({ refraction: gPerL }) => <Possible gPerL={gPerL} />,
        },
      ]}
    />
  )
}

/** At some strengths no sugar at all would show what was seen. */
const Possible = ({ gPerL }: { gPerL: number | undefined }) =>
  gPerL === undefined ? '–' : <Quantity value={gPerL} dimension="sugar" />
