/**
 * Which value does a quantity of zero or more stay below, given its mean and variance?
 *
 * Method: gamma distribution by Wilson and Hilferty (1931): the cube root is close to normal.
 * In: mean and variance, and z of a standard normal. Out: the quantile, never below zero; good to
 * a few percent of the mean where the variance is below the square of the mean.
 * @example gammaQuantile({ mean: 10, variance: 10 }, 0) // 9.67
 */
export interface Moments {
  readonly mean: number
  readonly variance: number
}

export function gammaQuantile({ mean, variance }: Moments, z: number): number {
  if (mean <= 0) return 0
  const ninth = variance / (9 * mean * mean)
  return mean * Math.max(0, 1 - ninth + z * Math.sqrt(ninth)) ** 3
}
