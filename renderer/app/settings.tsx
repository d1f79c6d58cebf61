/** How this cellar is read: locale, units, currency, for every part that shows a number. */
import { use, useMemo, type ReactNode } from 'react'
import { I18nProvider } from 'react-aria-components'
import type { Settings } from '../../shared/channels.ts'
import { wordsLocaleOf } from '../../shared/language.ts'
import { SettingsContext } from './settings-context.ts'
import { useLanguage } from './words/use-words.ts'

/** For what is kept while nothing changes: another language is another locale to it. */
export function useWordsLocale(): string {
  const { locale } = use(SettingsContext)
  return wordsLocaleOf(useLanguage(), locale)
}

export const useSettings = (): Settings => use(SettingsContext)

export function SettingsProvider({
  settings,
  children,
}: {
  settings: Settings
  children: ReactNode
}) {
  const language = useLanguage()
  // What is spoken, also while the cellar has not chosen or its words are on their way.
  const shown = useMemo(() => ({ ...settings, language }), [settings, language])
  const locale = wordsLocaleOf(language, settings.locale)
  return (
    <SettingsContext value={shown}>
      <I18nProvider locale={locale}>{children}</I18nProvider>
    </SettingsContext>
  )
}
