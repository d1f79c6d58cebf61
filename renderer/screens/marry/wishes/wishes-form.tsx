/** What the blend shall be: strength, sugar, acid, how much, and which way of several. */
import { memo } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { ChoiceField } from '../../../parts/fields/choice-field.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { QuantityField } from '../../../parts/quantity/quantity-field.tsx'
import { wishedFor, type AmountKind, type Entries } from '../entries.ts'
import { BottleSizes } from './bottle-sizes.tsx'
import { WishField } from './wish-field.tsx'
import styles from './wishes.module.css'

export interface WishesFormProps {
  entries: Entries
  onChange: (changed: Partial<Entries>) => void
}

const kinds: readonly AmountKind[] = ['most', 'volume', 'bottles']
const ways: readonly Entries['prefer'][] = ['useUp', 'cheapest', 'even']

export const WishesForm = memo(function WishesForm({ entries, onChange }: WishesFormProps) {
  const t = useWords()
  return (
    <form className={styles.form} onSubmit={(event) => event.preventDefault()} noValidate>
      {wishedFor.map((name) => (
        <WishField
          key={name}
          name={name}
          wish={entries.wishes[name]}
          onChange={(wish) => onChange({ wishes: { ...entries.wishes, [name]: wish } })}
        />
      ))}
      <div className={styles.amount}>
        <Segments
          label={t('marry.wishes.amount')}
          value={entries.amount}
          onChange={(amount) => onChange({ amount })}
          choices={kinds.map((value) => ({ value, label: t(`marry.amountKind.${value}`) }))}
        />
        {entries.amount === 'volume' && (
          <QuantityField
            label={t('marry.wishes.volume')}
            dimension="volume"
            value={entries.volumeMl}
            onChange={(volumeMl) => onChange({ volumeMl })}
            isRequired
          />
        )}
        {entries.amount === 'bottles' && (
          <BottleSizes bottles={entries.bottles} onChange={(bottles) => onChange({ bottles })} />
        )}
        <ChoiceField
          label={t('marry.wishes.prefer')}
          value={entries.prefer}
          onChange={(prefer) => onChange({ prefer })}
          choices={ways.map((value) => ({ value, label: t(`marry.preferOne.${value}`) }))}
        />
      </div>
    </form>
  )
})
