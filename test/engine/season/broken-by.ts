import { valueOf, type LinearProgram } from '../../../main/engine/marrying/linear-program.ts'

/** Where values break the program: bounds, whole numbers, rows. */
export function brokenBy({ variables, rows }: LinearProgram, values: readonly number[]): string[] {
  return [
    ...variables.flatMap(({ low, high, isWhole }, index) => {
      const value = values[index]!
      const isBroken = outside(value, low, high) || (isWhole && !Number.isInteger(value))
      return isBroken ? [`variable ${index} is ${value}, not from ${low} to ${high}`] : []
    }),
    ...rows.flatMap(({ terms, low, high }, index) => {
      const value = valueOf(terms, values)
      return outside(value, low, high) ? [`row ${index} is ${value}, not ${low} to ${high}`] : []
    }),
  ]
}

const outside = (value: number, low: number, high: number): boolean =>
  value < low - 1e-6 || value > high + 1e-6
