/**
 * How sure is a calculated number, when the numbers it was calculated from are known only so well?
 *
 * Each input is moved up and down by its own standard uncertainty, the others held; half of what
 * that does to a result is the input's share, and the shares add as squares (central differences,
 * JCGM 100:2008, 5.1.3; inputs independent). Where a move leaves the range, the other side alone
 * is taken, or a smaller move; infinite where no move can be. In: inputs with uncertainties, 0 for exact ones; the calculation; the
 * error of the equation itself. Out: each result with one standard uncertainty.
 * A refusal of the calculation itself is thrown on. Leaves out: correlations between inputs.
 * @example propagate({ side: { value: 3, uncertainty: 0.1 } }, ({ side }) => ({ area: side ** 2 })).area.uncertainty // 0.60
 */
import { DomainError } from '../domain-error.ts'
import { rootSumSquare } from './instruments.ts'

export interface Measured {
  readonly value: number
  readonly uncertainty: number
}

export type Values<Name extends string> = Readonly<Record<Name, number>>

export function propagate<Input extends string, Output extends string>(
  inputs: Readonly<Record<Input, Measured>>,
  calculate: (values: Values<Input>) => Values<Output>,
  ownError: (found: Values<Output>) => Partial<Values<Output>> = () => ({}),
): Readonly<Record<Output, Measured>> {
  const names = Object.keys(inputs) as Input[]
  const values = mapped(names, (name) => inputs[name].value)
  const found = calculate(values)
  const moved = names
    .filter((name) => inputs[name].uncertainty > 0)
    .map((name) => effectsOf(name, inputs[name].uncertainty, values, found, calculate))
  const own = ownError(found)
  return mapped(Object.keys(found) as Output[], (output) => ({
    value: found[output],
    uncertainty: rootSumSquare(own[output] ?? 0, ...moved.map((effects) => effects[output])),
  }))
}

/** What one uncertainty of one input does to every result. */
function effectsOf<Input extends string, Output extends string>(
  name: Input,
  uncertainty: number,
  values: Values<Input>,
  found: Values<Output>,
  calculate: (values: Values<Input>) => Values<Output>,
): Values<Output> {
  for (const part of [1, 0.1, 0.01, 0.001]) {
    const step = part * uncertainty
    const above = ifPossible(() => calculate({ ...values, [name]: values[name] + step }))
    const below = ifPossible(() => calculate({ ...values, [name]: values[name] - step }))
    if (!above && !below) continue
    const [from, to, steps] = [below ?? found, above ?? found, above && below ? 2 : 1]
    return mapped(
      Object.keys(found) as Output[],
      (output) => (to[output] - from[output]) / (part * steps),
    )
  }
  // No neighbour can be: how the results would move is not known at all.
  return mapped(Object.keys(found) as Output[], () => Number.POSITIVE_INFINITY)
}

function ifPossible<Found>(calculate: () => Found): Found | undefined {
  try {
    return calculate()
  } catch (error) {
    if (error instanceof DomainError) return undefined
    throw error
  }
}

const mapped = <Name extends string, Value>(names: readonly Name[], of: (name: Name) => Value) =>
  Object.fromEntries(names.map((name) => [name, of(name)])) as Record<Name, Value>

export const exactly = (value: number): Measured => ({ value, uncertainty: 0 })

export const measured = (value: number, uncertainty: number): Measured => ({ value, uncertainty })
