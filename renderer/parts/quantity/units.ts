/** The units people write, by dimension, and how each leads to the base unit of the contract. */
import type { Language } from '../../../shared/language.ts'
import { numberFormat } from '../formatters/formatters.ts'

export type Dimension =
  | 'volume'
  | 'mass'
  | 'length'
  | 'strength'
  | 'sugar'
  | 'acid'
  | 'temperature'
  | 'money'
  | 'count'
  | 'density'
  | 'brix'
  | 'packing'
  | 'holding'

export type UnitSystem = 'metric' | 'us'

/** What a cellar counts in; a temperature's scale, where it is not said, is its system's own. */
export interface UnitChoice {
  readonly units: UnitSystem
  readonly temperature?: 'celsius' | 'fahrenheit' | undefined
  readonly strength?: 'pctVol' | 'proof' | undefined
  /** Of the words: some units are written otherwise in another. */
  readonly language?: Language | undefined
}

export interface Unit {
  readonly id: string
  /** As it is shown beside a number. */
  readonly symbol: string
  /** Spellings read, in lower case and without dots or spaces. */
  readonly spellings: readonly string[]
  /** base = number × factor + offset */
  readonly factor: number
  readonly offset?: number
}

const unit = (id: string, symbol: string, factor: number, spellings: string[]): Unit => ({
  id,
  symbol,
  factor,
  spellings,
})

/**
 * Base units: ml, g, mm, % vol, g/L, °C, kg/m³, °Bx, pieces; fruit to a vessel (packing) in kg/L, liquid
 * held by fruit (holding) in L/kg; money is in the currency's own unit here.
 */
