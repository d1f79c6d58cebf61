/** A label's problem as a sentence. */
import type { LabelProblem } from '../../../shared/schemas/labels.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { numberFormat } from '../../parts/formatters/formatters.ts'

export function useProblemWords(): (problem: LabelProblem) => string {
  const t = useWords()
  const quantities = useQuantities()
  const { locale } = useSettings()
  return ({ code, field, characters = [], value = 0, limit = 0 }) => {
    const percent = numberFormat(locale, { style: 'percent' })
    const number = numberFormat(locale, { maximumFractionDigits: 2 })
    const isStrength = code === 'strengthOff'
    const told = (amount: number) =>
      isStrength ? quantities.text(amount, 'strength') : number.format(amount)
    return t(`labels.problems.${code}`, {
      field: field ? t(`labels.field.${field}`) : '',
      characters: characters.map((one) => `“${one}”`).join(' '),
      share: percent.format(Math.floor(value * 100) / 100),
      value: told(value),
      limit: told(limit),
    })
  }
}
