/**
 * Which numbers, within bounds, bring the residuals nearest to zero?
 *
 * Method: Levenberg 1944 and Marquardt 1963, normal equations with numerical derivatives that each
 * step corrects (Broyden 1965), steps cut back to the bounds, the numbers at a bound held meanwhile.
 * A pull towards the start decides between answers that fit equally well, or says how far the start
 * is believed. Deterministic.
 * In: residuals as multiples of what is tolerated, start, bounds, pulls, when to stop. Out: the
 * numbers, and the residuals there; they are not zero where the bounds forbid it.
 * Leaves out: global search: it finds the answer nearest to the start.
 * @example leastSquares({ residualsAt: ([x]) => [x - 2], start: [0], low: [0], high: [9], pull: [0] }).x[0] // 2
 */
export interface Fitting {
  readonly residualsAt: (x: readonly number[]) => number[]
  readonly start: readonly number[]
  readonly low: readonly number[]
  readonly high: readonly number[]
  /** Residual that a number adds by being one away from its start. */
  readonly pull: readonly number[]
  /** By how much a number is changed to see what that does; left out, by a little of itself. */
  readonly nudge?: number
  readonly stop?: Stop
}

/** When the answer is good enough. */
export interface Stop {
  /** Residuals below this are met; what is tolerated is 1. */
  readonly met: number
  /** A step that gains less, as a share, says that there is no better answer. */
  readonly gain: number
  /** Nor does a step that moves the numbers by less. */
  readonly move: number
}

export interface Fitted {
  readonly x: readonly number[]
  readonly residuals: readonly number[]
}

const mostIterations = 60
const leastDamping = 1e-9
const mostDamping = 1e4
/** Less changes no step that anybody could see. */
const firstDamping = 1e-3
const derivativeStep = 1e-4
/** For wishes: nobody tells the difference. */
const usualStop: Stop = { met: 0.3, gain: 1e-3, move: 0 }

export function leastSquares(fitting: Fitting): Fitted {
  const { residualsAt, start, low, high, pull, stop = usualStop } = fitting
  const clip = (x: readonly number[]) =>
    x.map((value, i) => Math.min(high[i] as number, Math.max(low[i] as number, value)))
  const pullsAt = (x: readonly number[]) =>
    x.map((value, i) => (pull[i] as number) * (value - (start[i] as number)))
  const costOf = (residuals: readonly number[], x: readonly number[]) =>
    squares(residuals) + squares(pullsAt(x))

  const fresh = (x: readonly number[], residuals: readonly number[]) =>
    slopesAt(fitting, x, residuals)

  let x = clip(start)
  let residuals = residualsAt(x)
  let cost = costOf(residuals, x)
  let damping = leastDamping
  let slopes = fresh(x, residuals)
  let isFresh = true
  for (let iteration = 0; iteration < mostIterations; iteration += 1) {
    if (residuals.every((residual) => Math.abs(residual) < stop.met)) break
    const next = stepFrom({ x, residuals, slopes, pulls: pullsAt(x), pull, low, high, damping })
    if (distance(next, x) < stop.move && isFresh) break
    const nextResiduals = residualsAt(next)
    const nextCost = costOf(nextResiduals, next)
    const gain = cost - nextCost
    if (gain > stop.gain * cost) {
      slopes = learned(slopes, x, next, residuals, nextResiduals)
      ;[x, residuals, cost] = [next, nextResiduals, nextCost]
      damping = Math.max(leastDamping, damping / 10)
      isFresh = false
    } else if (!isFresh) {
      slopes = fresh(x, residuals)
      isFresh = true
    } else if (gain > 0 || damping > mostDamping) break
    else damping = Math.max(firstDamping, 10 * damping)
  }
  return { x, residuals }
}

/** What a step showed of the slopes costs nothing more (Broyden 1965). */
function learned(
  slopes: readonly (readonly number[])[],
  x: readonly number[],
  next: readonly number[],
  residuals: readonly number[],
  nextResiduals: readonly number[],
): number[][] {
  const step = next.map((value, i) => value - (x[i] as number))
  const length = squares(step)
  const surprise = residuals.map((residual, row) => {
    const foreseen = slopes.reduce(
      (sum, slope, i) => sum + (slope[row] as number) * (step[i] as number),
      residual,
    )
    return ((nextResiduals[row] as number) - foreseen) / length
  })
  return slopes.map((slope, i) =>
    slope.map((value, row) => value + (surprise[row] as number) * (step[i] as number)),
  )
}

