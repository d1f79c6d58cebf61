/** Units, locale and currency, as the settings and the first run both ask for them. */
import { useTranslation } from 'react-i18next'
import { useWords } from './words/use-words.ts'
import type { Settings } from '../../shared/channels.ts'
import { ChoiceField } from '../parts/fields/choice-field.tsx'
import { Segments } from '../parts/fields/segments.tsx'
import { currencies, exampleOf, locales, withCurrent } from './locales.ts'

export interface SettingsFieldsProps {
  settings: Settings
  onChange: (changed: Partial<Pick<Settings, 'units' | 'locale' | 'currency'>>) => void
}

export function SettingsFields({ settings, onChange }: SettingsFieldsProps) {
  const { i18n } = useTranslation()
  const t = useWords()
  return (
    <>
      <Segments
        label={t('shell.settings.units')}
        value={settings.units}
        onChange={(units) => onChange({ units })}
        choices={(['metric', 'us'] as const).map((value) => ({
          value,
          label: t(`shell.settings.unitSystems.${value}`),
        }))}
      />
      <ChoiceField
        label={t('shell.settings.locale')}
        value={settings.locale}
        onChange={(locale) => onChange({ locale })}
        choices={withCurrent(locales, settings.locale).map((value) => ({
          value,
          label: exampleOf(value, i18n.language),
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
