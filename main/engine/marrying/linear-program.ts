/** A linear program as data: the engine writes it, whoever owns the solver solves it. */

export interface Variable {
  readonly low: number
  readonly high: number
  /** Only whole numbers, such as bottles. */
  readonly isWhole: boolean
}

export type Terms = readonly (readonly [variable: number, coefficient: number])[]

export interface Row {
  readonly terms: Terms
  readonly low: number
  readonly high: number
}

export interface LinearProgram {
  readonly variables: readonly Variable[]
  readonly rows: readonly Row[]
  readonly minimise: Terms
}

/** The variables' values at the least of what is minimised; undefined when nothing fits. */
export type SolveLinear = (program: LinearProgram) => readonly number[] | undefined

/** A whole number a hair below itself by rounding is that number. */
const hair = 1e-6

export class ProgramBuilder {
  readonly variables: Variable[] = []
  readonly rows: Row[] = []

  variable(low = 0, high = Number.POSITIVE_INFINITY, isWhole = false): number {
    this.variables.push({ low, high, isWhole })
    return this.variables.length - 1
  }

  atLeast(terms: Terms, low: number): void {
    this.rows.push({ terms, low, high: Number.POSITIVE_INFINITY })
  }

  atMost(terms: Terms, high: number): void {
    this.rows.push({ terms, low: Number.NEGATIVE_INFINITY, high })
  }

  equal(terms: Terms, value: number): void {
    this.rows.push({ terms, low: value, high: value })
  }

  /** From now on so many whole ones: settled, they need no more searching. */
  settle(variable: number, value: number): void {
    const whole = Math.floor(value + hair)
    this.variables[variable] = { low: whole, high: whole, isWhole: false }
  }

  minimising(minimise: Terms): LinearProgram {
    return { variables: [...this.variables], rows: [...this.rows], minimise }
  }
}

export const valueOf = (terms: Terms, values: readonly number[]): number =>
  terms.reduce((sum, [variable, coefficient]) => sum + coefficient * (values[variable] ?? 0), 0)

export interface Stage {
  readonly aim: Terms
  /** What later stages may not make greater; the aim itself when left out. */
  readonly keeps?: readonly Terms[]
  /** Variables of which the whole part stays as this stage leaves them. */
  readonly settles?: readonly number[]
}

/**
 * Solves for one aim after another: each is made as small as the ones before it allow. The slack
 * lets rounding through; undefined when nothing fits at all.
 */
export function solveInOrder(
  program: ProgramBuilder,
  stages: readonly Stage[],
  solve: SolveLinear,
  slack: number,
): readonly number[] | undefined {
  let values: readonly number[] | undefined
  for (const { aim, keeps = [aim], settles = [] } of stages) {
    const next = solve(program.minimising(aim))
    // A later aim that fails by rounding leaves the earlier answer standing.
    if (!next) return values
    values = next
    for (const kept of keeps) program.atMost(kept, valueOf(kept, next) + slack)
    for (const variable of settles) program.settle(variable, next[variable] ?? 0)
  }
  return values
}
