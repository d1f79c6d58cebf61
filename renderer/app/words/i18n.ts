/** Where the words on screen come from; `useWords` looks them up. */
import type { Language } from '../../../shared/language.ts'
import { createInstance } from 'i18next'
import { initReactI18next } from 'react-i18next'
import { en } from './en.ts'
import { setSpokenLanguage } from './spoken.ts'

export const i18n = createInstance()

void i18n.use(initReactI18next).init({
  lng: 'en',
  fallbackLng: 'en',
  ns: ['words'],
  defaultNS: 'words',
  resources: { en: { words: en } },
  // React escapes what it shows.
  interpolation: { escapeValue: false },
  initAsync: false,
})

/** Fetched when first spoken, so that a window in English starts without them. */
const further = {
  pl: async () => (await import('./pl.ts')).pl,
} satisfies Record<Exclude<Language, 'en'>, () => Promise<object>>

let wanted: Language = 'en'

/** Puts the window into a language; of two asked for in a row the later one stays. */
export async function speak(language: Language): Promise<void> {
  wanted = language
  if (language !== 'en' && !i18n.hasResourceBundle(language, 'words'))
    i18n.addResourceBundle(language, 'words', await further[language]())
  if (wanted !== language) return
  // Before whoever listens is told.
  setSpokenLanguage(language)
  await i18n.changeLanguage(language)
  document.documentElement.lang = language
}

/** Until a cellar says otherwise: what the system speaks, as far as there are words for it. */
export const guessedLanguage = (): Language =>
  navigator.language.toLowerCase().startsWith('pl') ? 'pl' : 'en'
