/** A choice of what stands in the pantry, each with what is left of it. */
import { useWords } from '../../../app/words/use-words.ts'
import type { PantryLot } from '../../../../shared/schemas/cellar.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { useGoodsName } from '../../names/use-names.ts'
import { useQuantities } from '../../quantity/use-quantities.ts'
import { leftIn } from '../drafts/log-context.ts'

/** Stands for a purchase among the lots; no lot can have this id. */
export const justBought = 'just bought'

interface LotFieldProps {
  label: string
  lots: readonly PantryLot[]
  value: string | undefined
  onChange: (lotId: string) => void
  takesPurchase?: boolean
  problem?: string | undefined
}

export function LotField({
  label,
  lots,
  value,
  onChange,
  takesPurchase = false,
  problem,
}: LotFieldProps) {
  const t = useWords()
  const goodsName = useGoodsName()
  const { text } = useQuantities()
  // The maker's own name for a spirit does not tell how strong it is.
  const told = (goods: PantryLot['goods']) =>
    goods.kind === 'spirit' && goods.name
      ? `${goods.name} ${text(goods.strengthPctVol, 'strength')}`
      : goodsName(goods)
  const choices = lots.map((lot) => ({
    value: lot.id,
    label: t('batch.form.left', {
      what: told(lot.goods),
      left: text(leftIn(lot), lot.goods.kind === 'spirit' ? 'volume' : 'mass'),
    }),
  }))
  const purchase = { value: justBought, label: t('batch.form.justBought') }
  return (
    <ChoiceField
      label={label}
      value={value ?? ''}
      onChange={onChange}
      choices={takesPurchase ? [...choices, purchase] : choices}
      problem={problem}
    />
  )
}
