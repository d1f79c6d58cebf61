/**
 * How much of a standard normal lies below z?
 *
 * Method: Chebyshev fit of the complementary error function (Press et al., Numerical Recipes,
 * erfcc), good to 1.2e-7 of the share however far out. In: z. Out: the share's natural logarithm.
 * @example Math.exp(lnNormalCdf(-1.6449)) // 0.0500
 */
export function lnNormalCdf(z: number): number {
  const x = Math.abs(z) / Math.SQRT2
  const t = 1 / (1 + 0.5 * x)
  const lnUpper = Math.log(t) - x * x + fit(t)
  return z < 0 ? lnUpper - Math.LN2 : Math.log1p(-Math.exp(lnUpper) / 2)
}

const coefficients = [
  -1.26551223, 1.00002368, 0.37409196, 0.09678418, -0.18628806, 0.27886807, -1.13520398, 1.48851587,
  -0.82215223, 0.17087277,
]

function fit(t: number): number {
  let sum = 0
  for (let i = coefficients.length - 1; i >= 0; i--) sum = sum * t + (coefficients[i] as number)
  return sum
}
