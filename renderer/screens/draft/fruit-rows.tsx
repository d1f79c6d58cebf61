/** The fruit of a draft: which, how much, how it goes in; and the sugar it lies in first. */
import { useWords } from '../../app/words/use-words.ts'
import type { DraftFruit } from '../../../shared/schemas/drafts.ts'
import { Cut } from '../../../shared/schemas/moves.ts'
import { useSettings } from '../../app/settings.tsx'
import { Button } from '../../parts/button/button.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { useFruitName, useFruits } from '../../parts/names/use-names.ts'
import { NumberField } from '../../parts/quantity/number-field.tsx'
import { AmountField, niceCeiling } from './amount-field.tsx'
import type { Turning } from './turning.ts'
import styles from './numbers-form.module.css'

export function FruitRows({ spec, turn, set, pin, usual }: Turning) {
  const t = useWords()
  const fruits = useFruits()
  const fruitName = useFruitName()
  const { units } = useSettings()
  const changed = (at: number, change: Partial<DraftFruit>) =>
    spec.fruits.map((fruit, index) => (index === at ? { ...fruit, ...change } : fruit))
  const nameOf = (fruitId: string) => {
    const fruit = fruits.get(fruitId)
    return fruit ? fruitName(fruit) : fruitId
  }
  const chosen = new Set(spec.fruits.map(({ fruitId }) => fruitId))
  const unused = [...fruits.keys()].find((id) => !chosen.has(id))
  const fruitPin = pin('fruit')
  const sugarPin = pin('layeringSugar')
  return (
    <>
      {spec.fruits.map((fruit, at) => (
        <div key={fruit.fruitId} className={styles.row}>
          <ChoiceField
            label={t('draft.form.kind')}
            value={fruit.fruitId}
            onChange={(fruitId) => set({ fruits: changed(at, { fruitId }) })}
            choices={[...fruits.values()].map((one) => ({
              value: one.id,
              label: fruitName(one),
              isDisabled: one.id !== fruit.fruitId && chosen.has(one.id),
            }))}
          />
          <AmountField
            label={t('draft.amount.fruit')}
            dimension="mass"
            unit={units === 'us' ? 'lb' : 'g'}
            value={fruit.massG}
            min={1}
            max={niceCeiling(2 * fruit.massG)}
            onChange={(massG) => turn('fruit', { fruits: changed(at, { massG }) })}
            description={at === 0 ? usual('fruitKgPerLSpirit') : undefined}
            {...(at === 0 && fruitPin && { pin: fruitPin })}
          />
          <ChoiceField
            label={t('draft.form.cut')}
            value={fruit.cut}
            onChange={(cut) => set({ fruits: changed(at, { cut }) })}
            choices={Cut.options.map((value) => ({ value, label: t(`codes.cut.${value}`) }))}
          />
          <NumberField
            label={t('draft.form.refuse')}
            unit={t('draft.form.refuseUnit')}
            value={Math.round(fruit.refuseShare * 1000) / 10}
            onChange={(percent) =>
              percent !== undefined &&
              percent >= 0 &&
              percent <= 90 &&
              set({ fruits: changed(at, { refuseShare: percent / 100 }) })
            }
          />
          {spec.fruits.length > 1 && (
            <Button
              kind="quiet"
              onPress={() => set({ fruits: spec.fruits.filter((_, index) => index !== at) })}
            >
              {t('draft.form.take', { name: nameOf(fruit.fruitId) })}
            </Button>
          )}
        </div>
      ))}
      {spec.fruits.length < 6 && unused !== undefined && (
        <Button
          kind="quiet"
          onPress={() =>
            set({
              fruits: [
                ...spec.fruits,
                { fruitId: unused, massG: 500, refuseShare: 0, cut: 'whole' },
              ],
            })
          }
        >
          {t('draft.form.another')}
        </Button>
      )}
      <AmountField
        label={t('draft.amount.layeringSugar')}
        dimension="mass"
        value={spec.layeringSugarG}
        max={niceCeiling(spec.fruits.reduce((sum, { massG }) => sum + massG, 0) / 2)}
        onChange={(layeringSugarG) => turn('layeringSugar', { layeringSugarG })}
        {...(sugarPin && { pin: sugarPin })}
      />
      <NumberField
        label={t('draft.form.layeringDays')}
        unit={t('draft.form.days')}
        value={spec.layeringDays}
        onChange={(days) =>
          days !== undefined && days >= 0 && days <= 60 && set({ layeringDays: days })
        }
      />
      <ChoiceField
        label={t('draft.form.sweetener')}
        value={spec.sweetenerId}
        onChange={(sweetenerId) => set({ sweetenerId })}
        choices={(['sugar', 'honey'] as const).map((value) => ({
          value,
          label: t(`parts.goods.${value}`),
        }))}
      />
    </>
  )
}
