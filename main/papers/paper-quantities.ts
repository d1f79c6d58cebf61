/** Amounts and days as a paper shows them: by the cellar's locale and units, no finer than a kitchen. */
import type { Settings } from '../../shared/channels.ts'
import { wordsLocaleOf } from '../../shared/language.ts'
import { paperWords } from './words/paper-words.ts'

export interface PaperQuantities {
  readonly mass: (massG: number) => string
  readonly volume: (volumeMl: number) => string
  readonly strength: (strengthPctVol: number) => string
  readonly sugar: (sugarGPerL: number) => string
  readonly money: (minor: number) => string
  readonly day: (instant: string) => string
  readonly temperature: (temperatureC: number) => string
}

const gramsPerOunce = 28.349523125
const gramsPerPound = 453.59237
const mlPerFluidOunce = 29.5735295625
const mlPerQuart = 946.352946

export function paperQuantities(settings: Settings): PaperQuantities {
  const { locale, units, currency } = settings
  const symbols = paperWords(settings).units
  const number = (value: number, digits: number) =>
    // The font has no narrow no-break space, which some locales group digits with.
    new Intl.NumberFormat(locale, { maximumFractionDigits: digits, minimumFractionDigits: digits })
      .format(value)
      .replaceAll('\u202f', '\u00a0')
  const mass = (massG: number): string => {
    if (units === 'us')
      return massG < gramsPerPound
        ? `${number(massG / gramsPerOunce, 1)} oz`
        : `${number(massG / gramsPerPound, 2)} lb`
    return massG < 1000 ? `${number(massG, 0)} g` : `${number(massG / 1000, 2)} kg`
  }
  const volume = (volumeMl: number): string => {
    if (units === 'us')
      return volumeMl < mlPerQuart
        ? `${number(volumeMl / mlPerFluidOunce, 1)} fl oz`
        : `${number(volumeMl / mlPerQuart, 2)} qt`
    return volumeMl < 1000
      ? `${number(volumeMl, 0)} ml`
      : `${number(volumeMl / 1000, 2)} ${symbols.L}`
  }
  const money = new Intl.NumberFormat(locale, { style: 'currency', currency })
  const minorDigits = money.resolvedOptions().maximumFractionDigits ?? 2
  const day = new Intl.DateTimeFormat(wordsLocaleOf(settings.language ?? 'en', locale), {
    dateStyle: 'medium',
    timeZone: 'UTC',
  })
  return {
    mass,
    volume,
    strength: (strengthPctVol) =>
      settings.strength === 'proof'
        ? `${number(2 * strengthPctVol, 1)} proof`
        : `${number(strengthPctVol, 1)} ${symbols.pctVol.replace(' ', '\u00a0')}`,
    sugar: (sugarGPerL) => `${number(sugarGPerL, 0)} ${symbols.gPerL}`,
    temperature: (temperatureC) =>
      settings.temperature === 'fahrenheit'
        ? `${number(1.8 * temperatureC + 32, 0)} °F`
        : `${number(temperatureC, 0)} °C`,
    money: (minor) => money.format(minor / 10 ** minorDigits).replaceAll('\u202f', '\u00a0'),
    day: (instant) => day.format(new Date(instant)).replaceAll('\u202f', '\u00a0'),
  }
}
