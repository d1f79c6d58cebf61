/** A fruit's facts as lines to show: the figure, its range, its unit, and the code of its source. */
import type { Fruit, Range } from '../../../shared/schemas/fruits.ts'

export const factGroups = ['steeping', 'liquid', 'composition'] as const
export type FactGroup = (typeof factGroups)[number]

export type FactUnit = 'pct' | 'weeks' | 'months' | 'years' | 'times'

/** What has a unit that makers choose is shown as the quantity it is. */
export type FactQuantity = 'strength' | 'sugar' | 'packing' | 'holding'

export type FactFigure =
  | { readonly as: 'number'; readonly value: number; readonly unit: FactUnit }
  | { readonly as: 'quantity'; readonly value: number; readonly dimension: FactQuantity }
  | { readonly as: 'kineticClass'; readonly value: Fruit['kineticClass'] }
  | { readonly as: 'piece'; readonly value: NonNullable<Fruit['piece']> }
  | { readonly as: 'haze'; readonly value: NonNullable<Fruit['pectinHaze']> }

/** The fields by the name of their source, and how each is named on the page. */
const names = {
  steepingStrengthPctVol: 'steepingStrength',
  steepingWeeks: 'steepingWeeks',
  fruitKgPerLSpirit: 'fruitPerSpirit',
  finishedStrengthPctVol: 'finishedStrength',
  finishedSugarGPerL: 'finishedSugar',
  restMonths: 'rest',
  drinkByYears: 'drinkBy',
  kineticClass: 'kineticClass',
  piece: 'piece',
  drainedLPerKg: 'drained',
  pressedLPerKg: 'pressed',
  bulkDensityKgPerL: 'bulkDensity',
  pace: 'pace',
  pectinHaze: 'pectinHaze',
  'composition.edibleFraction': 'edible',
  'composition.waterPct': 'water',
  'composition.sugarPct': 'sugar',
  'composition.acidPct': 'acid',
  'composition.solublesPct': 'solubles',
  'composition.pulpPct': 'pulp',
} as const
type FactField = keyof typeof names
export type FactName = (typeof names)[FactField]

export interface Fact {
  readonly name: FactName
  readonly figure: FactFigure
  readonly range?: Pick<Range, 'low' | 'high'> | undefined
  /** Undefined where nobody said where it comes from. */
  readonly source: string | undefined
}

export function factsOf(fruit: Fruit, group: FactGroup): Fact[] {
  switch (group) {
    case 'steeping':
      return steepingFacts(fruit)
    case 'liquid':
      return liquidFacts(fruit)
    case 'composition':
      return compositionFacts(fruit)
  }
}

const fact = (
  { sources }: Fruit,
  field: FactField,
  figure: FactFigure,
  range?: Range | undefined,
): Fact => ({ name: names[field], figure, range, source: sources[field] })

const number = (value: number, unit: FactUnit): FactFigure => ({ as: 'number', value, unit })
const strength = (value: number) => ({ as: 'quantity', value, dimension: 'strength' }) as const
const sugar = (value: number) => ({ as: 'quantity', value, dimension: 'sugar' }) as const
const packing = (value: number) => ({ as: 'quantity', value, dimension: 'packing' }) as const
const holding = (value: number) => ({ as: 'quantity', value, dimension: 'holding' }) as const

function steepingFacts(fruit: Fruit): Fact[] {
  const ranged = (field: RangedField, figure: (value: number) => FactFigure): Fact[] => {
    const range = fruit[field]
    return range ? [fact(fruit, field, figure(range.typical), range)] : []
  }
  return [
    ...ranged('fruitKgPerLSpirit', packing),
    ...ranged('steepingStrengthPctVol', strength),
    ...ranged('steepingWeeks', (value) => number(value, 'weeks')),
    ...ranged('finishedStrengthPctVol', strength),
    ...ranged('finishedSugarGPerL', sugar),
    ...ranged('restMonths', (value) => number(value, 'months')),
    ...ranged('drinkByYears', (value) => number(value, 'years')),
  ]
}

export const rangedFields = [
  'fruitKgPerLSpirit',
  'steepingStrengthPctVol',
  'steepingWeeks',
  'finishedStrengthPctVol',
  'finishedSugarGPerL',
  'restMonths',
  'drinkByYears',
] as const
export type RangedField = (typeof rangedFields)[number]
export const nameOfRanged = (field: RangedField): FactName => names[field]

function liquidFacts(fruit: Fruit): Fact[] {
  const { piece, pace, pectinHaze } = fruit
  return [
    fact(fruit, 'kineticClass', { as: 'kineticClass', value: fruit.kineticClass }),
    ...(piece ? [fact(fruit, 'piece', { as: 'piece', value: piece })] : []),
    fact(fruit, 'drainedLPerKg', holding(fruit.drainedLPerKg), fruit.drainedRangeLPerKg),
    fact(fruit, 'pressedLPerKg', holding(fruit.pressedLPerKg), fruit.pressedRangeLPerKg),
    fact(fruit, 'bulkDensityKgPerL', packing(fruit.bulkDensityKgPerL)),
    ...(pace !== undefined ? [fact(fruit, 'pace', number(pace, 'times'))] : []),
    ...(pectinHaze ? [fact(fruit, 'pectinHaze', { as: 'haze', value: pectinHaze })] : []),
  ]
}

function compositionFacts(fruit: Fruit): Fact[] {
  const { composition } = fruit
  const part = (field: Exclude<keyof Fruit['composition'], 'edibleFraction'>) =>
    fact(fruit, `composition.${field}`, number(composition[field], 'pct'))
  return [
    fact(fruit, 'composition.edibleFraction', number(100 * composition.edibleFraction, 'pct')),
    part('waterPct'),
    part('sugarPct'),
    part('acidPct'),
    part('solublesPct'),
    part('pulpPct'),
  ]
}
