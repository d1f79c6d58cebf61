/**
 * Where the series of a piece in a stirred, limited volume has its terms.
 *
 * Method: each root lies alone in a bracket of its own, for any alpha > 0, between its limits for
 * no liquid and for endless liquid; bisection narrows it, secants finish. Equations after J. Crank,
 * The Mathematics of Diffusion, 2nd ed. 1975, chapters 4 to 6 (from memory; tests check them
 * against an independent finite-volume solution). Bessel functions by their integral, whose
 * trapezoid sum is exact to rounding for a periodic integrand.
 */
export type PieceShape = 'slab' | 'cylinder' | 'sphere'

/** The n-th positive root, n = 1, 2, …; alpha may be Infinity. */
export function uptakeRoot(shape: PieceShape, alpha: number, n: number): number {
  switch (shape) {
    case 'slab':
      // tan q = -alpha q
      return rootBetween((n - 0.5) * Math.PI, n * Math.PI, (q) =>
        alpha === Infinity ? Math.cos(q) : Math.sin(q) + alpha * q * Math.cos(q),
      )
    case 'cylinder':
      return cylinderRoot(alpha, n)
    case 'sphere':
      // tan q = 3 q / (3 + alpha q²)
      if (alpha === Infinity) return n * Math.PI
      return rootBetween(
        n * Math.PI,
        (n + 0.5) * Math.PI,
        (q) => (3 + alpha * q * q) * Math.sin(q) - 3 * q * Math.cos(q),
      )
  }
}

/** alpha q J0(q) + 2 J1(q) = 0, both functions known together with their slopes: Newton's steps. */
function cylinderRoot(alpha: number, n: number): number {
  const [low, high] = [(n - 0.25) * Math.PI, (n + 0.25) * Math.PI]
  // Divided by alpha, so that endless liquid is no special case.
  const share = 2 / alpha
  // Between the limits for endless liquid and for none, nearer to either as alpha says.
  let q = (n - 0.25 + 0.5 / (1 + (alpha * high) / 2)) * Math.PI
  for (let step = 0; step < 20; step += 1) {
    const [j0, j1] = [bessel(0, q), bessel(1, q)]
    const slope = j0 - q * j1 + share * (j0 - j1 / q)
    const next = q - (q * j0 + share * j1) / slope
    if (!(next > low && next < high)) break
    if (Math.abs(next - q) < 1e-12 * high) return next
    q = next
  }
  return rootBetween(low, high, (x) => x * bessel(0, x) + share * bessel(1, x))
}

/** Weight of the term of root q. */
export function uptakeWeight(shape: PieceShape, alpha: number, q: number): number {
  const dimension = { slab: 1, cylinder: 2, sphere: 3 }[shape]
  if (alpha === Infinity) return (2 * dimension) / (q * q)
  const base = { slab: 1 + alpha, cylinder: 4 + 4 * alpha, sphere: 9 + 9 * alpha }[shape]
  return (2 * dimension * alpha * (1 + alpha)) / (base + alpha * alpha * q * q)
}

/** Illinois' variant of regula falsi: brackets like bisection, closes in like a secant. */
function rootBetween(low: number, high: number, f: (q: number) => number): number {
  let [a, fa, b, fb] = [low, f(low), high, f(high)]
  for (let step = 0; step < 100; step += 1) {
    // An end may be the root itself, to rounding, where alpha is extreme.
    if (fa === 0 || fa * fb > 0) return Math.abs(fa) <= Math.abs(fb) ? a : b
    const q = (a * fb - b * fa) / (fb - fa)
    const fq = f(q)
    if (Math.abs(b - a) < 1e-13 * high || fq === 0) return q
    if (fq * fb < 0) [a, fa] = [b, fb]
    else fa /= 2
    ;[b, fb] = [q, fq]
    if (Math.abs(b - a) < 1e-13 * high) return b
  }
  return b
}

/** Bessel function of the first kind, order 0 or 1: (1/π) ∫ cos(order τ − x sin τ) dτ over 0…π. */
export function bessel(order: 0 | 1, x: number): number {
  const steps = 16 + Math.ceil(x)
  let sum = (Math.cos(0) + Math.cos(order * Math.PI)) / 2
  for (let i = 1; i < steps; i += 1) {
    const tau = (Math.PI * i) / steps
    sum += Math.cos(order * tau - x * Math.sin(tau))
  }
  return sum / steps
}
