/** A fact's figure as text, in the cellar's locale and units. */
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import type { Fact, FactFigure, FactUnit } from './facts.ts'

export interface FigureWords {
  figure: (figure: FactFigure) => string
  /** "0.5 to 0.8"; empty where the fact has no range. */
  range: (fact: Fact) => string
  number: (value: number, unit: FactUnit) => string
}

export function useFigureWords(): FigureWords {
  const t = useWords()
  const { locale } = useSettings()
  const quantities = useQuantities()
  const plain = new Intl.NumberFormat(locale, { maximumFractionDigits: 2 })
  const number = (value: number, unit: FactUnit) =>
    `${plain.format(value)}\u00a0${t(`fruits.unit.${unit}`)}`

  const figure = (told: FactFigure): string => {
    switch (told.as) {
      case 'number':
        return number(told.value, told.unit)
      case 'quantity':
        return quantities.text(told.value, told.dimension)
      case 'kineticClass':
        return t(`fruits.kineticClass.${told.value}`)
      case 'haze':
        return t(`fruits.haze.${told.value}`)
      case 'piece':
        return t('fruits.page.piece', {
          shape: t(`fruits.shape.${told.value.shape}`),
          size: quantities.text(told.value.halfSizeMm, 'length'),
        })
    }
  }

  const range = ({ figure: told, range: span }: Fact): string => {
    if (!span) return ''
    const end = (value: number) =>
      told.as === 'quantity' ? quantities.of(value, told.dimension).number : plain.format(value)
    return t('fruits.page.range', { low: end(span.low), high: end(span.high) })
  }
  return { figure, range, number }
}
