/** What must not be passed. */
import { Check } from '../../../parts/fields/check.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { QuantityField } from '../../../parts/quantity/quantity-field.tsx'
import type { SeasonLimits } from '../../../../shared/schemas/season.ts'
import styles from './wishes.module.css'

export interface LimitsFormProps {
  limits: SeasonLimits
  onChange: (limits: SeasonLimits) => void
}

export function LimitsForm({ limits, onChange }: LimitsFormProps) {
  const t = useWords()
  return (
    <>
      <p className={styles.quiet}>{t('season.wishes.limitsHint')}</p>
      <div className={styles.fields}>
        <QuantityField
          label={t('season.wishes.money')}
          dimension="money"
          value={limits.moneyMinor}
          range={{ min: 0, max: 1_000_000_000 }}
          onChange={(moneyMinor) => onChange({ ...limits, moneyMinor })}
        />
        <QuantityField
          label={t('season.wishes.shelf')}
          dimension="count"
          value={limits.shelfBottles}
          range={{ min: 0, max: 100_000 }}
          onChange={(shelfBottles) => onChange({ ...limits, shelfBottles })}
        />
      </div>
      <div>
        <Check
          isSelected={limits.isSpiritAtHandOnly}
          onChange={(isSpiritAtHandOnly) => onChange({ ...limits, isSpiritAtHandOnly })}
        >
          {t('season.wishes.spiritAtHand')}
        </Check>
      </div>
    </>
  )
}
