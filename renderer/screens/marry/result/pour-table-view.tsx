/** What goes into each bottle, in whole ml and grams; printed alone when it is printed. */
import { useWords } from '../../../app/words/use-words.ts'
import type { PourTable } from '../../../../shared/schemas/marrying.ts'
import { Button } from '../../../parts/button/button.tsx'
import { Section } from '../../../parts/page/page.tsx'
import { Strength, Sugar } from '../../../parts/quantity/composition.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { Table, type Column } from '../../../parts/table/table.tsx'
import type { Places } from '../use-places.ts'
import styles from './pour-table.module.css'

interface Line {
  readonly key: string
  readonly name: string
  readonly amounts: readonly number[]
  readonly made?: PourTable['rows'][number]
}

export function PourTableView({ table, places }: { table: PourTable; places: Places }) {
  const t = useWords()
  const { size, text } = useQuantities()
  const lines: Line[] = table.rows.map((row) => ({
    key: `${row.sizeMl}`,
    name: t('marry.pour.each', { count: row.count, size: size(row.sizeMl, 'volume').text }),
    amounts: row.amounts,
    made: row,
  }))
  const dimensionOf = (index: number) => (table.columns[index]?.unit === 'g' ? 'mass' : 'volume')
  const columns: Column<Line>[] = [
    { key: 'bottle', header: t('marry.pour.bottle'), isRowHeader: true, cell: ({ name }) => name },
    ...table.columns.map((column, index): Column<Line> => ({
      key: column.place,
      header: places.byPlace.get(column.place)?.name ?? column.place,
      align: 'end',
      cell: ({ amounts }) => text(amounts[index] ?? 0, dimensionOf(index)),
    })),
    {
      key: 'makes',
      header: t('marry.pour.makes'),
      align: 'end',
      cell: ({ made }) =>
        made && (
          <span className={styles.made}>
            {text(made.filledMl, 'volume')} <Strength pctVol={made.strengthPctVol} />{' '}
            <Sugar gPerL={made.sugarGPerL} />
          </span>
        ),
    },
  ]
  const total: Line = {
    key: 'total',
    name: t('marry.pour.total'),
    amounts: table.columns.map(({ total: needed }) => needed),
  }
  return (
    <div className={styles.sheet}>
      <Section
        title={t('marry.pour.title')}
        actions={
          <Button kind="quiet" onPress={() => window.print()}>
            {t('marry.pour.print')}
          </Button>
        }
      >
        <Table<Line>
          caption={t('marry.pour.caption')}
          columns={columns}
          rows={[...lines, total]}
          rowKey={({ key }) => key}
          startsGroup={({ key }) => key === 'total'}
          foot={{
            key: 'remainder',
            name: t('marry.pour.remainder'),
            amounts: table.columns.map(({ remainder }) => Math.max(remainder, 0)),
          }}
        />
        <p className={styles.hint}>{t('marry.pour.hint')}</p>
      </Section>
    </div>
  )
}
