/** A plain table: numbers aligned to the end, one header cell a row, a caption for those who listen. */
import { Fragment, type ReactNode } from 'react'
import { classes } from '../classes.ts'
import { ScrollBox } from './scroll-box.tsx'
import styles from './table.module.css'

export interface Column<Row> {
  key: string
  header: ReactNode
  /** `end` for numbers. */
  align?: 'start' | 'end'
  /** The cell that names its row. */
  isRowHeader?: boolean
  /** Left out in narrow windows. */
  isMinor?: boolean
  cell: (row: Row) => ReactNode
}

export interface TableProps<Row> {
  caption: string
  columns: readonly Column<Row>[]
  rows: readonly Row[]
  rowKey: (row: Row) => string
  /** True where a new group of rows begins: a stronger line is drawn above it. */
  startsGroup?: (row: Row) => boolean
  /** Above a row that begins a group, what the group is. */
  groupTitle?: (row: Row) => string | undefined
  /** A line under the rows, such as a sum; same columns. */
  foot?: Row
}

export function Table<Row>(props: TableProps<Row>) {
  const { caption, columns, rows, rowKey, startsGroup, groupTitle, foot } = props
  const cellClass = (column: Column<Row>) =>
    classes(column.align === 'end' && styles.end, column.isMinor && styles.minor)
  const cells = (row: Row) =>
    columns.map((column) =>
      column.isRowHeader ? (
        <th key={column.key} scope="row" className={cellClass(column)}>
          {column.cell(row)}
        </th>
      ) : (
        <td key={column.key} className={cellClass(column)}>
          {column.cell(row)}
        </td>
      ),
    )
  return (
    <ScrollBox label={caption} className={styles.frame}>
      <table className={styles.table}>
        <caption className="visually-hidden">{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.key} scope="col" className={cellClass(column)}>
                {column.header}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => {
            const title = groupTitle?.(row)
            return (
              <Fragment key={rowKey(row)}>
                {title !== undefined && (
                  <tr className={styles.title}>
                    <th scope="rowgroup" colSpan={columns.length}>
                      {title}
                    </th>
                  </tr>
                )}
                <tr className={classes(startsGroup?.(row) && styles.group)}>{cells(row)}</tr>
              </Fragment>
            )
          })}
        </tbody>
        {foot !== undefined && (
          <tfoot>
            <tr>{cells(foot)}</tr>
          </tfoot>
        )}
      </table>
    </ScrollBox>
  )
}