const distance = (a: readonly number[], b: readonly number[]) =>
  Math.hypot(...a.map((value, i) => value - (b[i] as number)))

const squares = (values: readonly number[]) => values.reduce((sum, value) => sum + value * value, 0)

/** One row for each number: how the residuals change with it. */
export function slopesAt(
  { residualsAt, low, high, nudge }: Omit<Fitting, 'start' | 'pull' | 'stop'>,
  x: readonly number[],
  residuals: readonly number[],
): number[][] {
  return x.map((value, i) => {
    const size = nudge ?? derivativeStep * Math.max(0.1, Math.abs(value))
    const room = (high[i] as number) - value
    if (room <= 0 && value - (low[i] as number) <= 0) return residuals.map(() => 0)
    const step = room > size ? size : -size
    const shifted = residualsAt(x.map((other, j) => (j === i ? value + step : other)))
    return shifted.map((residual, row) => (residual - (residuals[row] as number)) / step)
  })
}

interface Stepping {
  readonly x: readonly number[]
  readonly residuals: readonly number[]
  readonly slopes: readonly (readonly number[])[]
  readonly pulls: readonly number[]
  readonly pull: readonly number[]
  readonly low: readonly number[]
  readonly high: readonly number[]
  readonly damping: number
}

/** A damped step; what would leave its bounds stops there, and the rest is solved again. */
function stepFrom(at: Stepping): number[] {
  const next = [...at.x]
  let free = at.x.map((_, i) => i).filter((i) => (at.low[i] as number) < (at.high[i] as number))
  for (;;) {
    const held = at.x.map((value, i) => (free.includes(i) ? 0 : (next[i] as number) - value))
    const step = freeStep(at, free, held)
    const stopped = free.filter((i, k) => {
      const value = (at.x[i] as number) + (step[k] as number)
      return value < (at.low[i] as number) || value > (at.high[i] as number)
    })
    free.forEach((i, k) => {
      const value = (at.x[i] as number) + (step[k] as number)
      next[i] = Math.min(at.high[i] as number, Math.max(at.low[i] as number, value))
    })
    if (stopped.length === 0) return next
    free = free.filter((i) => !stopped.includes(i))
    if (free.length === 0) return next
  }
}

/** The normal equations of the free numbers, the held ones having moved by `held`. */
function freeStep(at: Stepping, free: readonly number[], held: readonly number[]): number[] {
  const { slopes, residuals, pull, pulls, damping } = at
  const moved = residuals.map((residual, row) =>
    held.reduce((sum, step, i) => sum + step * (slopes[i]?.[row] as number), residual),
  )
  const matrix = free.map((i) =>
    free.map((j) => {
      const sum = residuals.reduce(
        (total, _, row) => total + (slopes[i]?.[row] as number) * (slopes[j]?.[row] as number),
        0,
      )
      if (i !== j) return sum
      const whole = sum + (pull[i] as number) ** 2
      return whole * (1 + damping) + 1e-12
    }),
  )
  const right = free.map(
    (i) =>
      -moved.reduce((sum, residual, row) => sum + residual * (slopes[i]?.[row] as number), 0) -
      (pull[i] as number) * (pulls[i] as number),
  )
  return solveLinear(matrix, right)
}

/** Gauss with the largest pivot; the matrix is small and positive definite. */
function solveLinear(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i] as number])
  const size = rows.length
  for (let column = 0; column < size; column += 1) {
    let best = column
    for (let i = column + 1; i < size; i += 1)
      if (Math.abs(rows[i]?.[column] as number) > Math.abs(rows[best]?.[column] as number)) best = i
    const pivot = rows[best] as number[]
    rows[best] = rows[column] as number[]
    rows[column] = pivot
    for (let i = column + 1; i < size; i += 1) {
      const row = rows[i] as number[]
      const factor = (row[column] as number) / (pivot[column] as number)
      for (let j = column; j <= size; j += 1)
        row[j] = (row[j] as number) - factor * (pivot[j] as number)
    }
  }
  const solution = Array.from({ length: size }, () => 0)
  for (let i = size - 1; i >= 0; i -= 1) {
    const row = rows[i] as number[]
    let sum = row[size] as number
    for (let j = i + 1; j < size; j += 1) sum -= (row[j] as number) * (solution[j] as number)
    solution[i] = sum / (row[i] as number)
  }
  return solution
}
