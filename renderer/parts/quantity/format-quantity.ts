/** A quantity as it is shown: number and unit apart, so that the unit can be quieter. */
import {
  currencyUnit,
  differenceFromBase,
  fromBase,
  symbolOf,
  unitsOf,
  usualUnitId,
  type Dimension,
  type Unit,
  type UnitChoice,
  type UnitSystem,
} from './units.ts'
import { numberFormat } from '../formatters/formatters.ts'

export interface FormatContext extends UnitChoice {
  readonly locale: string
  readonly currency?: string | undefined
  /** Shows in this unit, whatever the size. */
  readonly unit?: string | undefined
  /** True for sizes as they are sold: a jar of 3 L, not of 3.00 L. */
  readonly isNominal?: boolean | undefined
}

export interface FormattedQuantity {
  readonly number: string
  /** Empty for a count. */
  readonly unit: string
  /** True for money where the locale writes the sign first. */
  readonly isUnitFirst?: boolean
  /** Both, with a no-break space; for labels and sentences. */
  readonly text: string
}

export const formatQuantity = (
  value: number,
  dimension: Dimension,
  context: FormatContext,
): FormattedQuantity => formatIn(fromBase, value, dimension, context)

/** Half a degree of °C is 0.9 of °F, and not 32.9. */
export const formatDifference = (
  value: number,
  dimension: Dimension,
  context: FormatContext,
): FormattedQuantity => formatIn(differenceFromBase, value, dimension, context)

function formatIn(
  numberOf: (unit: Unit, value: number) => number,
  value: number,
  dimension: Dimension,
  context: FormatContext,
): FormattedQuantity {
  if (dimension === 'money') return formatMoney(value, context)
  const unit = shownUnit(value, dimension, context)
  const usual = digitsOf(value, dimension, unit)
  const digits = context.isNominal ? { ...usual, min: 0 } : usual
  const number = format(numberOf(unit, value), context.locale, digits)
  const symbol = symbolOf(unit, context.language)
  return { number, unit: symbol, text: symbol ? `${number}\u00a0${symbol}` : number }
}

/** As a field holds it while it is being edited: plain, exact enough to be read back the same. */
export function editableQuantity(
  value: number,
  dimension: Dimension,
  context: FormatContext,
): string {
  const unit =
    dimension === 'money'
      ? currencyUnit(context.currency ?? 'EUR', context.locale)
      : unitById(dimension, context.unit ?? usualUnitId(dimension, context))
  return numberFormat(context.locale, {
    useGrouping: false,
    maximumSignificantDigits: 8,
  }).format(fromBase(unit, value))
}

function formatMoney(value: number, { locale, currency = 'EUR' }: FormatContext) {
  const unit = currencyUnit(currency, locale)
  const text = numberFormat(locale, { style: 'currency', currency }).format(fromBase(unit, value))
  const number = text.replace(unit.symbol, '').trim()
  return { number, unit: unit.symbol, isUnitFirst: text.startsWith(unit.symbol), text }
}

function shownUnit(value: number, dimension: Dimension, context: FormatContext): Unit {
  if (context.unit !== undefined) return unitById(dimension, context.unit)
  const size = Math.abs(value)
  if (dimension === 'volume') return unitById('volume', volumeUnit(size, context.units))
  if (dimension === 'mass') return unitById('mass', massUnit(size, context.units))
  return unitById(dimension, usualUnitId(dimension, context))
}

// Just below a limit a value is rounded up to it: 999.6 ml reads as 1.00 L, not as 1000 ml.
const volumeUnit = (sizeMl: number, units: UnitSystem) => {
  if (units === 'metric') return sizeMl < 999.5 ? 'ml' : 'L'
  if (sizeMl < 31.5 * 29.5735) return 'flOz'
  return sizeMl < 3780 ? 'quart' : 'gallon'
}
const massUnit = (sizeG: number, units: UnitSystem) => {
  if (units === 'metric') return sizeG < 999.5 ? 'g' : 'kg'
  return sizeG < 15.95 * 28.3495 ? 'oz' : 'lb'
}

interface Digits {
  readonly min: number
  readonly max: number
}

const fixed = (count: number): Digits => ({ min: count, max: count })

function digitsOf(value: number, dimension: Dimension, unit: Unit): Digits {
  switch (dimension) {
    case 'strength':
    case 'acid':
      return fixed(1)
    case 'sugar':
    case 'count':
      return fixed(0)
    case 'brix':
      return fixed(1)
    case 'temperature':
      return { min: 0, max: 1 }
    case 'packing':
      return { min: 0, max: 2 }
    case 'holding':
      return unit.id === 'LPerKg' ? { min: 0, max: 3 } : { min: 0, max: 1 }
    case 'density':
      return unit.id === 'gPerMl' ? fixed(4) : { min: 0, max: 1 }
    case 'length':
      return unit.id === 'inch' ? fixed(2) : { min: 0, max: 1 }
    case 'money':
      return fixed(2)
    case 'volume':
    case 'mass':
      if (unit.factor >= 400) return fixed(2)
      if (unit.factor > 20) return fixed(Math.abs(value) < unit.factor ? 2 : 1)
      return Math.abs(value) < 9.95 ? { min: 0, max: 1 } : fixed(0)
  }
}

function unitById(dimension: Dimension, id: string): Unit {
  const unit = unitsOf[dimension].find((one) => one.id === id)
  if (!unit) throw new RangeError(`unit is ${id}, which is not one of ${dimension}`)
  return unit
}

function format(number: number, locale: string, { min, max }: Digits): string {
  // Adding zero turns -0 into 0.
  const shown = Math.abs(number) < 0.5 * 10 ** -max ? 0 : number
  return numberFormat(locale, {
    minimumFractionDigits: min,
    maximumFractionDigits: max,
  }).format(shown + 0)
}

/** The symbol beside an empty field. */
export const fieldUnitSymbol = (dimension: Dimension, context: FormatContext): string =>
  dimension === 'money'
    ? currencyUnit(context.currency ?? 'EUR', context.locale).symbol
    : symbolOf(
        unitById(dimension, context.unit ?? usualUnitId(dimension, context)),
        context.language,
      )
