/**
 * Where does a continuous function cross zero between two points where its signs differ?
 *
 * Chandrupatla's method (1997): inverse quadratic steps where they can be trusted, else halving,
 * so it is fast on smooth functions and never leaves the bracket.
 * In: the function, the two ends. Out: the crossing, to the tolerance in x. RangeError when both
 * ends have the same sign. Leaves out: further crossings between the ends.
 * @example rootBetween((x) => x * x - 2, 0, 2) // 1.414214
 */
export function rootBetween(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance = 1e-12,
): number {
  let [a, b, c] = [low, high, high]
  let [fa, fb, fc] = [f(low), f(high), 0]
  if (fa === 0) return a
  if (fb === 0) return b
  if (!(fa < 0 !== fb < 0)) throw new RangeError(`no root between ${low} and ${high}`)
  let share = 0.5
  for (let round = 0; round < 100; round++) {
    const x = a + share * (b - a)
    const fx = f(x)
    if (fx < 0 === fa < 0) [c, fc] = [a, fa]
    else [c, fc, b, fb] = [b, fb, a, fa]
    ;[a, fa] = [x, fx]
    const best = Math.abs(fa) < Math.abs(fb) ? a : b
    const margin = (tolerance + 2 * Number.EPSILON * Math.abs(best)) / Math.abs(b - a)
    if (margin > 0.5 || fa === 0) return best
    share = Math.min(Math.max(nextShare(a, fa, b, fb, c, fc), margin), 1 - margin)
  }
  return a
}

function nextShare(a: number, fa: number, b: number, fb: number, c: number, fc: number): number {
  const xi = (a - b) / (c - b)
  const phi = (fa - fb) / (fc - fb)
  if (phi * phi >= xi || (1 - phi) * (1 - phi) >= 1 - xi) return 0.5
  return (
    (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
  )
}
