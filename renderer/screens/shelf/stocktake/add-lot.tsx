/** A lot that stands here though the book has it elsewhere, or gone. */
import { useWords } from '../../../app/words/use-words.ts'
import { useSettings } from '../../../app/settings.tsx'
import { ChoiceField } from '../../../parts/fields/choice-field.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { BottleLot } from '../../../../shared/schemas/cellar.ts'
import { collatorOf } from '../../../parts/formatters/formatters.ts'

interface AddLotProps {
  /** Those that are not in the list yet. */
  lots: readonly BottleLot[]
  onAdd: (lotId: string) => void
}

export function AddLot({ lots, onAdd }: AddLotProps) {
  const t = useWords()
  const { locale } = useSettings()
  const { size } = useQuantities()
  if (lots.length === 0) return null
  const collator = collatorOf(locale)
  return (
    <ChoiceField
      label={t('shelf.stocktake.add')}
      value=""
      onChange={onAdd}
      placeholder={t('shelf.stocktake.addChoose')}
      isRequired={false}
      choices={lots
        .map(({ id, name, bottleSizeMl }) => ({
          value: id,
          label: `${name}, ${size(bottleSizeMl, 'volume').text}`,
        }))
        .toSorted((a, b) => collator.compare(a.label, b.label))}
    />
  )
}
