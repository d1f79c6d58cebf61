/** What the fruit, the spirit, the sweetener and a bottle cost; any of them may be left out. */
import { useWords } from '../../app/words/use-words.ts'
import type { DraftSpec } from '../../../shared/schemas/drafts.ts'
import { QuantityField } from '../../parts/quantity/quantity-field.tsx'
import type { Turning } from './turning.ts'

export function PriceFields({ spec, set }: Turning) {
  const t = useWords()
  const field = (
    label: string,
    value: number | undefined,
    priced: (price: number | undefined) => Partial<DraftSpec>,
  ) => (
    <QuantityField
      label={label}
      dimension="money"
      value={value}
      range={{ min: 0, max: 1e9 }}
      onChange={(price) => set(priced(price))}
    />
  )
  return (
    <>
      {field(t('draft.form.fruitPrice'), spec.fruits[0]?.priceMinorPerKg, (price) => ({
        fruits: spec.fruits.map((fruit) => ({ ...fruit, priceMinorPerKg: price })),
      }))}
      {field(t('draft.form.spiritPrice'), spec.spirits[0]?.priceMinorPerL, (price) => ({
        spirits: spec.spirits.map((spirit) => ({ ...spirit, priceMinorPerL: price })),
      }))}
      {field(t('draft.form.sugarPrice'), spec.sweetenerPriceMinorPerKg, (price) => ({
        sweetenerPriceMinorPerKg: price,
      }))}
      {field(t('draft.form.bottlePrice'), spec.bottlePriceMinor, (price) => ({
        bottlePriceMinor: price,
      }))}
    </>
  )
}
