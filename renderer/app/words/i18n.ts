/** Where the words on screen come from; `useWords` looks them up. */
import { languageOf, type Language } from '../../../shared/language.ts'
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
const further: Readonly<Record<Exclude<Language, 'en'>, () => Promise<Further>>> = {
  pl: async () => {
    const { pl, inPolish } = await import('./pl.ts')
    return { words: pl, sayLibrary: inPolish }
  },
}

interface Further {
  readonly words: object
  /** The library's own sentences come in English from the service. */
  readonly sayLibrary: (text: string) => string
}

const libraries = new Map<Language, Further['sayLibrary']>()

/** Facts, cautions and explanations of the program's library, which are English where they come from. */
export const sayLibraryIn = (language: Language): Further['sayLibrary'] =>
  libraries.get(language) ?? asItIs

const asItIs = (text: string): string => text

let wanted: Language = 'en'

/** Puts the window into a language; of two asked for in a row the later one stays. */
export async function speak(language: Language): Promise<void> {
  wanted = language
  if (language !== 'en' && !i18n.hasResourceBundle(language, 'words')) {
    const { words, sayLibrary } = await further[language]()
    i18n.addResourceBundle(language, 'words', words)
    libraries.set(language, sayLibrary)
  }
  if (wanted !== language) return
  // Before whoever listens is told.
  setSpokenLanguage(language)
  await i18n.changeLanguage(language)
  document.documentElement.lang = language
}

/** Until a cellar says otherwise. */
export const guessedLanguage = (): Language => languageOf(navigator.language)
