/**
 * Formatters by locale and options, each made once: making one takes fifty times as long as using
 * it, and a screen that follows a slider formats a hundred numbers between two frames.
 *
 * Digits follow the locale alone. What is made of words (months, "3 weeks", "a, b and c") is in the
 * language spoken, or a Polish sentence would have English months in it.
 */
import { wordsLocaleOf } from '../../../shared/language.ts'
import { spokenLanguage } from '../../app/words/spoken.ts'

type Maker<Options extends object, Formatter> = new (locale: string, options?: Options) => Formatter

function keptBy<Options extends object, Formatter>(make: Maker<Options, Formatter>) {
  const known = new Map<string, Formatter>()
  return (locale: string, options?: Options): Formatter => {
    const key = `${locale} ${options ? JSON.stringify(options) : ''}`
    const before = known.get(key)
    if (before) return before
    const formatter = new make(locale, options)
    known.set(key, formatter)
    return formatter
  }
}

const spoken = (locale: string): string => wordsLocaleOf(spokenLanguage(), locale)

const numbers = keptBy<Intl.NumberFormatOptions, Intl.NumberFormat>(Intl.NumberFormat)
const dates = keptBy<Intl.DateTimeFormatOptions, Intl.DateTimeFormat>(Intl.DateTimeFormat)
const lists = keptBy<Intl.ListFormatOptions, Intl.ListFormat>(Intl.ListFormat)
const relativeTimes = keptBy<Intl.RelativeTimeFormatOptions, Intl.RelativeTimeFormat>(
  Intl.RelativeTimeFormat,
)
const collators = keptBy<Intl.CollatorOptions, Intl.Collator>(Intl.Collator)

export const numberFormat = (locale: string, options?: Intl.NumberFormatOptions) =>
  numbers(options?.style === 'unit' ? spoken(locale) : locale, options)

export const dateFormat = (locale: string, options?: Intl.DateTimeFormatOptions) =>
  dates(spoken(locale), options)

/**
 * A month after a preposition, as in "until May 2030". Polish bends its name as it does within a date
 * ("do maja"), and only the long names show it.
 */
export function monthPhrase(
  locale: string,
  options: Pick<Intl.DateTimeFormatOptions, 'month' | 'year'>,
) {
  if (spokenLanguage() !== 'pl')
    return (day: Date | number) => dateFormat(locale, options).format(day)
  const whole = dateFormat(locale, { ...options, day: 'numeric', month: 'long' })
  return (day: Date | number): string =>
    whole
      .formatToParts(day)
      .filter(({ type }) => type === 'month' || type === 'year')
      .map(({ value }) => value)
      .join('\u00a0')
}

export const listFormat = (locale: string, options?: Intl.ListFormatOptions) =>
  lists(spoken(locale), options)

export const relativeTimeFormat = (locale: string, options?: Intl.RelativeTimeFormatOptions) =>
  relativeTimes(spoken(locale), options)

/** Names in the order of the locale, and in the number that they end in. */
export const collatorOf = (locale: string): Intl.Collator => collators(locale, { numeric: true })
