/** In what a line is counted, and how fine a shop weighs it. */
import type { UnitSystem } from '../../../parts/quantity/units.ts'
import type { PurchaseLine } from '../../../../shared/schemas/season.ts'

export interface AmountField {
  readonly name: 'massG' | 'volumeMl' | 'count'
  readonly dimension: 'mass' | 'volume' | 'count'
  readonly unit: Readonly<Record<UnitSystem, string | undefined>>
}

const fields: Readonly<Record<AmountField['name'], AmountField>> = {
  massG: { name: 'massG', dimension: 'mass', unit: { metric: 'kg', us: 'lb' } },
  volumeMl: { name: 'volumeMl', dimension: 'volume', unit: { metric: 'L', us: 'quart' } },
  count: {
    name: 'count',
    dimension: 'count',
    unit: { metric: undefined, us: undefined },
  },
}

export const fieldOf = ({ massG, count }: PurchaseLine): AmountField =>
  fields[count === undefined ? (massG === undefined ? 'volumeMl' : 'massG') : 'count']

/** To ten grams or millilitres, an ounce's half, or a whole piece, as a field shows it. */
export function roundedForShop(value: number, { name }: AmountField, units: UnitSystem): number {
  if (name === 'count') return Math.ceil(value)
  const step = units === 'us' ? (name === 'massG' ? 453.59237 / 32 : 946.352946 / 32) : 10
  return Math.max(step, Math.round(value / step) * step)
}
