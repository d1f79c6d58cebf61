/** Where the maker's fruit grows, and how far own knowledge shifts it; kept as it is changed. */
import { useState } from 'react'
import { useWrite } from '../../../app/queries.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { NumberField } from '../../../parts/quantity/number-field.tsx'
import { Region } from '../../../../shared/schemas/season.ts'
import styles from './fruit-view.module.css'

const mostWeeks = 12

export function RegionForm({ region }: { region: Region }) {
  const t = useWords()
  const keep = useWrite('season.changeRegion')
  const [chosen, setChosen] = useState(region)
  const [seen, setSeen] = useState(region)
  if (region !== seen) {
    setSeen(region)
    if (!keep.isPending) setChosen(region)
  }

  function change(changed: Partial<Region>) {
    const next = { ...chosen, ...changed }
    setChosen(next)
    keep.mutate(next)
  }

  return (
    <section className={styles.region} aria-label={t('season.fruit.region')}>
      <Segments
        label={t('season.fruit.zone')}
        value={chosen.zone}
        onChange={(zone) => change({ zone })}
        choices={Region.shape.zone.options.map((value) => ({
          value,
          label: t(`season.zone.${value}`),
        }))}
      />
      <NumberField
        label={t('season.fruit.shift')}
        unit={t('season.fruit.weeks')}
        value={chosen.ownShiftWeeks}
        problemOf={(weeks) =>
          Math.abs(weeks) > mostWeeks
            ? t('season.fruit.outside', { min: -mostWeeks, max: mostWeeks })
            : undefined
        }
        onChange={(ownShiftWeeks) => {
          if (ownShiftWeeks !== undefined) change({ ownShiftWeeks })
        }}
      />
      <FailureNote error={keep.error} />
    </section>
  )
}
