/** Where the words on screen come from; `useWords` looks them up. */
import { createInstance } from 'i18next'
import { initReactI18next } from 'react-i18next'
import { en } from './en.ts'

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
