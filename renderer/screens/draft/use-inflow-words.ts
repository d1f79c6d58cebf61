/** What flows into a stage: “2.00 kg Sour cherry”, “1.13 L spirit 96.0 % vol”. */
import { useWords } from '../../app/words/use-words.ts'
import type { StageInflow } from '../../../shared/schemas/drafts.ts'
import { useFruitName, useFruits } from '../../parts/names/use-names.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'

export function useInflowWords(): (inflow: StageInflow) => string {
  const t = useWords()
  const q = useQuantities()
  const fruits = useFruits()
  const fruitName = useFruitName()
  return ({ what, fruitId, massG, volumeMl, strengthPctVol }) => {
    const fruit = fruitId === undefined ? undefined : fruits.get(fruitId)
    const amount = massG === undefined ? q.text(volumeMl ?? 0, 'volume') : q.text(massG, 'mass')
    const name = fruit ? fruitName(fruit) : t(`draft.inflow.${what}`)
    const strength =
      what === 'spirit' && strengthPctVol !== undefined
        ? ` ${q.text(strengthPctVol, 'strength')}`
        : ''
    return t('draft.inflowLine', { amount, what: `${name}${strength}` })
  }
}
