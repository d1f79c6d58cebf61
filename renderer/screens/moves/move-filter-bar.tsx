/** Which moves to show: of a batch, a vessel, a kind, a year, and by words. */
import type { MoveFilter } from '../../../shared/schemas/all-moves.ts'
import { moveKinds } from '../../../shared/schemas/moves.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { FilterChoice } from '../../parts/fields/filter-choice.tsx'
import { SearchBox } from '../../parts/fields/search-box.tsx'
import { Toggles } from '../../parts/fields/toggles.tsx'
import { useBatches, useJars } from '../../parts/names/use-names.ts'
import styles from './moves-screen.module.css'

export interface MoveFilterBarProps {
  filter: MoveFilter
  /** Absent while the list has not been read. */
  years: readonly number[] | undefined
  onChange: (filter: MoveFilter) => void
}

export function MoveFilterBar({ filter, years = [], onChange }: MoveFilterBarProps) {
  const t = useWords()
  const { locale } = useSettings()
  const batches = useBatches()
  const vessels = useJars()
  const change = (part: Unset<MoveFilter>) => onChange(given({ ...filter, ...part }))
  const byLabel = (a: { label: string }, b: { label: string }) =>
    a.label.localeCompare(b.label, locale)
  return (
    <search className={styles.bar} aria-label={t('moves.filter')}>
      <div className={styles.choices}>
        <FilterChoice
          label={t('moves.batch')}
          value={filter.batchId}
          onChange={(batchId) => change({ batchId })}
          choices={[...batches.values()].map(({ batch }) => ({
            value: batch.id,
            label: batch.name,
          }))}
        />
        <FilterChoice
          label={t('moves.vessel')}
          value={filter.jarId}
          onChange={(jarId) => change({ jarId })}
          choices={[...vessels.values()]
            .map(({ jar }) => ({ value: jar.id, label: jar.name }))
            .toSorted(byLabel)}
        />
        <FilterChoice
          label={t('moves.kind')}
          value={filter.kind}
          onChange={(kind) => change({ kind })}
          choices={moveKinds.map((kind) => ({ value: kind, label: t(`codes.move.${kind}`) }))}
        />
        <FilterChoice
          label={t('moves.year')}
          value={filter.year}
          onChange={(year) => change({ year })}
          choices={years.map((year) => ({ value: year, label: String(year) }))}
        />
      </div>
      <SearchBox
        label={t('moves.search')}
        value={filter.text ?? ''}
        onChange={(text) => change({ text: text === '' ? undefined : text.slice(0, 100) })}
      />
      <Toggles
        label={t('moves.struck')}
        value={filter.isStruck ? ['struck'] : []}
        onChange={(chosen) => change({ isStruck: chosen.length > 0 || undefined })}
        choices={[{ value: 'struck', label: t('moves.struck') }]}
      />
    </search>
  )
}

type Unset<T> = { [Key in keyof T]?: T[Key] | undefined }

/** Without the parts that are not set. */
const given = (filter: Unset<MoveFilter>): MoveFilter =>
  Object.fromEntries(Object.entries(filter).filter(([, value]) => value !== undefined))
