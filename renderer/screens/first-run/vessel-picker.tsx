/** The usual vessels on one shelf, drawn to one scale, each with how many there are of it. */
import { Button as AriaButton, Group, Input, NumberField } from 'react-aria-components'
import { useWords } from '../../app/words/use-words.ts'
import { classes } from '../../parts/classes.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { Vessel } from '../../parts/vessel/vessel.tsx'
import type { UsualVessel, VesselCounts } from './usual-vessels.ts'
import styles from './vessel-picker.module.css'

export interface VesselPickerProps {
  vessels: readonly UsualVessel[]
  counts: VesselCounts
  onChange: (counts: VesselCounts) => void
}

/** No more than a first shelf holds; others are added in the cellar room. */
const mostOfEach = 5

export function VesselPicker({ vessels, counts, onChange }: VesselPickerProps) {
  const t = useWords()
  const quantities = useQuantities()
  return (
    <ul className={styles.shelf} aria-label={t('firstRun.own.vessels')}>
      {vessels.map(({ key, shape, capacityMl }) => {
        const count = counts[key] ?? 0
        const kind = t(`codes.shape.${shape}`)
        const capacity = quantities.size(capacityMl, 'volume').text
        const set = (next: number) => onChange({ ...counts, [key]: next })
        return (
          <li key={key} className={classes(styles.vessel, count > 0 && styles.chosen)}>
            <button
              type="button"
              className={styles.drawing}
              tabIndex={-1}
              aria-hidden
              onClick={() => set(Math.min(mostOfEach, count + 1))}
            >
              <Vessel shape={shape} capacityMl={capacityMl} mmPerPixel={3.4} isDecorative />
            </button>
            <span className={styles.name}>
              {kind}
              <span className={styles.capacity}>{capacity}</span>
            </span>
            <NumberField
              aria-label={t('firstRun.own.count', { kind, capacity })}
              value={count}
              minValue={0}
              maxValue={mostOfEach}
              onChange={(next) => set(Number.isNaN(next) ? 0 : next)}
            >
              <Group className={classes(styles.stepper)}>
                <AriaButton
                  slot="decrement"
                  aria-label={t('firstRun.fewer')}
                  className={classes(styles.step)}
                >
                  −
                </AriaButton>
                <Input className={classes(styles.count)} />
                <AriaButton
                  slot="increment"
                  aria-label={t('firstRun.more')}
                  className={classes(styles.step)}
                >
                  +
                </AriaButton>
              </Group>
            </NumberField>
          </li>
        )
      })}
    </ul>
  )
}
