/** Which of the batches to show: by stage, with how many there are of each, and by words. */
import { useWords } from '../../app/words/use-words.ts'
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'
import { SearchBox } from '../../parts/fields/search-box.tsx'
import { Segments } from '../../parts/fields/segments.tsx'
import { stageGroupOf, stageGroups, type StageGroup } from './stage-groups.ts'
import styles from './batch-filter.module.css'

export interface BatchFilterProps {
  all: readonly BatchSummary[]
  group: StageGroup | 'all'
  onGroup: (group: StageGroup | 'all') => void
  search: string
  onSearch: (search: string) => void
  shown: number
}

export function BatchFilter({ all, group, onGroup, search, onSearch, shown }: BatchFilterProps) {
  const t = useWords()
  const countOf = (wanted: StageGroup) =>
    all.filter(({ stage }) => stageGroupOf(stage) === wanted).length
  const choices = [
    { value: 'all' as const, label: t('batches.group.all') },
    ...stageGroups
      .filter((wanted) => countOf(wanted) > 0 || wanted === group)
      .map((value) => ({ value, label: `${t(`batches.group.${value}`)} ${countOf(value)}` })),
  ]
  return (
    <div className={styles.row}>
      <Segments
        label={t('batches.filter')}
        isLabelHidden
        value={group}
        onChange={onGroup}
        choices={choices}
      />
      <SearchBox label={t('batches.search')} value={search} onChange={onSearch} />
      <output className="visually-hidden">{t('batches.shown', { shown, all: all.length })}</output>
    </div>
  )
}
