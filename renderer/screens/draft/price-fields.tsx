/** What the fruit, the spirit, the sweetener and a bottle cost; any of them may be left out. */
import { useWords } from '../../app/words/use-words.ts'
import type { DraftSpec } from '../../../shared/schemas/drafts.ts'
import { useSettings } from '../../app/settings.tsx'
import {
  keptPrice,
  massPriceUnit,
  shownPrice,
  volumePriceUnit,
  type PriceUnit,
} from '../../parts/quantity/price-units.ts'
import { QuantityField } from '../../parts/quantity/quantity-field.tsx'
import type { Turning } from './turning.ts'

export function PriceFields({ spec, set }: Turning) {
  const t = useWords()
  const { units } = useSettings()
  const mass = massPriceUnit(units)
  const volume = volumePriceUnit(units)
  const field = (
    label: string,
    value: number | undefined,
    unit: PriceUnit,
    priced: (price: number | undefined) => Partial<DraftSpec>,
  ) => (
    <QuantityField
      label={label}
      dimension="money"
      value={shownPrice(value, unit)}
      range={{ min: 0, max: 1e9 }}
      onChange={(shown) => set(priced(shown === undefined ? undefined : keptPrice(shown, unit)))}
    />
  )
  return (
    <>
      {field(
        t(`draft.form.fruitPrice.${mass.id}`),
        spec.fruits[0]?.priceMinorPerKg,
        mass,
        (price) => ({
          fruits: spec.fruits.map((fruit) => ({ ...fruit, priceMinorPerKg: price })),
        }),
      )}
      {field(
        t(`draft.form.spiritPrice.${volume.id}`),
        spec.spirits[0]?.priceMinorPerL,
        volume,
        (price) => ({
          spirits: spec.spirits.map((spirit) => ({ ...spirit, priceMinorPerL: price })),
        }),
      )}
      {field(
        t(`draft.form.sugarPrice.${mass.id}`),
        spec.sweetenerPriceMinorPerKg,
        mass,
        (price) => ({
          sweetenerPriceMinorPerKg: price,
        }),
      )}
      {field(
        t('draft.form.bottlePrice'),
        spec.bottlePriceMinor,
        { id: 'kg', share: 1 },
        (price) => ({
          bottlePriceMinor: price,
        }),
      )}
    </>
  )
}
