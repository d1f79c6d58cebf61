/** Which of the fruits to show: all, those in season, the maker's own; and by words. */
import { useWords } from '../../app/words/use-words.ts'
import { SearchBox } from '../../parts/fields/search-box.tsx'
import { Segments } from '../../parts/fields/segments.tsx'
import styles from './fruit-filter.module.css'
import { fruitGroups, isInGroup, type FruitGroup, type ListedFruit } from './list-of-fruits.ts'

export interface FruitFilterProps {
  all: readonly ListedFruit[]
  month: number
  group: FruitGroup
  onGroup: (group: FruitGroup) => void
  search: string
  onSearch: (search: string) => void
  shown: number
}

export function FruitFilter(props: FruitFilterProps) {
  const { all, month, group, onGroup, search, onSearch, shown } = props
  const t = useWords()
  const choices = fruitGroups.map((value) => ({
    value,
    label: `${t(`fruits.group.${value}`)} ${all.filter((one) => isInGroup(one, value, month)).length}`,
  }))
  return (
    <div className={styles.row}>
      <Segments
        label={t('fruits.filter')}
        isLabelHidden
        value={group}
        onChange={onGroup}
        choices={choices}
      />
      <SearchBox label={t('fruits.search')} value={search} onChange={onSearch} />
      <output className="visually-hidden">{t('fruits.shown', { shown, all: all.length })}</output>
    </div>
  )
}
