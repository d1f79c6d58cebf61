/** The spirit of a draft, taken from the pantry or by its strength, and the water it is cut with. */
import { useWords } from '../../app/words/use-words.ts'
import type { DraftSpirit } from '../../../shared/schemas/drafts.ts'
import type { PantryLot } from '../../../shared/schemas/cellar.ts'
import { useRead } from '../../app/queries.ts'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { useGoodsName } from '../../parts/names/use-names.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { AmountField, niceCeiling } from './amount-field.tsx'
import { SteadyQuantityField } from '../../parts/quantity/steady-quantity-field.tsx'
import type { Turning } from './turning.ts'
import styles from './numbers-form.module.css'

export function SpiritRows({ spec, turn, set, pin, usual }: Turning) {
  const t = useWords()
  const q = useQuantities()
  const goodsName = useGoodsName()
  const lots = (useRead('pantry.list', {}).data ?? []).filter(
    ({ goods, volumeMl = 0 }) => goods.kind === 'spirit' && volumeMl > 1,
  )
  const changed = (at: number, change: Partial<DraftSpirit>) =>
    spec.spirits.map((spirit, index) => (index === at ? { ...spirit, ...change } : spirit))
  const spiritPin = pin('spirit')
  const waterPin = pin('steepWater')
  return (
    <>
      {spec.spirits.map((spirit, at) => (
        <div key={at} className={styles.row}>
          {lots.length > 0 && (
            <ChoiceField
              label={t('draft.form.lot')}
              value={lotLike(lots, spirit)?.id ?? ''}
              isRequired={false}
              onChange={(id) => {
                const lot = lots.find((one) => one.id === id)
                if (lot) set({ spirits: changed(at, fromLot(lot)) })
              }}
              choices={lots.map((lot) => ({
                value: lot.id,
                label: `${goodsName(lot.goods)}, ${q.text(lot.volumeMl ?? 0, 'volume')}`,
              }))}
            />
          )}
          <SteadyQuantityField
            label={t('draft.form.strength')}
            dimension="strength"
            value={spirit.strengthPctVol}
            range={{ min: 5, max: 97.2 }}
            onChange={(strengthPctVol) => set({ spirits: changed(at, { strengthPctVol }) })}
          />
          <AmountField
            label={t('draft.amount.spirit')}
            dimension="volume"
            value={spirit.volumeMl}
            min={1}
            max={niceCeiling(2 * spirit.volumeMl)}
            onChange={(volumeMl) => turn('spirit', { spirits: changed(at, { volumeMl }) })}
            description={at === 0 ? usual('steepingStrengthPctVol') : undefined}
            {...(at === 0 && spiritPin && { pin: spiritPin })}
          />
        </div>
      ))}
      <AmountField
        label={t('draft.amount.steepWater')}
        dimension="volume"
        value={spec.steepWaterMl}
        max={niceCeiling(spec.spirits[0]?.volumeMl ?? 1000)}
        onChange={(steepWaterMl) => turn('steepWater', { steepWaterMl })}
        {...(waterPin && { pin: waterPin })}
      />
    </>
  )
}

const strengthOf = ({ goods }: PantryLot): number =>
  goods.kind === 'spirit' ? goods.strengthPctVol : 0

const lotLike = (lots: readonly PantryLot[], { strengthPctVol }: DraftSpirit) =>
  lots.find((lot) => strengthOf(lot) === strengthPctVol)

/** The lot's strength, and its price where it is known. */
function fromLot(lot: PantryLot): Partial<DraftSpirit> {
  const { priceMinor, boughtVolumeMl } = lot
  const priceMinorPerL =
    priceMinor === undefined || !boughtVolumeMl ? undefined : (1000 * priceMinor) / boughtVolumeMl
  return {
    strengthPctVol: strengthOf(lot),
    ...(priceMinorPerL !== undefined && { priceMinorPerL }),
  }
}
