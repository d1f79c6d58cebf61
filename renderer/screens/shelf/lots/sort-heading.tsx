/** A column's heading: pressed, it sorts by the column, and again, the other way round. */
import { useWords } from '../../../app/words/use-words.ts'
import { classes } from '../../../parts/classes.ts'
import { sortColumns, type LotColumn, type Order } from './list-of-lots.ts'
import { endColumns, minorColumns } from './lot-columns.ts'
import styles from './lot-table.module.css'

interface SortHeadingProps {
  column: LotColumn
  order: Order
  onOrder: (order: Order) => void
}

export function SortHeading({ column, order, onOrder }: SortHeadingProps) {
  const t = useWords()
  const by = sortColumns.find((one) => one === column)
  const isChosen = order.by === column
  const className = classes(
    styles[column],
    endColumns.has(column) && styles.end,
    minorColumns.has(column) && styles.minor,
  )
  if (!by)
    return (
      <th scope="col" className={className}>
        {t(`shelf.lots.columns.${column}`)}
      </th>
    )
  return (
    <th
      scope="col"
      className={className}
      aria-sort={isChosen ? (order.isDescending ? 'descending' : 'ascending') : 'none'}
    >
      <button
        type="button"
        className={styles.heading}
        onClick={() => onOrder({ by, isDescending: isChosen && !order.isDescending })}
      >
        {t(`shelf.lots.columns.${column}`)}
        <span aria-hidden className={styles.arrow}>
          {isChosen ? (order.isDescending ? '↓' : '↑') : ''}
        </span>
      </button>
    </th>
  )
}
