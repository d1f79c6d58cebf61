/** What the book would put on a label, in words; the maker changes it as they like. */
import type { Settings } from '../../../shared/channels.ts'
import type { Liquid } from '../../../shared/schemas/cellar.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { LabelText, StrengthPrefix } from '../../../shared/schemas/labels.ts'
import { energyOf, legalCategory, standardDrinks } from '../../engine/index.ts'
import { strengthWords } from './strength-form.ts'

/** What went into a lot, the most first. */
export type Ingredient =
  | { readonly kind: 'fruit'; readonly fruit: Fruit }
  | { readonly kind: 'spirit' | 'sugar' | 'honey' | 'water' | 'acid' }

export interface LotFacts {
  readonly name: string
  readonly batchId: string
  readonly bottledAt: string
  readonly bottleSizeMl: number
  /** The year its first fruit was charged. */
  readonly vintage: number
  readonly liquid: Liquid | undefined
  readonly ingredients: readonly Ingredient[]
}

export interface TextStyle {
  readonly settings: Settings
  readonly strengthPrefix: StrengthPrefix
}

export function usualText(lot: LotFacts, { settings, strengthPrefix }: TextStyle): LabelText {
  const { locale, units } = settings
  const fruits = lot.ingredients.flatMap((one) => (one.kind === 'fruit' ? [one.fruit] : []))
  const { liquid } = lot
  const { name, vintage } = nameAndVintage(lot)
  return {
    name,
    kind: kindWords(fruits, liquid),
    vintage,
    strength: liquid
      ? strengthWords(liquid.strengthPctVol, { locale, units, prefix: strengthPrefix })
      : '',
    volume: volumeWords(lot.bottleSizeMl, settings),
    batch: `Batch ${lot.batchId}`,
    bottled: `Bottled ${day(lot.bottledAt, locale)}`,
    ingredients: sentence(lot.ingredients.map(ingredientWords).join(', ')),
    allergens: allergenWords(fruits),
    energy: liquid ? energyWords(liquid, locale) : '',
    drinks: liquid ? drinksWords(lot.bottleSizeMl, liquid.strengthPctVol, settings) : '',
    cautions: cautionWords(fruits),
    note: '',
  }
}

const noBreak = '\u00a0'
const lower = ({ nameEn }: Fruit): string => nameEn.toLowerCase()
const sentence = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1)

/** A year at the end of a name is its vintage, and said once. */
function nameAndVintage({ name, vintage }: LotFacts): { name: string; vintage: string } {
  const year = String(vintage)
  const ending = new RegExp(`^(.*\\S)[\\s,]+${year}$`, 'su').exec(name)
  if (ending?.[1]) return { name: ending[1].replace(/,$/, ''), vintage: year }
  return { name, vintage: name.includes(year) ? '' : year }
}

/** A liqueur is what has the strength and the sugar of one, by the European rule. */
function kindWords(fruits: readonly Fruit[], liquid: Liquid | undefined): string {
  const named = fruits.slice(0, 2).map(lower).join(' and ')
  if (named === '' || !liquid) return ''
  const isLiqueur = legalCategory(liquid).some(
    ({ category, isMet }) => category === 'liqueur' && isMet,
  )
  return sentence(isLiqueur ? `${named} liqueur` : `${named} in spirit`)
}

function ingredientWords(ingredient: Ingredient): string {
  if (ingredient.kind === 'fruit') return lower(ingredient.fruit)
  return ingredient.kind === 'acid' ? 'citric acid' : ingredient.kind
}

const mlPerFluidOunce = 29.5735295625

/** Litres from a litre on, and in America the ounces first. */
function volumeWords(volumeMl: number, { locale, units }: Settings): string {
  const number = (value: number, digits: number) =>
    new Intl.NumberFormat(locale, { maximumFractionDigits: digits, useGrouping: false }).format(
      value,
    )
  const isMetric = units === 'metric'
  const metric =
    volumeMl >= 1000
      ? `${number(volumeMl / 1000, 2)}${noBreak}L`
      : `${number(volumeMl, 0)}${noBreak}${isMetric ? 'ml' : 'mL'}`
  if (isMetric) return metric
  return `${number(volumeMl / mlPerFluidOunce, 1)}${noBreak}fl${noBreak}oz (${metric})`
}

const day = (instant: string, locale: string): string =>
  new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' })
    .format(new Date(instant))
    .replaceAll(/[\s\u202f]/g, noBreak)

/**
 * Nuts are to be shown where they are (Regulation (EU) 1169/2011, Annex II; from memory). Which
 * kinds of fruit are nuts the library says.
 */
function allergenWords(fruits: readonly Fruit[]): string {
  const nuts = fruits.filter(({ kind }) => kind === 'nut').map(lower)
  return nuts.length > 0 ? `Contains nuts: ${nuts.join(', ')}` : ''
}

function energyWords(liquid: Liquid, locale: string): string {
  const { kJ, kcal } = energyOf(liquidOf(liquid))
  const number = (value: number) =>
    new Intl.NumberFormat(locale, { maximumFractionDigits: 0 })
      .format(value)
      .replaceAll('\u202f', noBreak)
  return `Energy in 100${noBreak}ml: ${number(kJ)}${noBreak}kJ / ${number(kcal)}${noBreak}kcal`
}

const liquidOf = ({ strengthPctVol, sugarGPerL, acidGPerL }: Liquid) => ({
  volumeMl: 100,
  strengthPctVol,
  sugarGPerL,
  acidGPerL,
})

function drinksWords(
  volumeMl: number,
  strengthPctVol: number,
  { locale, units }: Settings,
): string {
  const drinks = standardDrinks({ volumeMl, strengthPctVol })
  const number = (value: number) =>
    new Intl.NumberFormat(locale, { maximumFractionDigits: 1 }).format(value)
  if (units === 'us')
    return `${number(drinks.unitedStates)} US standard drinks (14${noBreak}g each)`
  if (/-(?:GB|IE)$/.test(locale)) return `${number(drinks.unitedKingdom)} UK units`
  return `${number(drinks.australia)} standard drinks (10${noBreak}g each)`
}

/** Short; what the library says at length belongs to the making. */
function cautionWords(fruits: readonly Fruit[]): string {
  const isStony = fruits.some(({ kind }) => kind === 'stoneFruit' || kind === 'drupe')
  return [
    ...(isStony ? ['Made with stone fruit: a stone or a piece of one may be in it.'] : []),
    'Keep out of the reach of children.',
  ].join(' ')
}
