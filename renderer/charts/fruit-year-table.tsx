/** The fruit year as a table. */
import { useWords } from '../app/words/use-words.ts'
import { Quantity } from '../parts/quantity/quantity.tsx'
import { Table } from '../parts/table/table.tsx'
import type { FruitSeason } from '../../shared/schemas/season.ts'
import { useFruitYearWords } from './use-fruit-year-words.ts'

export interface FruitYearTableProps {
  fruits: readonly FruitSeason[]
  fruitName: (fruitId: string) => string
}

export function FruitYearTable({ fruits, fruitName }: FruitYearTableProps) {
  const t = useWords()
  const words = useFruitYearWords()
  return (
    <Table<FruitSeason>
      caption={t('season.fruit.caption')}
      rows={fruits}
      rowKey={({ fruitId }) => fruitId}
      startsGroup={(fruit) => fruit === fruits.find(({ isOwnKind }) => !isOwnKind)}
      columns={[
        {
          key: 'fruit',
          header: t('season.fruit.fruit'),
          isRowHeader: true,
          cell: ({ fruitId }) => fruitName(fruitId),
        },
        { key: 'season', header: t('season.fruit.inSeason'), cell: (row) => words.inSeason(row) },
        { key: 'best', header: t('season.fruit.best'), cell: (row) => words.best(row) },
        { key: 'dates', header: t('season.fruit.dates'), cell: (row) => words.dates(row) },
        {
          key: 'pantry',
          header: t('season.fruit.inPantry'),
          align: 'end',
          cell: ({ pantryG }) => pantryG > 0 && <Quantity value={pantryG} dimension="mass" />,
        },
      ]}
    />
  )
}
