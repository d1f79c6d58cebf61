/** How this cellar is read, below the words: they write their counts the way its locale does. */
import { createContext } from 'react'
import type { Settings } from '../../shared/channels.ts'

export const usualSettings: Settings = {
  locale: 'en-GB',
  units: 'metric',
  temperature: 'celsius',
  strength: 'pctVol',
  theme: 'system',
  currency: 'EUR',
  reminders: false,
}

export const SettingsContext = createContext<Settings>(usualSettings)
