/** What to pour, in the order of pouring: measured and weighed, with what it costs. */
import { useWords } from '../../../app/words/use-words.ts'
import type { BlendAmount, Cost } from '../../../../shared/schemas/marrying.ts'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { Table } from '../../../parts/table/table.tsx'
import { useAmounts } from '../use-amounts.ts'
import type { Places } from '../use-places.ts'
import styles from './result.module.css'

export interface AmountTableProps {
  amounts: readonly BlendAmount[]
  cost: Cost
  places: Places
}

interface Line {
  readonly place: string
  readonly name: string
  readonly amount: BlendAmount | undefined
  readonly cost: Cost
}

export function AmountTable({ amounts, cost, places }: AmountTableProps) {
  const t = useWords()
  const { text } = useQuantities()
  const words = useAmounts()
  const lines: Line[] = amounts.map((amount) => ({
    place: amount.place,
    name: places.byPlace.get(amount.place)?.name ?? amount.place,
    amount,
    cost: amount.cost,
  }))
  return (
    <>
      <Table<Line>
        caption={t('marry.amounts.caption')}
        rows={lines}
        rowKey={({ place }) => place}
        columns={[
          {
            key: 'part',
            header: t('marry.amounts.part'),
            isRowHeader: true,
            cell: ({ name }) => name,
          },
          {
            key: 'measure',
            header: t('marry.amounts.measure'),
            align: 'end',
            cell: ({ amount }) =>
              amount && (
                <>
                  {words.amount(amount.amount, amount.unit)}
                  {amount.isUsedUp && (
                    <span className={styles.small}> {t('marry.amounts.usedUp')}</span>
                  )}
                </>
              ),
          },
          {
            key: 'weigh',
            header: t('marry.amounts.weigh'),
            align: 'end',
            cell: ({ amount }) => amount && text(amount.massG, 'mass'),
          },
          {
            key: 'cost',
            header: t('marry.amounts.cost'),
            align: 'end',
            isMinor: true,
            cell: ({ cost: own }) => words.cost(own),
          },
        ]}
        foot={{ place: 'sum', name: t('marry.amounts.sum'), amount: undefined, cost }}
      />
      <p className={styles.small}>{t('marry.amounts.order')}</p>
    </>
  )
}
