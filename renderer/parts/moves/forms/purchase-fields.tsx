/** What was bought: its kind, strength or fruit, how much, for how much. */
import { useMemo } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { useSettings } from '../../../app/settings.tsx'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { TextInput } from '../../fields/text-input.tsx'
import { useFruitName, useFruits } from '../../names/use-names.ts'
import { QuantityField } from '../../quantity/quantity-field.tsx'
import type { Problem } from '../drafts/draft-basics.ts'
import type { Purchase } from '../drafts/purchase.ts'
import { useProblemWords } from './form-basics.ts'
import styles from './purchase-fields.module.css'

interface PurchaseFieldsProps {
  purchase: Purchase
  onChange: (purchase: Purchase) => void
  problems: readonly Problem[]
  /** True when the amount may be left out: just what the move uses is bought. */
  isAmountOptional?: boolean
  /** Begins with its first field. */
  hasFocus?: boolean
}

export function PurchaseFields(props: PurchaseFieldsProps) {
  const { purchase, onChange, problems, isAmountOptional = false, hasFocus = false } = props
  const t = useWords()
  const problemWords = useProblemWords(problems)
  const change = (part: Partial<Purchase>) => onChange({ ...purchase, ...part })
  return (
    <>
      {purchase.goodsKind === 'fruit' && (
        <FruitChoice
          value={purchase.fruitId}
          onChange={(fruitId) => change({ fruitId })}
          problem={problemWords('purchase.fruitId')}
          autoFocus={hasFocus}
        />
      )}
      {purchase.goodsKind === 'spirit' && (
        <QuantityField
          label={t('batch.buy.strength')}
          dimension="strength"
          range={{ min: 0.1, max: 97.2 }}
          value={purchase.strengthPctVol}
          onChange={(strengthPctVol) => change({ strengthPctVol })}
          isRequired
          showsProblem={problems.length > 0}
          autoFocus={hasFocus}
        />
      )}
      {purchase.goodsKind === 'sweetener' && (
        <ChoiceField
          label={t('batch.buy.sweetener')}
          value={purchase.sweetenerId}
          onChange={(sweetenerId) => change({ sweetenerId })}
          choices={(['sugar', 'honey'] as const).map((value) => ({
            value,
            label: t(`batch.buy.sweeteners.${value}`),
          }))}
          autoFocus={hasFocus}
        />
      )}
      <div className={styles.pair}>
        <QuantityField
          label={t('batch.buy.amount')}
          dimension={purchase.goodsKind === 'spirit' ? 'volume' : 'mass'}
          value={purchase.amount}
          onChange={(amount) => change({ amount })}
          isRequired={!isAmountOptional}
          showsProblem={problems.length > 0}
          description={isAmountOptional ? t('batch.buy.amountHint') : undefined}
        />
        <QuantityField
          label={t('batch.buy.price')}
          dimension="money"
          value={purchase.priceMinor}
          onChange={(price) =>
            change({ priceMinor: price === undefined ? undefined : Math.round(price) })
          }
        />
      </div>
      <TextInput
        label={t('batch.buy.name')}
        value={purchase.name}
        onChange={(name) => change({ name })}
      />
    </>
  )
}

interface FruitChoiceProps {
  value: string | undefined
  onChange: (fruitId: string) => void
  problem: string | undefined
  autoFocus: boolean
}

function FruitChoice({ value, onChange, problem, autoFocus }: FruitChoiceProps) {
  const t = useWords()
  const { locale } = useSettings()
  const fruits = useFruits()
  const fruitName = useFruitName()
  const choices = useMemo(
    () =>
      [...fruits.values()]
        .map((fruit) => ({ value: fruit.id, label: fruitName(fruit) }))
        .sort((a, b) => a.label.localeCompare(b.label, locale)),
    [fruits, fruitName, locale],
  )
  return (
    <ChoiceField
      label={t('batch.buy.fruit')}
      value={value ?? ''}
      onChange={onChange}
      choices={choices}
      placeholder={t('batch.buy.chooseFruit')}
      problem={problem}
      autoFocus={autoFocus}
    />
  )
}
