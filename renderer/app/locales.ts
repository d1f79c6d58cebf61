/** The languages, locales and currencies to choose from; locales are shown by an example in each. */
import type { Language } from '../../shared/language.ts'
import { numberFormat } from '../parts/formatters/formatters.ts'

/** Each by its own name, for whoever is lost in another. */
export const languages: readonly { value: Language; label: string }[] = [
  { value: 'en', label: 'English' },
  { value: 'pl', label: 'Polski' },
]

export const locales = [
  'en-GB',
  'en-IE',
  'en-US',
  'en-CA',
  'en-AU',
  'pl-PL',
  'cs-CZ',
  'de-DE',
  'fr-FR',
  'it-IT',
  'es-ES',
] as const

export const currencies = ['EUR', 'GBP', 'USD', 'CAD', 'AUD', 'PLN', 'CZK', 'CHF', 'SEK'] as const

/** "Polish (Poland): 1 234,5 · 25.11.2026" as the locale itself writes it. */
export function exampleOf(locale: string, displayLanguage: string): string {
  const name = new Intl.DisplayNames(displayLanguage, { type: 'language' }).of(locale) ?? locale
  const number = numberFormat(locale).format(12_345.6)
  // In figures, so that the language spoken has no say in it.
  const date = new Intl.DateTimeFormat(locale).format(new Date(2026, 10, 25))
  return `${name}: ${number} · ${date}`
}

/** The choices, with the one in use added when it is another. */
export const withCurrent = (choices: readonly string[], current: string): readonly string[] =>
  choices.includes(current) ? choices : [current, ...choices]
