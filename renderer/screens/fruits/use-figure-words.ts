/** A fact's figure as text, in the cellar's locale and units. */
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { numberFormat } from '../../parts/formatters/formatters.ts'
import type { Fact, FactFigure, FactUnit } from './facts.ts'

export interface FigureWords {
  figure: (figure: FactFigure) => string
  /** "0.5 to 0.8"; empty where the fact has no range. */
  range: (fact: Fact) => string
  number: (value: number, unit: FactUnit) => string
}

/** Units of time are written by the locale, with their plurals. */
const timeUnit = { weeks: 'week', months: 'month', years: 'year' } as const
const isTimeUnit = (unit: FactUnit): unit is keyof typeof timeUnit => unit in timeUnit

export function useFigureWords(): FigureWords {
  const t = useWords()
  const { locale } = useSettings()
  const quantities = useQuantities()
  const plain = (value: number) => numberFormat(locale, { maximumFractionDigits: 3 }).format(value)
  const number = (value: number, unit: FactUnit) =>
    isTimeUnit(unit)
      ? numberFormat(locale, {
          style: 'unit',
          unit: timeUnit[unit],
          unitDisplay: 'long',
        }).format(value)
      : `${plain(value)}\u00a0${t(`fruits.unit.${unit}`)}`

  const figure = (told: FactFigure): string => {
    switch (told.as) {
      case 'number':
        return number(told.value, told.unit)
      case 'quantity':
        return quantities.size(told.value, told.dimension).text
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
      told.as === 'quantity' ? quantities.size(value, told.dimension).number : plain(value)
    return t('fruits.page.range', { low: end(span.low), high: end(span.high) })
  }
  return { figure, range, number }
}
