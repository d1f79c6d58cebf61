/** The one way the engine refuses a number: it names the quantity, its value, and the range. */
import { DomainError } from './domain-error.ts'

/** Amounts that subtraction leaves below zero by less than this, in grams, count as nothing. */
const roundingG = 1e-6

/** A million tonnes: no cellar has it, and sums of such masses are still finite. */
export const greatestMassG = 1e12
export const greatestVolumeMl = 1e12

/** NaN and the infinities are in no range. */
export function requireRange(
  quantity: string,
  value: number,
  low: number,
  high: number,
  unit: string,
): void {
  if (value >= low && value <= high) return
  refuse(quantity, value, low, high, unit, `must be ${low} to ${high} ${unit}`)
}

export function requirePositive(quantity: string, value: number, high: number, unit: string): void {
  if (value > 0 && value <= high) return
  refuse(quantity, value, 0, high, unit, `must be above 0, to ${high} ${unit}`)
}

/** A mass of zero or more, forgiving what rounding leaves below zero. */
export function requireMass(quantity: string, massG: number): number {
  if (massG < 0 && massG > -roundingG) return 0
  requireRange(quantity, massG, 0, greatestMassG, 'g')
  return massG
}

function refuse(
  quantity: string,
  value: number,
  low: number,
  high: number,
  unit: string,
  rule: string,
): never {
  const details = { quantity, value, low, high, unit }
  throw new DomainError('outOfRange', `${quantity} is ${value} ${unit}, ${rule}`, details)
}
