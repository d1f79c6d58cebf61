/** Which lots to show: by phase, kind, vintage, size and place, and by words. */
import { useWords } from '../../../app/words/use-words.ts'
import { useSettings } from '../../../app/settings.tsx'
import { SearchBox } from '../../../parts/fields/search-box.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { Toggles } from '../../../parts/fields/toggles.tsx'
import { useShelfName } from '../../../parts/names/use-names.ts'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { FilterChoice } from '../../../parts/fields/filter-choice.tsx'
import { choicesOf, type ListedLot, type LotFilter } from './list-of-lots.ts'
import styles from './lot-filter.module.css'

export interface LotFilterProps {
  all: readonly ListedLot[]
  filter: LotFilter
  onChange: (filter: LotFilter) => void
  withGone: boolean
  onWithGone: (withGone: boolean) => void
}

export function LotFilterBar({ all, filter, onChange, withGone, onWithGone }: LotFilterProps) {
  const t = useWords()
  const { locale } = useSettings()
  const { size } = useQuantities()
  const shelfName = useShelfName()
  const { kinds, vintages, sizesMl, shelfIds, phases } = choicesOf(all)
  const change = (part: Partial<LotFilter>) => onChange({ ...filter, ...part })
  return (
    <search className={styles.bar} aria-label={t('shelf.lots.search')}>
      <div className={styles.row}>
        <Segments
          label={t('shelf.lots.filter.phase')}
          isLabelHidden
          value={filter.phase ?? 'all'}
          onChange={(phase) => change({ phase: phase === 'all' ? undefined : phase })}
          choices={[
            { value: 'all' as const, label: t('shelf.lots.everyPhase') },
            ...phases.map(({ phase, count }) => ({
              value: phase,
              label: t(`shelf.answer.phases.${phase}`, { count }),
            })),
          ]}
        />
        <SearchBox
          label={t('shelf.lots.search')}
          value={filter.search}
          onChange={(search) => change({ search })}
        />
      </div>
      <div className={styles.row}>
        <div className={styles.choices}>
          <FilterChoice
            label={t('shelf.lots.filter.kind')}
            value={filter.kindId}
            onChange={(kindId) => change({ kindId })}
            choices={kinds
              .map(({ id, name }) => ({ value: id, label: name }))
              .toSorted((a, b) => a.label.localeCompare(b.label, locale))}
          />
          <FilterChoice
            label={t('shelf.lots.filter.vintage')}
            value={filter.vintage}
            onChange={(vintage) => change({ vintage })}
            choices={vintages.map((value) => ({ value, label: String(value) }))}
          />
          <FilterChoice
            label={t('shelf.lots.filter.size')}
            value={filter.sizeMl}
            onChange={(sizeMl) => change({ sizeMl })}
            choices={sizesMl.map((value) => ({ value, label: size(value, 'volume').text }))}
          />
          <FilterChoice
            label={t('shelf.lots.filter.place')}
            value={filter.shelfId}
            onChange={(shelfId) => change({ shelfId })}
            choices={shelfIds.map((value) => ({ value, label: shelfName(value) }))}
          />
        </div>
        <Toggles
          label={t('shelf.lots.withGone')}
          value={withGone ? ['gone'] : []}
          onChange={(chosen) => onWithGone(chosen.length > 0)}
          choices={[{ value: 'gone', label: t('shelf.lots.withGone') }]}
        />
      </div>
    </search>
  )
}
