/** A choice of the batch's bottle lots, each with what is left of it. */
import { useWords } from '../../../app/words/use-words.ts'
import type { BottleLot } from '../../../../shared/schemas/cellar.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { useQuantities } from '../../quantity/use-quantities.ts'

interface BottleLotFieldProps {
  lots: readonly BottleLot[]
  value: string | undefined
  onChange: (bottleLotId: string) => void
  problem: string | undefined
}

export function BottleLotField({ lots, value, onChange, problem }: BottleLotFieldProps) {
  const t = useWords()
  const { size } = useQuantities()
  return (
    <ChoiceField
      label={t('batch.form.bottleLot')}
      value={value ?? ''}
      onChange={onChange}
      problem={problem}
      choices={lots.map((lot) => ({
        value: lot.id,
        label: t('batch.form.bottlesLeft', {
          count: lot.count,
          name: lot.name,
          size: size(lot.bottleSizeMl, 'volume').text,
        }),
      }))}
    />
  )
}
