/** Amounts and days as a paper shows them: by the cellar's locale and units, no finer than a kitchen. */
import type { Settings } from '../../shared/channels.ts'

export interface PaperQuantities {
  readonly mass: (massG: number) => string
  readonly volume: (volumeMl: number) => string
  readonly strength: (strengthPctVol: number) => string
  readonly sugar: (sugarGPerL: number) => string
  readonly money: (minor: number) => string
  readonly day: (instant: string) => string
}

const gramsPerOunce = 28.349523125
const gramsPerPound = 453.59237
const mlPerFluidOunce = 29.5735295625
const mlPerQuart = 946.352946

export function paperQuantities({ locale, units, currency }: Settings): PaperQuantities {
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
    return volumeMl < 1000 ? `${number(volumeMl, 0)} mL` : `${number(volumeMl / 1000, 2)} L`
  }
  const money = new Intl.NumberFormat(locale, { style: 'currency', currency })
  const minorDigits = money.resolvedOptions().maximumFractionDigits ?? 2
  const day = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' })
  return {
    mass,
    volume,
    strength: (strengthPctVol) => `${number(strengthPctVol, 1)} %\u00a0vol`,
    sugar: (sugarGPerL) => `${number(sugarGPerL, 0)} g/L`,
    money: (minor) => money.format(minor / 10 ** minorDigits).replaceAll('\u202f', '\u00a0'),
    day: (instant) => day.format(new Date(instant)).replaceAll('\u202f', '\u00a0'),
  }
}
