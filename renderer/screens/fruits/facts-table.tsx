/** Facts of one group, each with its range and where it comes from; a copy also tells the library's. */
import type { FruitPage } from '../../../shared/schemas/fruits.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Table, type Column } from '../../parts/table/table.tsx'
import { factsOf, type Fact, type FactGroup } from './facts.ts'
import styles from './facts-table.module.css'
import { SourceNote } from './source-note.tsx'
import { useFigureWords } from './use-figure-words.ts'

export function FactsTable({ page, group }: { page: FruitPage; group: FactGroup }) {
  const t = useWords()
  const words = useFigureWords()
  const inLibrary = new Map(
    (page.library ? factsOf(page.library, group) : []).map((fact) => [fact.name, fact]),
  )
  /** What the library says, where the copy says something else. */
  const differing = (fact: Fact, tell: (fact: Fact) => string) => {
    const told = inLibrary.get(fact.name)
    return told && tell(told) !== tell(fact) ? tell(told) : undefined
  }
  const cell = (fact: Fact, tell: (fact: Fact) => string, className: string | undefined) => {
    const library = differing(fact, tell)
    return (
      <span className={className}>
        {tell(fact)}
        {library && (
          <span className={styles.library}>{t('fruits.page.inLibrary', { value: library })}</span>
        )}
      </span>
    )
  }
  const columns: Column<Fact>[] = [
    {
      key: 'fact',
      header: t('fruits.page.columns.fact'),
      isRowHeader: true,
      cell: ({ name }) => <span className={styles.fact}>{t(`fruits.fact.${name}`)}</span>,
    },
    {
      key: 'value',
      header: t('fruits.page.columns.value'),
      cell: (fact) => cell(fact, ({ figure }) => words.figure(figure), styles.value),
    },
    {
      key: 'range',
      header: t('fruits.page.columns.range'),
      cell: (fact) => cell(fact, words.range, styles.range),
    },
    {
      key: 'source',
      header: t('fruits.page.columns.source'),
      cell: ({ source }) => <SourceNote code={source} meanings={page.sourceMeanings} />,
    },
  ]
  const facts = factsOf(page.fruit, group)
  const hasRanges = facts.some(({ range }) => range !== undefined)
  return (
    <Table
      caption={t(`fruits.factGroup.${group}`)}
      columns={columns.filter(({ key }) => key !== 'range' || hasRanges)}
      rows={facts}
      rowKey={({ name }) => name}
    />
  )
}
