/** The languages of the words, on screens and papers. How digits are written is the locale's. */
import * as z from 'zod'

export const Language = z.enum(['en', 'pl'])
export type Language = z.infer<typeof Language>

/** What a system speaks, as far as there are words for it. */
export const languageOf = (locale: string): Language =>
  locale.toLowerCase().startsWith('pl') ? 'pl' : 'en'

const usualLocale: Readonly<Record<Language, string>> = { en: 'en-GB', pl: 'pl-PL' }

/**
 * Where words are made by a formatter (months, "3 weeks", "a, b and c"): the locale where it is of
 * the language spoken, else that language's usual one. A Polish sentence must not have English
 * months in it.
 */
export const wordsLocaleOf = (language: Language, locale: string): string =>
  locale.split('-')[0] === language ? locale : usualLocale[language]