export const unitsOf: Readonly<Record<Dimension, readonly Unit[]>> = {
  volume: [
    unit('ml', 'ml', 1, [
      'ml',
      'cc',
      'cm3',
      'cm³',
      'millilitre',
      'millilitres',
      'milliliter',
      'milliliters',
      'mililitr',
      'mililitry',
      'mililitrów',
    ]),
    unit('cl', 'cl', 10, ['cl', 'centilitre', 'centilitres', 'centiliter', 'centiliters']),
    unit('dl', 'dl', 100, ['dl', 'decilitre', 'decilitres', 'deciliter', 'deciliters']),
    unit('L', 'L', 1000, [
      'l',
      'ltr',
      'litre',
      'litres',
      'liter',
      'liters',
      'litr',
      'litra',
      'litry',
      'litrów',
    ]),
    unit('flOz', 'fl oz', 29.5735295625, ['floz', 'fluidounce', 'fluidounces']),
    unit('cup', 'cup', 236.5882365, ['cup', 'cups']),
    unit('pint', 'pt', 473.176473, ['pt', 'pint', 'pints']),
    unit('quart', 'qt', 946.352946, ['qt', 'quart', 'quarts']),
    unit('gallon', 'gal', 3785.411784, ['gal', 'gallon', 'gallons']),
  ],
  mass: [
    unit('g', 'g', 1, ['g', 'gr', 'gram', 'grams', 'gramme', 'grammes', 'gramy', 'gramów']),
    unit('dag', 'dag', 10, ['dag', 'dkg', 'deko', 'deka']),
    unit('kg', 'kg', 1000, [
      'kg',
      'kilo',
      'kilos',
      'kilogram',
      'kilograms',
      'kilogramme',
      'kilogrammes',
      'kilogramy',
      'kilogramów',
    ]),
    unit('oz', 'oz', 28.349523125, ['oz', 'ounce', 'ounces', 'uncja', 'uncje', 'uncji']),
    unit('lb', 'lb', 453.59237, ['lb', 'lbs', 'pound', 'pounds', 'funt', 'funty', 'funtów']),
  ],
  length: [
    unit('mm', 'mm', 1, ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters']),
    unit('cm', 'cm', 10, ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters']),
    unit('inch', 'in', 25.4, ['in', 'inch', 'inches', '"', '″']),
  ],
  strength: [
    unit('pctVol', '% vol', 1, [
      '%',
      '%vol',
      '%abv',
      '%alc',
      'vol',
      'abv',
      'percent',
      '%obj',
      'obj',
      'procent',
    ]),
    // US proof: twice the percentage by volume. At 60 °F, where the law counts it, it is up to 0.15 less.
    unit('proof', 'proof', 0.5, ['proof', '°proof']),
  ],
  sugar: [
    unit('gPerL', 'g/L', 1, ['g/l', 'g', 'gperl']),
    unit('ozPerGal', 'oz/gal', 28.349523125 / 3.785411784, ['oz/gal', 'ozpergal']),
  ],
  acid: [unit('gPerL', 'g/L', 1, ['g/l', 'g', 'gperl'])],
  temperature: [
    unit('celsius', '°C', 1, ['°c', 'c', 'ºc', 'celsius']),
    {
      id: 'fahrenheit',
      symbol: '°F',
      factor: 5 / 9,
      offset: -160 / 9,
      spellings: ['°f', 'f', 'ºf', 'fahrenheit'],
    },
  ],
  money: [],
  count: [unit('pieces', '', 1, [])],
  density: [
    unit('kgPerM3', 'kg/m³', 1, ['kg/m3', 'kg/m³', 'g/l']),
    unit('gPerMl', 'g/ml', 1000, ['g/ml', 'g/cm3', 'g/cm³', 'kg/l', 'sg']),
  ],
  brix: [unit('brix', '°Bx', 1, ['°bx', 'bx', 'brix', '°brix', '%'])],
  packing: [
    unit('kgPerL', 'kg/L', 1, ['kg/l']),
    unit('lbPerGal', 'lb/gal', 0.45359237 / 3.785411784, ['lb/gal', 'lbs/gal']),
  ],
  holding: [
    unit('LPerKg', 'L/kg', 1, ['l/kg']),
    unit('flOzPerLb', 'fl oz/lb', 0.0295735295625 / 0.45359237, ['floz/lb']),
  ],
}

/** The unit a field shows, and takes a bare number to be in, when it is not told otherwise. */
export function usualUnitId(dimension: Dimension, choice: UnitChoice): string {
  const isUs = choice.units === 'us'
  switch (dimension) {
    case 'volume':
      return isUs ? 'flOz' : 'ml'
    case 'mass':
      return isUs ? 'oz' : 'g'
    case 'length':
      return isUs ? 'inch' : 'mm'
    case 'temperature':
      return choice.temperature ?? (isUs ? 'fahrenheit' : 'celsius')
    case 'strength':
      return choice.strength ?? 'pctVol'
    case 'sugar':
    case 'acid':
      return 'gPerL'
    case 'density':
      return 'kgPerM3'
    case 'brix':
      return 'brix'
    case 'packing':
      return isUs ? 'lbPerGal' : 'kgPerL'
    case 'holding':
      return isUs ? 'flOzPerLb' : 'LPerKg'
    case 'count':
      return 'pieces'
    case 'money':
      return 'currency'
  }
}

/** Without money, whose unit is the currency's. */
export const usualUnit = (dimension: Dimension, choice: UnitChoice): Unit | undefined =>
  unitsOf[dimension].find(({ id }) => id === usualUnitId(dimension, choice))

/** A currency as a unit: its number counts in the unit people say, the book in its smallest part. */
export function currencyUnit(currency: string, locale: string): Unit {
  const format = numberFormat(locale, { style: 'currency', currency })
  const symbol = format.formatToParts(0).find(({ type }) => type === 'currency')?.value ?? currency
  const digits = format.resolvedOptions().maximumFractionDigits ?? 2
  return {
    id: 'currency',
    symbol,
    factor: 10 ** digits,
    spellings: [symbol.toLowerCase(), currency.toLowerCase()],
  }
}

const inPolish: Readonly<Record<string, string>> = {
  L: 'l',
  '% vol': '% obj.',
  'g/L': 'g/l',
  'kg/L': 'kg/l',
  'L/kg': 'l/kg',
}

/** Beside a number, as the language writes it. */
export const symbolOf = ({ symbol }: Unit, language: Language = 'en'): string =>
  language === 'pl' ? (inPolish[symbol] ?? symbol) : symbol

export const toBase = ({ factor, offset = 0 }: Unit, amount: number): number =>
  amount * factor + offset

export const fromBase = ({ factor, offset = 0 }: Unit, value: number): number =>
  (value - offset) / factor

/** A difference or an uncertainty: 5 °C more are 9 °F more, wherever the zeros lie. */
export const differenceFromBase = ({ factor }: Unit, value: number): number => value / factor

export interface Range {
  readonly min: number
  readonly max: number
}

/** What the contract takes, in base units. */
export const usualRange: Readonly<Record<Dimension, Range>> = {
  volume: { min: 0.01, max: 10_000_000 },
  mass: { min: 0.01, max: 10_000_000 },
  length: { min: 0.5, max: 100 },
  strength: { min: 0, max: 100 },
  sugar: { min: 0, max: 1200 },
  acid: { min: 0, max: 200 },
  temperature: { min: -20, max: 60 },
  money: { min: 0, max: 1e12 },
  count: { min: 1, max: 100_000 },
  density: { min: 500, max: 2000 },
  brix: { min: -5, max: 100 },
  packing: { min: 0, max: 20 },
  holding: { min: 0, max: 5 },
}
