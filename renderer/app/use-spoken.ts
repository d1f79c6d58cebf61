/** Keeps the window in the cellar's language; a cellar that never chose one keeps the first guess. */
import { useEffect, useState } from 'react'
import type { Settings } from '../../shared/channels.ts'
import { wordsLocaleOf } from '../../shared/language.ts'
import { useWrite } from './queries.ts'
import { guessedLanguage, speak } from './words/i18n.ts'
import { useLanguage } from './words/use-words.ts'

/** True once the words are there; a window that speaks stays up while another language comes. */
export function useSpoken(settings: Pick<Settings, 'language' | 'locale'> | undefined): boolean {
  const spoken = useLanguage()
  const [isHeard, setHeard] = useState(false)
  const { mutate: keep } = useWrite('cellar.changeSettings')
  const language = settings && (settings.language ?? guessedLanguage())
  const guess = language && settings?.language === undefined ? language : undefined
  const locale = settings?.locale
  useEffect(() => {
    if (!language) return
    // Where the words cannot be had, those that are there must do.
    void speak(language)
      .catch(() => undefined)
      .finally(() => setHeard(true))
  }, [language])
  useEffect(() => {
    if (guess && locale) keep({ language: guess, locale: wordsLocaleOf(guess, locale) })
  }, [guess, locale, keep])
  return isHeard || language === undefined || spoken === language
}
