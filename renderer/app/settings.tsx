/** How this cellar is read: locale, units, currency, for every part that shows a number. */
import { createContext, use, type ReactNode } from 'react'
import { I18nProvider } from 'react-aria-components'
import type { Settings } from '../../shared/channels.ts'

export const usualSettings: Settings = {
  locale: 'en-GB',
  units: 'metric',
  temperature: 'celsius',
  strength: 'pctVol',
  language: 'en',
  theme: 'system',
  currency: 'EUR',
  reminders: false,
}

const SettingsContext = createContext<Settings>(usualSettings)

export const useSettings = (): Settings => use(SettingsContext)

export function SettingsProvider({
  settings,
  children,
}: {
  settings: Settings
  children: ReactNode
}) {
  return (
    <SettingsContext value={settings}>
      <I18nProvider locale={settings.locale}>{children}</I18nProvider>
    </SettingsContext>
  )
}
