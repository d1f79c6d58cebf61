/** What the physics refuses, in words: which quantity, its value, and what it must lie between. */
import { useWords } from '../../app/words/use-words.ts'
import type { codes } from '../../app/words/en/codes.ts'
import type { ErrorReply } from '../../../shared/schemas/errors.ts'
import { useSettings } from '../../app/settings.tsx'
import type { Dimension } from '../quantity/units.ts'
import { useQuantities } from '../quantity/use-quantities.ts'
import { numberFormat } from '../formatters/formatters.ts'

type Limited = keyof typeof codes.limited

/** The engine's own names for quantities. */
const limitedBy: Readonly<Record<string, Limited>> = {
  temperature: 'temperature',
  'temperature of the prism': 'temperature',
  'temperature of syrup': 'temperature',
  'temperature of water': 'waterTemperature',
  'graduation temperature': 'graduation',
  strength: 'strength',
  'target strength': 'targetStrength',
  sugar: 'sugar',
  'target sugar': 'targetSugar',
  acid: 'acid',
  volume: 'volume',
  mass: 'mass',
  proof: 'proof',
  density: 'density',
  'density before': 'densityBefore',
  'density after': 'densityAfter',
  'density of spirit': 'densityOfSpirit',
  'density of syrup': 'densityOfSyrup',
  'hydrometer reading': 'hydrometer',
  'alcoholometer reading': 'alcoholometer',
  'refractometer reading': 'refractometer',
}

const dimensionOf: Readonly<Record<string, Dimension>> = {
  '°C': 'temperature',
  '% vol': 'strength',
  'g/L': 'sugar',
  'kg/m³': 'density',
  '°Bx': 'brix',
  mL: 'volume',
  g: 'mass',
}

export function useLimitWords(): (details: ErrorReply['details']) => string {
  const t = useWords()
  const { locale } = useSettings()
  const quantities = useQuantities()
  const amount = (value: unknown, unit: string) => {
    if (typeof value !== 'number') return '–'
    const dimension = dimensionOf[unit]
    if (dimension) return quantities.text(value, dimension)
    const number = numberFormat(locale, { maximumSignificantDigits: 5 }).format(value)
    return unit === 'proof' ? `${number}\u00a0${unit}` : number
  }
  return ({ quantity, value, low, high, unit }) => {
    const symbol = typeof unit === 'string' ? unit : ''
    const limited = limitedBy[String(quantity)]
    return t('codes.error.outOfRange', {
      quantity: limited ? t(`codes.limited.${limited}`) : String(quantity),
      value: amount(value, symbol),
      low: amount(low, symbol),
      high: amount(high, symbol),
    })
  }
}

/** Numbers that no mixture of spirit, water and sugar has together, and by how much they miss. */
export function useMixtureWords(): (details: ErrorReply['details']) => string {
  const t = useWords()
  const quantities = useQuantities()
  return (details) => {
    const number = (name: string) => {
      const value = details[name]
      return typeof value === 'number' ? value : undefined
    }
    const excess = number('excessKgPerM3')
    if (excess !== undefined)
      return t('codes.mixture.densities', { by: quantities.text(excess, 'density') })
    const [shown, nearest] = [number('brixReading'), number('nearestBrix')]
    if (shown !== undefined && nearest !== undefined)
      return t('codes.mixture.refraction', {
        nearest: quantities.text(nearest, 'brix'),
        by: quantities.text(Math.abs(shown - nearest), 'brix'),
      })
    const overflow = number('overflowMlPerL')
    if (overflow !== undefined)
      return t('codes.mixture.overflow', { by: quantities.text(overflow, 'volume') })
    return t('codes.mixture.other')
  }
}
