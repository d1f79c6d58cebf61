/** Language, units, locale and currency, as the settings and the first run both ask for them. */
import type { Settings } from '../../shared/channels.ts'
import { ChoiceField } from '../parts/fields/choice-field.tsx'
import { Segments } from '../parts/fields/segments.tsx'
import { wordsLocaleOf } from '../../shared/language.ts'
import { currencies, exampleOf, languages, locales, withCurrent } from './locales.ts'
import { useLanguage, useWords } from './words/use-words.ts'

export type Measures = Pick<
  Settings,
  'language' | 'units' | 'temperature' | 'strength' | 'locale' | 'currency'
>

export interface SettingsFieldsProps {
  settings: Settings
  onChange: (changed: Partial<Measures>) => void
}

export function SettingsFields({ settings, onChange }: SettingsFieldsProps) {
  const spoken = useLanguage()
  const t = useWords()
  return (
    <>
      <Segments
        label={t('shell.settings.language')}
        value={settings.language ?? spoken}
        onChange={(language) =>
          // Numbers and dates go with the words, unless they already are of that language.
          onChange({ language, locale: wordsLocaleOf(language, settings.locale) })
        }
        choices={languages}
      />
      <Segments
        label={t('shell.settings.units')}
        value={settings.units}
        onChange={(units) =>
          // What is usual with it; each can be chosen otherwise.
          onChange({ units, temperature: units === 'us' ? 'fahrenheit' : 'celsius' })
        }
        choices={(['metric', 'us'] as const).map((value) => ({
          value,
          label: t(`shell.settings.unitSystems.${value}`),
        }))}
      />
      <Segments
        label={t('shell.settings.temperature')}
        value={settings.temperature}
        onChange={(temperature) => onChange({ temperature })}
        choices={(['celsius', 'fahrenheit'] as const).map((value) => ({
          value,
          label: t(`shell.settings.temperatures.${value}`),
        }))}
      />
      <Segments
        label={t('shell.settings.strength')}
        value={settings.strength}
        onChange={(strength) => onChange({ strength })}
        choices={(['pctVol', 'proof'] as const).map((value) => ({
          value,
          label: t(`shell.settings.strengths.${value}`),
        }))}
      />
      <ChoiceField
        label={t('shell.settings.locale')}
        value={settings.locale}
        onChange={(locale) => onChange({ locale })}
        choices={withCurrent(locales, settings.locale).map((value) => ({
          value,
          label: exampleOf(value, spoken),
        }))}
      />
      <ChoiceField
        label={t('shell.settings.currency')}
        value={settings.currency}
        onChange={(currency) => onChange({ currency })}
        choices={withCurrent(currencies, settings.currency).map((value) => ({
          value,
          label: value,
        }))}
      />
    </>
  )
}
