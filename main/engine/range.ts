/** The one way the engine refuses a number: it names the quantity, its value, and the range. */
import { DomainError } from './domain-error.ts'

/** Amounts that subtraction leaves below zero by less than this, in grams, count as nothing. */
const roundingG = 1e-6

/** A million tonnes: no cellar has it, and sums of such masses are still finite. */
export const greatestMassG = 1e12
export const greatestVolumeMl = 1e12

/** NaN and the infinities are in no range. `where` narrows the quantity down, such as ' at 5 °C'. */
export function requireRange(
  quantity: string,
  value: number,
  low: number,
  high: number,
  unit: string,
  where = '',
): void {
  if (value >= low && value <= high) return
  const range = `must be ${brief(low)} to ${brief(high)} ${unit}`
  refuse({ quantity, value, low, high, unit }, where, range)
}

export function requirePositive(quantity: string, value: number, high: number, unit: string): void {
  if (value > 0 && value <= high) return
  refuse({ quantity, value, low: 0, high, unit }, '', `must be above 0, to ${high} ${unit}`)
}

/** A mass of zero or more, forgiving what rounding leaves below zero. */
export function requireMass(quantity: string, massG: number): number {
  if (massG < 0 && massG > -roundingG) return 0
  requireRange(quantity, massG, 0, greatestMassG, 'g')
  return massG
}

interface Refused {
  readonly quantity: string
  readonly value: number
  readonly low: number
  readonly high: number
  readonly unit: string
}

function refuse(refused: Refused, where: string, rule: string): never {
  const { quantity, value, unit } = refused
  const message = `${quantity}${where} is ${brief(value)} ${unit}, ${rule}`
  throw new DomainError('outOfRange', message, { ...refused })
}

const brief = (value: number): number => Number(value.toPrecision(7))
