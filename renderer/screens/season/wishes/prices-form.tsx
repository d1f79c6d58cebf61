/** What the maker expects to pay; what is left empty is taken from the last purchase. */
import { useSettings } from '../../../app/settings.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { QuantityField } from '../../../parts/quantity/quantity-field.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { SeasonPlan, SeasonPrices, SeasonPurchase } from '../../../../shared/schemas/season.ts'
import {
  keptPrice,
  massPriceUnit,
  shownPrice,
  volumePriceUnit,
  type PriceUnit,
} from '../../../parts/quantity/price-units.ts'
import { priceOfFruit, priceOfSpirit, withFruitPrice, withSpiritPrice } from './prices.ts'
import styles from './wishes.module.css'

export interface PricesFormProps {
  prices: SeasonPrices
  spiritPctVol: number
  kindIds: readonly string[]
  plan: SeasonPlan | undefined
  onChange: (prices: SeasonPrices) => void
}

export function PricesForm({ prices, spiritPctVol, kindIds, plan, onChange }: PricesFormProps) {
  const t = useWords()
  const { units } = useSettings()
  const { text } = useQuantities()
  const kindName = useKindName()
  const mass = massPriceUnit(units)
  const volume = volumePriceUnit(units)
  const one: PriceUnit = { id: 'kg', share: 1 }
  const strength = text(spiritPctVol, 'strength')

  const field = (
    key: string,
    label: string,
    value: number | undefined,
    unit: PriceUnit,
    kept: (price: number | undefined) => SeasonPrices,
    reckoned?: number,
  ) => (
    <QuantityField
      key={key}
      label={label}
      dimension="money"
      value={shownPrice(value, unit)}
      range={{ min: 0, max: 100_000_000 }}
      onChange={(shown) => onChange(kept(shown === undefined ? undefined : keptPrice(shown, unit)))}
      description={
        value === undefined && reckoned !== undefined
          ? t('season.wishes.reckoned', {
              money: text(Math.round(reckoned * unit.share), 'money'),
            })
          : undefined
      }
    />
  )

  return (
    <>
      <p className={styles.quiet}>{t('season.wishes.pricesHint')}</p>
      <div className={styles.fields}>
        {kindIds.map((fruitId) =>
          field(
            fruitId,
            t(`season.wishes.priceOf.${mass.id}`, { name: kindName(fruitId) }),
            priceOfFruit(prices, fruitId),
            mass,
            (price) => withFruitPrice(prices, fruitId, price),
            reckonedPrice(plan, (line) => line.what === 'fruit' && line.fruitId === fruitId),
          ),
        )}
        {field(
          `spirit ${spiritPctVol}`,
          t(`season.wishes.spiritPriceOf.${volume.id}`, { strength }),
          priceOfSpirit(prices, spiritPctVol),
          volume,
          (price) => withSpiritPrice(prices, spiritPctVol, price),
          reckonedPrice(
            plan,
            (line) => line.what === 'spirit' && line.strengthPctVol === spiritPctVol,
          ),
        )}
        {(['sugar', 'honey'] as const).map((id) =>
          field(
            id,
            t(`season.wishes.priceOf.${mass.id}`, { name: t(`parts.goods.${id}`) }),
            prices[`${id}MinorPerKg`],
            mass,
            (price) => ({ ...prices, [`${id}MinorPerKg`]: price }),
            reckonedPrice(plan, (line) => line.sweetenerId === id),
          ),
        )}
        {(['bottle', 'cork', 'label'] as const).map((what) =>
          field(
            what,
            t(`season.wishes.${what}Price`),
            prices[`${what}Minor`],
            one,
            (price) => ({ ...prices, [`${what}Minor`]: price }),
            reckonedPrice(plan, (line) => line.what === what),
          ),
        )}
      </div>
    </>
  )
}

/** For a kilogram, a litre or a piece, as the plan's own purchases were reckoned. */
function reckonedPrice(
  plan: SeasonPlan | undefined,
  isMeant: (line: SeasonPurchase) => boolean,
): number | undefined {
  const line = plan?.purchases.find((one) => isMeant(one) && one.priceMinor !== undefined)
  if (line?.priceMinor === undefined) return undefined
  const { massG, volumeMl, count } = line
  const amount = count ?? (massG === undefined ? undefined : massG / 1000) ?? (volumeMl ?? 0) / 1000
  return amount > 0 ? line.priceMinor / amount : undefined
}
