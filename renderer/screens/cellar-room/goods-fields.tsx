/** What is bought and how much of it: spirit by volume, everything else by mass. */
import { useWords } from '../../app/words/use-words.ts'
import { useSettings } from '../../app/settings.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { useFruitName, useFruits } from '../../parts/names/use-names.ts'
import { QuantityField } from '../../parts/quantity/quantity-field.tsx'
import type { Buying } from './buying.ts'

export interface GoodsFieldsProps {
  buying: Buying
  onChange: (changed: Partial<Buying>) => void
  showsProblem: boolean
}

/** The strongest that can be distilled, as the contract has it. */
const strengthRange = { min: 0.1, max: 97.2 }

/** Acid comes in bags and jars of a few grams. */
function unitOf(kind: Buying['kind'], isUs: boolean) {
  if (kind === 'acid') return isUs ? 'oz' : 'g'
  return isUs ? 'lb' : 'kg'
}

export function GoodsFields({ buying, onChange, showsProblem }: GoodsFieldsProps) {
  const t = useWords()
  const { locale, units } = useSettings()
  const fruits = useFruits()
  const fruitName = useFruitName()
  const isSpirit = buying.kind === 'spirit'
  return (
    <>
      {buying.kind === 'fruit' && (
        <ChoiceField
          label={t('cellarRoom.buyForm.fruit')}
          placeholder={t('cellarRoom.buyForm.choose')}
          value={buying.fruitId}
          onChange={(fruitId) => onChange({ fruitId })}
          problem={
            showsProblem && buying.fruitId === '' ? t('parts.quantity.problem.empty') : undefined
          }
          choices={[...fruits.values()]
            .map((fruit) => ({ value: fruit.id, label: fruitName(fruit) }))
            .toSorted((a, b) => a.label.localeCompare(b.label, locale))}
        />
      )}
      {buying.kind === 'sweetener' && (
        <ChoiceField
          label={t('cellarRoom.buyForm.sweetener')}
          value={buying.sweetenerId}
          onChange={(sweetenerId) => onChange({ sweetenerId })}
          choices={(['sugar', 'honey'] as const).map((value) => ({
            value,
            label: t(`parts.goods.${value}`),
          }))}
        />
      )}
      {isSpirit && (
        <QuantityField
          label={t('cellarRoom.buyForm.strength')}
          dimension="strength"
          range={strengthRange}
          value={buying.strengthPctVol}
          onChange={(strengthPctVol) => onChange({ strengthPctVol })}
          isRequired
          showsProblem={showsProblem}
        />
      )}
      {isSpirit ? (
        <QuantityField
          label={t('cellarRoom.buyForm.volume')}
          dimension="volume"
          value={buying.volumeMl}
          onChange={(volumeMl) => onChange({ volumeMl })}
          isRequired
          showsProblem={showsProblem}
        />
      ) : (
        <QuantityField
          label={t('cellarRoom.buyForm.mass')}
          dimension="mass"
          unit={unitOf(buying.kind, units === 'us')}
          value={buying.massG}
          onChange={(massG) => onChange({ massG })}
          isRequired
          showsProblem={showsProblem}
        />
      )}
    </>
  )
}
