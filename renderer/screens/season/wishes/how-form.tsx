/** How it is laid down: the reserve, the spirit that is bought, the bottle, the jar's rest. */
import { useWords } from '../../../app/words/use-words.ts'
import { NumberField } from '../../../parts/quantity/number-field.tsx'
import { SteadyQuantityField } from '../../../parts/quantity/steady-quantity-field.tsx'
import type { SeasonWishes } from '../../../../shared/schemas/season.ts'
import styles from './wishes.module.css'

export interface HowFormProps {
  wishes: SeasonWishes
  onChange: (changed: Partial<SeasonWishes>) => void
}

const mostReserveMonths = 60
const mostCleaningWeeks = 4

export function HowForm({ wishes, onChange }: HowFormProps) {
  const t = useWords()
  const outside = (max: number) => t('season.wishes.outside', { min: 0, max })
  return (
    <div className={styles.fields}>
      <NumberField
        label={t('season.wishes.reserve')}
        unit={t('season.wishes.months')}
        value={wishes.reserveMonths}
        problemOf={(months) =>
          months < 0 || months > mostReserveMonths ? outside(mostReserveMonths) : undefined
        }
        onChange={(reserveMonths) => {
          if (reserveMonths !== undefined) onChange({ reserveMonths })
        }}
      />
      <NumberField
        label={t('season.wishes.cleaning')}
        unit={t('season.wishes.weeks')}
        value={wishes.cleaningWeeks}
        problemOf={(weeks) =>
          !Number.isInteger(weeks) || weeks < 0 || weeks > mostCleaningWeeks
            ? outside(mostCleaningWeeks)
            : undefined
        }
        onChange={(cleaningWeeks) => {
          if (cleaningWeeks !== undefined) onChange({ cleaningWeeks })
        }}
      />
      <SteadyQuantityField
        label={t('season.wishes.spirit')}
        dimension="strength"
        value={wishes.spiritPctVol}
        range={{ min: 20, max: 97.2 }}
        onChange={(spiritPctVol) => onChange({ spiritPctVol })}
      />
      <SteadyQuantityField
        label={t('season.wishes.bottle')}
        dimension="volume"
        value={wishes.bottleSizeMl}
        range={{ min: 10, max: 20_000 }}
        onChange={(bottleSizeMl) => onChange({ bottleSizeMl })}
      />
    </div>
  )
}
