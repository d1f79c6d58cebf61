/** Names that the law knows, and what this strength and sugar would lack for each. */
import { useWords } from '../../app/words/use-words.ts'
import type { CategoryVerdict } from '../../../shared/schemas/bench.ts'
import { Table } from '../../parts/table/table.tsx'
import { Fold } from './fold.tsx'
import { useMeasuredText } from './use-measured-text.ts'

export function CategoryTable({ categories }: { categories: readonly CategoryVerdict[] }) {
  const t = useWords()
  const { text } = useMeasuredText()
  const lacks = (verdict: CategoryVerdict) => {
    const { isMet, missingPctVol, missingInvertGPerL, excessInvertGPerL } = verdict
    if (isMet) return t('bench.categories.isMet')
    return [
      missingPctVol > 0 &&
        t('bench.categories.missingStrength', { amount: text(missingPctVol, 'strength') }),
      missingInvertGPerL > 0 &&
        t('bench.categories.missingSugar', { amount: text(missingInvertGPerL, 'sugar') }),
      excessInvertGPerL > 0 &&
        t('bench.categories.excessSugar', { amount: text(excessInvertGPerL, 'sugar') }),
    ]
      .filter(Boolean)
      .join(', ')
  }
  return (
    <Fold title={t('bench.categories.title')}>
      <Table<CategoryVerdict>
        caption={t('bench.categories.caption')}
        rows={categories}
        rowKey={({ category }) => category}
        columns={[
          {
            key: 'name',
            header: t('bench.categories.name'),
            isRowHeader: true,
            cell: ({ category }) => t(`bench.category.${category}`),
          },
          { key: 'verdict', header: t('bench.categories.verdict'), cell: lacks },
          {
            key: 'standing',
            header: t('bench.categories.standing'),
            isMinor: true,
            cell: ({ standing }) => t(`bench.standing.${standing}`),
          },
        ]}
      />
    </Fold>
  )
}
