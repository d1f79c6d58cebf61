/** What the book would put on a label, in words; the maker changes it as they like. */
import type { Settings } from '../../../shared/channels.ts'
import type { Liquid } from '../../../shared/schemas/cellar.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { LabelText, StrengthPrefix } from '../../../shared/schemas/labels.ts'
import { energyOf, legalCategory, standardDrinks } from '../../engine/index.ts'
import { wordsLocaleOf } from '../../../shared/language.ts'
import { paperWords, type PaperWords } from '../words/paper-words.ts'
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
  const words = paperWords(settings)
  const say = words.label
  const fruits = lot.ingredients.flatMap((one) => (one.kind === 'fruit' ? [one.fruit] : []))
  const { liquid } = lot
  const { name, vintage } = nameAndVintage(lot)
  return {
    name,
    kind: kindWords(fruits, liquid, words),
    vintage,
    strength: liquid
      ? strengthWords(liquid.strengthPctVol, { locale, units, prefix: strengthPrefix, words })
      : '',
    volume: volumeWords(lot.bottleSizeMl, settings),
    batch: say.batch(lot.batchId),
    bottled: say.bottled(day(lot.bottledAt, settings)),
    ingredients: sentence(lot.ingredients.map((one) => ingredientWords(one, words)).join(', ')),
    allergens: allergenWords(fruits, words),
    energy: liquid ? energyWords(liquid, settings) : '',
    drinks: liquid ? drinksWords(lot.bottleSizeMl, liquid.strengthPctVol, settings) : '',
    cautions: cautionWords(fruits, words),
    note: '',
  }
}

const noBreak = '\u00a0'
const lower = (fruit: Fruit, { fruitName }: PaperWords): string => fruitName(fruit).toLowerCase()
const sentence = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1)

/** A year at the end of a name is its vintage, and said once. */
function nameAndVintage({ name, vintage }: LotFacts): { name: string; vintage: string } {
  const year = String(vintage)
  const ending = new RegExp(`^(.*\\S)[\\s,]+${year}$`, 'su').exec(name)
  if (ending?.[1]) return { name: ending[1].replace(/,$/, ''), vintage: year }
  return { name, vintage: name.includes(year) ? '' : year }
}

/** A liqueur is what has the strength and the sugar of one, by the European rule. */
function kindWords(
  fruits: readonly Fruit[],
  liquid: Liquid | undefined,
  words: PaperWords,
): string {
  const [first, second] = fruits.map((fruit) => lower(fruit, words))
  if (first === undefined || !liquid) return ''
  const named = second === undefined ? first : words.label.and(first, second)
  const isLiqueur = legalCategory(liquid).some(
    ({ category, isMet }) => category === 'liqueur' && isMet,
  )
  return sentence(isLiqueur ? words.label.liqueur(named) : words.label.inSpirit(named))
}

const ingredientWords = (ingredient: Ingredient, words: PaperWords): string =>
  ingredient.kind === 'fruit'
    ? lower(ingredient.fruit, words)
    : words.label.ingredients[ingredient.kind]

const mlPerFluidOunce = 29.5735295625

/** Litres from a litre on, and in America the ounces first. */
function volumeWords(volumeMl: number, settings: Settings): string {
  const { locale, units } = settings
  const words = paperWords(settings)
  const number = (value: number, digits: number) =>
    new Intl.NumberFormat(locale, { maximumFractionDigits: digits, useGrouping: false }).format(
      value,
    )
  const isMetric = units === 'metric'
  const metric =
    volumeMl >= 1000
      ? `${number(volumeMl / 1000, 2)}${noBreak}${words.units.L}`
      : `${number(volumeMl, 0)}${noBreak}${isMetric ? 'ml' : 'mL'}`
  if (isMetric) return metric
  return `${number(volumeMl / mlPerFluidOunce, 1)}${noBreak}fl${noBreak}oz (${metric})`
}

const day = (instant: string, { locale, language = 'en' }: Settings): string =>
  new Intl.DateTimeFormat(wordsLocaleOf(language, locale), { dateStyle: 'long', timeZone: 'UTC' })
    .format(new Date(instant))
    .replaceAll(/[\s\u202f]/g, noBreak)

/**
 * Nuts are to be shown where they are (Regulation (EU) 1169/2011, Annex II; from memory). Which
 * kinds of fruit are nuts the library says.
 */
function allergenWords(fruits: readonly Fruit[], words: PaperWords): string {
  const nuts = fruits.filter(({ kind }) => kind === 'nut').map((fruit) => lower(fruit, words))
  return nuts.length > 0 ? words.label.nuts(nuts.join(', ')) : ''
}

function energyWords(liquid: Liquid, settings: Settings): string {
  const { kJ, kcal } = energyOf(liquidOf(liquid))
  const number = (value: number) =>
    new Intl.NumberFormat(settings.locale, { maximumFractionDigits: 0 })
      .format(value)
      .replaceAll('\u202f', noBreak)
  return paperWords(settings).label.energy(
    `${number(kJ)}${noBreak}kJ / ${number(kcal)}${noBreak}kcal`,
  )
}

const liquidOf = ({ strengthPctVol, sugarGPerL, acidGPerL }: Liquid) => ({
  volumeMl: 100,
  strengthPctVol,
  sugarGPerL,
  acidGPerL,
})

function drinksWords(volumeMl: number, strengthPctVol: number, settings: Settings): string {
  const { locale, units } = settings
  const say = paperWords(settings).label
  const drinks = standardDrinks({ volumeMl, strengthPctVol })
  const number = (value: number) =>
    new Intl.NumberFormat(locale, { maximumFractionDigits: 1 }).format(value)
  if (units === 'us') return say.drinksUs(number(drinks.unitedStates))
  if (/-(?:GB|IE)$/.test(locale)) return say.drinksUk(number(drinks.unitedKingdom))
  return say.drinks(number(drinks.australia))
}

/** Short; what the library says at length belongs to the making. */
function cautionWords(fruits: readonly Fruit[], { label: say }: PaperWords): string {
  const isStony = fruits.some(({ kind }) => kind === 'stoneFruit' || kind === 'drupe')
  return [...(isStony ? [say.stones] : []), say.children].join(' ')
}
