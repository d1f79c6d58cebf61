/** A row a lot: what is booked, what is there, the difference, and what is wrong with it. */
import { Link } from 'wouter'
import { useWords } from '../../../app/words/use-words.ts'
import { Button } from '../../../parts/button/button.tsx'
import { useRefusalWords } from '../../../parts/failure/refusal-words.ts'
import { problemWords } from '../../../parts/quantity/problem-words.ts'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { Table } from '../../../parts/table/table.tsx'
import type { Refusal } from '../../../../shared/schemas/errors.ts'
import { differenceOf, type StocktakeRow } from './stocktake.ts'
import type { WrittenCounts } from './use-counts.ts'
import styles from './stocktake.module.css'

interface StocktakeTableProps {
  rows: readonly StocktakeRow[]
  written: WrittenCounts
  /** What the book says to a count, by lot. */
  refused: ReadonlyMap<string, Refusal>
  onTakeOut: (lotId: string) => void
}

export function StocktakeTable({ rows, written, refused, onTakeOut }: StocktakeTableProps) {
  const t = useWords()
  const quantities = useQuantities()
  const refusalWords = useRefusalWords()
  const problemOf = (lotId: string) => {
    const problem = written.problems.get(lotId)
    if (problem) return problemWords(problem, 'count', quantities, t)
    const refusal = refused.get(lotId)
    return refusal && refusalWords(refusal)
  }
  return (
    <Table<StocktakeRow>
      caption={t('shelf.stocktake.list')}
      rows={rows}
      rowKey={({ lot }) => lot.id}
      columns={[
        {
          key: 'lot',
          header: t('shelf.stocktake.lot'),
          isRowHeader: true,
          cell: ({ lot, elsewhere, isAdded }) => (
            <>
              <Link href={`/shelf/${encodeURIComponent(lot.id)}`} className={styles.name}>
                {lot.name}
              </Link>
              <br />
              <span className={styles.small}>
                {t(elsewhere > 0 ? 'shelf.stocktake.elsewhere' : 'shelf.stocktake.filled', {
                  filled: lot.filledCount,
                  elsewhere,
                })}{' '}
                {isAdded && (
                  <Button
                    kind="quiet"
                    aria-label={t('shelf.stocktake.takeOutOf', { name: lot.name })}
                    onPress={() => onTakeOut(lot.id)}
                  >
                    {t('shelf.stocktake.takeOut')}
                  </Button>
                )}
              </span>
            </>
          ),
        },
        {
          key: 'size',
          header: t('shelf.stocktake.size'),
          align: 'end',
          cell: ({ lot }) => <Quantity value={lot.bottleSizeMl} dimension="volume" isSize />,
        },
        {
          key: 'booked',
          header: t('shelf.stocktake.booked'),
          align: 'end',
          cell: ({ booked }) => booked,
        },
        {
          key: 'there',
          header: t('shelf.stocktake.there'),
          align: 'end',
          cell: ({ lot }) => (
            <CountField
              lotId={lot.id}
              label={t('shelf.stocktake.thereOf', { name: lot.name })}
              text={written.texts.get(lot.id) ?? ''}
              onChange={(text) => written.write({ [lot.id]: text })}
              isWrong={problemOf(lot.id) !== undefined}
            />
          ),
        },
        {
          key: 'difference',
          header: t('shelf.stocktake.difference'),
          cell: (row) => (
            <div className={styles.difference} id={`difference-${row.lot.id}`} aria-live="polite">
              <Difference difference={differenceOf(row, written.counts)} />
              {problemOf(row.lot.id) && (
                <span className={styles.problem}>{problemOf(row.lot.id)}</span>
              )}
            </div>
          ),
        },
      ]}
    />
  )
}

function Difference({ difference }: { difference: number | undefined }) {
  const t = useWords()
  if (difference === undefined) return null
  if (difference === 0) return <span className={styles.quiet}>{t('shelf.stocktake.same')}</span>
  return (
    <strong>
      {difference > 0
        ? t('shelf.stocktake.more', { count: difference })
        : t('shelf.stocktake.less', { count: -difference })}
    </strong>
  )
}

interface CountFieldProps {
  lotId: string
  label: string
  text: string
  onChange: (text: string) => void
  isWrong: boolean
}

const CountField = ({ lotId, label, text, onChange, isWrong }: CountFieldProps) => (
  <input
    className={styles.count}
    data-count="true"
    type="text"
    inputMode="numeric"
    autoComplete="off"
    aria-label={label}
    aria-describedby={`difference-${lotId}`}
    aria-invalid={isWrong || undefined}
    value={text}
    onChange={(event) => onChange(event.target.value)}
  />
)
