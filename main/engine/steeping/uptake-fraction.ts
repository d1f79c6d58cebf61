/**
 * How much of what will pass between a piece of fruit and the liquid around it has passed?
 *
 * Method: diffusion from a well-stirred, limited volume into a slab (half thickness L), a cylinder
 * or a sphere (radius L): Crank's series with its roots, and for short times, where the series is
 * slow, the closed form that neglects the far side of the piece (slab, sphere) or its curvature
 * beyond second order (cylinder). J. Crank, The Mathematics of Diffusion, 2nd ed. 1975 (from
 * memory; checked in the tests against an independent finite-volume solution).
 * In: shape; alpha = liquid outside / accessible liquid inside, any > 0, Infinity allowed;
 * fourier = D t / L², 0 or more. Out: 0 to 1, share of the way to equilibrium; the same holds for
 * what leaves the piece. RangeError outside that. Accuracy 1e-6 (cylinder 2e-4 below fourier 0.002).
 * Leaves out: skins, unstirred layers, and diffusivity that changes with strength.
 * @example uptakeFraction({ shape: 'sphere', alpha: 1, fourier: 0.05 }) // 0.79
 */
import { requireRange } from '../range.ts'
import { uptakeRoot, uptakeWeight, type PieceShape } from './uptake-roots.ts'

export interface UptakeQuestion {
  readonly shape: PieceShape
  readonly alpha: number
  readonly fourier: number
}

export function uptakeFraction({ shape, alpha, fourier }: UptakeQuestion): number {
  return uptakeCurve(shape, alpha)(fourier)
}

/** Above this the far side is felt; below, the closed form is as good as the series (see above). */
const shortUntil: Record<PieceShape, number> = { slab: 0.05, cylinder: 0.002, sphere: 0.05 }

/** Terms smaller than this are left out. */
const negligible = 1e-9

/** The same as a function of fourier, with its roots found once. */
export function uptakeCurve(shape: PieceShape, alpha: number): (fourier: number) => number {
  requireRange('alpha', alpha, Number.MIN_VALUE, Infinity, 'L/L')
  const terms: { rate: number; weight: number }[] = []
  const term = (n: number) => {
    for (let i = terms.length + 1; i <= n; i += 1) {
      const q = uptakeRoot(shape, alpha, i)
      terms.push({ rate: q * q, weight: uptakeWeight(shape, alpha, q) })
    }
    return terms[n - 1] as { rate: number; weight: number }
  }
  return (fourier) => {
    requireRange('fourier', fourier, 0, Infinity, 'D t / L²')
    if (fourier === 0) return 0
    if (fourier <= shortUntil[shape]) return clamp(shortTime(shape, alpha, fourier))
    let left = 0
    for (let n = 1; n <= 400; n += 1) {
      const { rate, weight } = term(n)
      const part = weight * Math.exp(-rate * fourier)
      left += part
      if (part < negligible) break
    }
    return clamp(1 - left)
  }
}

function shortTime(shape: PieceShape, alpha: number, fourier: number): number {
  const root = Math.sqrt(fourier)
  if (alpha === Infinity) {
    const slope = (2 / Math.sqrt(Math.PI)) * root
    return { slab: slope, cylinder: 2 * slope - fourier, sphere: 3 * slope - 3 * fourier }[shape]
  }
  if (shape === 'slab') return (1 + alpha) * (1 - scaledErfc(root / alpha))
  const dimension = shape === 'cylinder' ? 2 : 3
  const curvature = shape === 'cylinder' ? alpha : (4 / 3) * alpha
  const outer = (Math.sqrt(1 + curvature) + 1) / 2
  const inner = outer - 1
  const faded =
    outer * scaledErfc((dimension * outer * root) / alpha) +
    inner * scaledErfc((-dimension * inner * root) / alpha)
  return (1 + alpha) * (1 - faded / (outer + inner))
}

const clamp = (share: number) => Math.min(1, Math.max(0, share))

/** exp(x²) erfc(x), without the overflow of its factors. */
export function scaledErfc(x: number): number {
  if (x < 0) return 2 * Math.exp(x * x) - scaledErfc(-x)
  if (x < 2) {
    // erf by its series of positive terms.
    let term = x
    let sum = x
    for (let n = 1; term > 1e-17 * sum; n += 1) {
      term *= (2 * x * x) / (2 * n + 1)
      sum += term
    }
    return Math.exp(x * x) - (2 / Math.sqrt(Math.PI)) * sum
  }
  // Continued fraction, from the far end.
  let tail = x
  for (let n = 60; n >= 1; n -= 1) tail = x + n / 2 / tail
  return 1 / (Math.sqrt(Math.PI) * tail)
}
