/** The list of batches as a table: arrows walk it, Enter opens, headings sort. */
import {
  Cell,
  Checkbox,
  Column,
  Row,
  Table,
  TableBody,
  TableHeader,
  type Selection,
} from 'react-aria-components'
import { useWords } from '../../app/words/use-words.ts'
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'
import { classes } from '../../parts/classes.ts'
import { BatchName } from '../../parts/names/batch-name.tsx'
import { Quantity } from '../../parts/quantity/quantity.tsx'
import { Strength, Sugar } from '../../parts/quantity/composition.tsx'
import { useTimes } from '../../parts/time/use-times.ts'
import { BatchVessels } from '../../parts/vessel/batch-vessels.tsx'
import { BatchFruits, BatchPlaces } from './batch-places.tsx'
import { sortKeys, type Order } from './list-of-batches.ts'
import { NextCell } from './next-cell.tsx'
import styles from './batch-table.module.css'

export interface BatchTableProps {
  batches: readonly BatchSummary[]
  order: Order
  onOrder: (order: Order) => void
  /** Chosen to be compared; absent while rows open their batch. */
  picked?: ReadonlySet<string> | undefined
  onPick: (ids: Set<string>) => void
}

export function BatchTable({ batches, order, onOrder, picked, onPick }: BatchTableProps) {
  const t = useWords()
  const sortable = (id: (typeof sortKeys)[number], className?: string) => (
    <Column id={id} allowsSorting isRowHeader={id === 'name'} className={classes(className)}>
      {({ sortDirection }) => (
        <span className={styles.heading}>
          {t(`batches.columns.${id}`)}
          <span aria-hidden className={styles.arrow}>
            {sortDirection === undefined ? '' : sortDirection === 'ascending' ? '↑' : '↓'}
          </span>
        </span>
      )}
    </Column>
  )
  return (
    <Table
      aria-label={t(picked ? 'compare.picking' : 'batches.list')}
      className={classes(styles.table)}
      {...(picked && {
        selectionMode: 'multiple' as const,
        selectedKeys: picked,
        onSelectionChange: (keys: Selection) =>
          onPick(
            new Set(keys === 'all' ? batches.map(({ batch }) => batch.id) : [...keys].map(String)),
          ),
      })}
      sortDescriptor={{
        column: order.by,
        direction: order.isDescending ? 'descending' : 'ascending',
      }}
      onSortChange={({ column, direction }) => {
        const by = sortKeys.find((key) => key === column)
        if (by) onOrder({ by, isDescending: direction === 'descending' })
      }}
    >
      <TableHeader>
        {picked && (
          <Column id="pick" className={classes(styles.pick)}>
            <span className="visually-hidden">{t('compare.chosen')}</span>
          </Column>
        )}
        <Column id="vessels" className={classes(styles.vessels)}>
          {t('batches.columns.vessels')}
        </Column>
        {sortable('name')}
        {sortable('stage')}
        {sortable('age', styles.minor)}
        {sortable('volume', styles.end)}
        {sortable('strength', styles.end)}
        {sortable('sugar', styles.end)}
        {sortable('next')}
        <Column id="jars" className={classes(styles.minor)}>
          {t('batches.columns.jars')}
        </Column>
      </TableHeader>
      <TableBody items={batches.map((summary) => ({ id: summary.batch.id, summary }))}>
        {({ id, summary }) => (
          <Row
            id={id}
            {...(!picked && { href: `/batches/${encodeURIComponent(id)}` })}
            textValue={summary.batch.name}
            className={classes(styles.row)}
          >
            {picked && (
              <Cell className={classes(styles.pick)}>
                <Checkbox slot="selection" className={classes(styles.checkbox)}>
                  <span className={styles.box} aria-hidden />
                </Checkbox>
              </Cell>
            )}
            <Cell className={classes(styles.vessels)}>
              <BatchVessels summary={summary} most={3} />
            </Cell>
            <Cell className={classes(styles.name)}>
              <BatchName batch={summary.batch} />
              <BatchFruits summary={summary} />
            </Cell>
            <Cell className={classes(styles.word)}>{t(`codes.stage.${summary.stage}`)}</Cell>
            <Cell className={classes(styles.minor, styles.word)}>
              <Age startedAt={summary.startedAt} />
            </Cell>
            <Cell className={classes(styles.end)}>
              {summary.liquid && <Quantity value={summary.liquid.volumeMl} dimension="volume" />}
            </Cell>
            <Cell className={classes(styles.end)}>
              {summary.liquid && <Strength pctVol={summary.liquid.strengthPctVol} />}
            </Cell>
            <Cell className={classes(styles.end)}>
              {summary.liquid && <Sugar gPerL={summary.liquid.sugarGPerL} />}
            </Cell>
            <Cell>
              <NextCell next={summary.next} />
            </Cell>
            <Cell className={classes(styles.minor, styles.places)}>
              <BatchPlaces summary={summary} />
            </Cell>
          </Row>
        )}
      </TableBody>
    </Table>
  )
}

function Age({ startedAt }: { startedAt: string | undefined }) {
  const times = useTimes()
  return startedAt === undefined ? null : times.since(startedAt)
}
