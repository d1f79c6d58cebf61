/** How this cellar is read: locale, units, currency, for every part that shows a number. */
import { createContext, use, type ReactNode } from 'react'
import { I18nProvider } from 'react-aria-components'
import type { Settings } from '../../shared/channels.ts'

export const usualSettings: Settings = {
  locale: 'en-GB',
  units: 'metric',
  theme: 'system',
  currency: 'EUR',
}

const SettingsContext = createContext<Settings>(usualSettings)

export const useSettings = (): Settings => use(SettingsContext)

/** A book may carry a locale that this machine can't read; that must not keep it shut. */
function readable(settings: Settings): Settings {
  try {
    Intl.getCanonicalLocales(settings.locale)
    return settings
  } catch {
    return { ...settings, locale: usualSettings.locale }
  }
}

export function SettingsProvider({
  settings,
  children,
}: {
  settings: Settings
  children: ReactNode
}) {
  const shown = readable(settings)
  return (
    <SettingsContext value={shown}>
      <I18nProvider locale={shown.locale}>{children}</I18nProvider>
    </SettingsContext>
  )
}
