/** The list of fruits: name, season, kind, how it steeps, whose facts they are. */
import { Link } from 'wouter'
import { useWords } from '../../app/words/use-words.ts'
import { Table, type Column } from '../../parts/table/table.tsx'
import styles from './fruit-table.module.css'
import type { ListedFruit } from './list-of-fruits.ts'
import { OriginBadge } from './origin-badge.tsx'
import { SeasonStrip } from './season-strip.tsx'
import { useSeasonWords } from './use-season-words.ts'

export interface FruitTableProps {
  fruits: readonly ListedFruit[]
  month: number
}

export function FruitTable({ fruits, month }: FruitTableProps) {
  const t = useWords()
  const seasonWords = useSeasonWords()
  const columns: Column<ListedFruit>[] = [
    {
      key: 'name',
      header: t('fruits.columns.name'),
      isRowHeader: true,
      cell: ({ fruit, name }) => (
        <span className={styles.name}>
          <Link href={`/fruits/${encodeURIComponent(fruit.id)}`}>{name}</Link>
          <span className={styles.latin} lang="la">
            {fruit.latin}
          </span>
        </span>
      ),
    },
    {
      key: 'season',
      header: t('fruits.columns.season'),
      cell: ({ fruit }) => (
        <>
          <SeasonStrip season={fruit.season} month={month} />
          <span className="visually-hidden">{seasonWords(fruit.season)}</span>
        </>
      ),
    },
    {
      key: 'kind',
      header: t('fruits.columns.kind'),
      isMinor: true,
      cell: ({ kind }) => kind,
    },
    {
      key: 'kineticClass',
      header: t('fruits.columns.kineticClass'),
      cell: ({ fruit }) => t(`fruits.kineticClass.${fruit.kineticClass}`),
    },
    {
      key: 'origin',
      header: t('fruits.columns.origin'),
      cell: ({ origin }) => <OriginBadge origin={origin} />,
    },
  ]
  return (
    <Table
      caption={t('fruits.list')}
      columns={columns}
      rows={fruits}
      rowKey={({ fruit }) => fruit.id}
    />
  )
}
