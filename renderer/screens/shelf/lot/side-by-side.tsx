/** Two lots in numbers, one column each. */
import type { ReactNode } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { PhaseWord } from '../../../parts/ageing/phase-word.tsx'
import { useCostWords } from '../../../parts/cost/use-costs.ts'
import { Strength, Sugar } from '../../../parts/quantity/composition.tsx'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { Table } from '../../../parts/table/table.tsx'
import { useTimes } from '../../../parts/time/use-times.ts'
import type { ShelfPage } from '../../../../shared/schemas/shelf.ts'
import { useWindowWords } from '../use-window-words.ts'

interface Row {
  readonly name: string
  readonly of: (page: ShelfPage) => ReactNode
}

export function SideBySide({ pages }: { pages: readonly [ShelfPage, ShelfPage] }) {
  const t = useWords()
  const times = useTimes()
  const windowWords = useWindowWords()
  const costWords = useCostWords()
  const rows: Row[] = [
    {
      name: t('shelf.ageing.phaseNow'),
      of: ({ shelfLot: { window } }) => (
        <>
          <PhaseWord phase={window.phase} /> {windowWords.short(window)}
        </>
      ),
    },
    {
      name: t('shelf.ageing.bottled'),
      of: ({ shelfLot }) => times.day(shelfLot.lot.bottledAt),
    },
    {
      name: t('shelf.lots.columns.strength'),
      of: ({ shelfLot: { lot } }) => lot.liquid && <Strength pctVol={lot.liquid.strengthPctVol} />,
    },
    {
      name: t('shelf.lots.columns.sugar'),
      of: ({ shelfLot: { lot } }) => lot.liquid && <Sugar gPerL={lot.liquid.sugarGPerL} />,
    },
    {
      name: t('shelf.lot.acid'),
      of: ({ shelfLot: { lot } }) =>
        lot.liquid && <Quantity value={lot.liquid.acidGPerL} dimension="acid" />,
    },
    {
      name: t('shelf.lots.columns.cost'),
      of: ({ shelfLot: { costPerBottle }, cost }) =>
        costPerBottle !== undefined &&
        costWords({ minor: costPerBottle, isComplete: cost?.isComplete ?? true }),
    },
  ]
  return (
    <Table<Row>
      caption={t('shelf.lot.numbersCaption')}
      rows={rows}
      rowKey={({ name }) => name}
      columns={[
        {
          key: 'number',
          header: <span className="visually-hidden">{t('shelf.lot.number')}</span>,
          isRowHeader: true,
          cell: ({ name }) => name,
        },
        ...pages.map((page) => ({
          key: page.shelfLot.lot.id,
          header: page.shelfLot.lot.name,
          cell: ({ of }: Row) => of(page),
        })),
      ]}
    />
  )
}
