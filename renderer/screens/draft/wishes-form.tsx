/** What is wanted of the liqueur; the amounts follow. */
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { AmountField } from './amount-field.tsx'
import type { DraftWishes } from '../../../shared/schemas/drafts.ts'
import type { Change } from './draft-state.ts'
import styles from './wishes-form.module.css'

export interface WishesFormProps {
  wishes: DraftWishes
  onChange: Change
  /** To begin with, when an acidity is asked for. */
  acidNow: number | undefined
}

export function WishesForm({ wishes, onChange, acidNow }: WishesFormProps) {
  const t = useWords()
  const wish = (change: DraftWishes) => onChange({ wishes: { ...wishes, ...change } })
  const { acidGPerL, ...withoutAcid } = wishes
  return (
    <div className={styles.wishes}>
      <AmountField
        label={t('draft.want.bottles')}
        dimension="count"
        value={wishes.bottles ?? 1}
        min={1}
        max={50}
        onChange={(bottles) => wish({ bottles: Math.max(1, Math.round(bottles)) })}
      />
      <AmountField
        label={t('draft.want.strength')}
        dimension="strength"
        value={wishes.strengthPctVol ?? 30}
        min={5}
        max={60}
        onChange={(strengthPctVol) => wish({ strengthPctVol })}
      />
      <AmountField
        label={t('draft.want.sugar')}
        dimension="sugar"
        value={wishes.sugarGPerL ?? 200}
        max={500}
        onChange={(sugarGPerL) => wish({ sugarGPerL })}
      />
      {acidGPerL === undefined ? (
        <Button
          kind="quiet"
          onPress={() => wish({ acidGPerL: Math.round((acidNow ?? 5) * 10) / 10 })}
        >
          {t('draft.want.acidWanted')}
        </Button>
      ) : (
        <div>
          <AmountField
            label={t('draft.want.acid')}
            dimension="acid"
            value={acidGPerL}
            max={20}
            onChange={(acid) => wish({ acidGPerL: Math.min(100, acid) })}
          />
          <Button kind="quiet" onPress={() => onChange({ wishes: withoutAcid })}>
            {t('draft.want.acidFree')}
          </Button>
        </div>
      )}
    </div>
  )
}
