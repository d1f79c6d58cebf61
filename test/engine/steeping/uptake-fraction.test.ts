import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { scaledErfc, uptakeFraction } from '../../../main/engine/steeping/uptake-fraction.ts'
import { bessel, uptakeRoot, uptakeWeight } from '../../../main/engine/steeping/uptake-roots.ts'
import {
  oneDay,
  rootRows,
  rootTolerance,
  uptakeChecks,
  uptakeTolerance,
} from '../../references/steeping-checks.ts'
import { finiteVolumeUptake } from './finite-volume.ts'

const shapes = ['slab', 'cylinder', 'sphere'] as const
const anyAlpha = fc.double({ min: -6, max: 6, noNaN: true }).map((power) => 10 ** power)

describe('roots', () => {
  it.each(rootRows)('are those of the reference: $shape, alpha $alpha', (row) => {
    const { shape, alpha, roots, firstWeight } = row
    for (const [index, root] of roots.entries())
      expect(Math.abs(uptakeRoot(shape, alpha, index + 1) - root)).toBeLessThanOrEqual(
        rootTolerance,
      )
    const weight = uptakeWeight(shape, alpha, uptakeRoot(shape, alpha, 1))
    expect(Math.abs(weight - firstWeight)).toBeLessThanOrEqual(rootTolerance)
  })

  it('of endless and of hardly any liquid are the zeros of Bessel functions and of sines', () => {
    // Abramowitz and Stegun, table 9.5: j0,1 to j0,3 and j1,1 and j1,2.
    const cylinder = (alpha: number, n: number) => uptakeRoot('cylinder', alpha, n)
    expect(cylinder(Infinity, 1)).toBeCloseTo(2.4048255577, 9)
    expect(cylinder(Infinity, 2)).toBeCloseTo(5.5200781103, 9)
    expect(cylinder(Infinity, 3)).toBeCloseTo(8.653727913, 8)
    expect(cylinder(1e-12, 1)).toBeCloseTo(3.83170597, 7)
    expect(cylinder(1e-12, 2)).toBeCloseTo(7.01558667, 7)
    expect(uptakeRoot('slab', Infinity, 2)).toBeCloseTo(1.5 * Math.PI, 9)
    expect(uptakeRoot('slab', 1e-12, 2)).toBeCloseTo(2 * Math.PI, 9)
    expect(uptakeRoot('sphere', Infinity, 2)).toBe(2 * Math.PI)
    // tan q = q.
    expect(uptakeRoot('sphere', 1e-12, 1)).toBeCloseTo(4.4934094579, 8)
  })

  it('rest on Bessel functions as published', () => {
    // Abramowitz and Stegun, table 9.1.
    const rows = [
      [0, 1, 0],
      [1, 0.7651976866, 0.4400505857],
      [5, -0.1775967713, -0.327579138],
      [10, -0.2459357645, 0.0434727462],
    ] as const
    for (const [x, j0, j1] of rows) {
      expect(bessel(0, x)).toBeCloseTo(j0, 9)
      expect(bessel(1, x)).toBeCloseTo(j1, 9)
    }
  })

  it('solve their equation and rise, for any alpha from a millionth to a million', () => {
    fc.assert(
      fc.property(fc.constantFrom(...shapes), anyAlpha, (shape, alpha) => {
        let last = 0
        for (let n = 1; n <= 40; n += 1) {
          const q = uptakeRoot(shape, alpha, n)
          const terms = {
            slab: [Math.sin(q), alpha * q * Math.cos(q)],
            cylinder: [alpha * q * bessel(0, q), 2 * bessel(1, q)],
            sphere: [(3 + alpha * q * q) * Math.sin(q), -3 * q * Math.cos(q)],
          }[shape] as [number, number]
          const size = alpha * q + 1 + (shape === 'sphere' ? alpha * q * q + 3 * q : 0)
          expect(Math.abs(terms[0] + terms[1]) / size).toBeLessThan(1e-9)
          expect(q).toBeGreaterThan(last)
          last = q
        }
      }),
      { numRuns: 200 },
    )
  })
})

describe('uptakeFraction', () => {
  it.each(uptakeChecks)(
    'is $expected for a $shape at alpha $alpha, fourier $fourier',
    ({ expected, ...question }) => {
      expect(Math.abs(uptakeFraction(question) - expected)).toBeLessThanOrEqual(uptakeTolerance)
    },
  )

  it.each(rootRows)('is half and nine tenths where the reference says: $shape, $alpha', (row) => {
    const { shape, alpha, fourier50, fourier90 } = row
    // The reference's Fourier numbers are rounded to four decimals: allow for the slope there.
    expect(uptakeFraction({ shape, alpha, fourier: fourier50 })).toBeCloseTo(0.5, 2)
    expect(uptakeFraction({ shape, alpha, fourier: fourier90 })).toBeCloseTo(0.9, 3)
  })

  it('brings a ball of 8 mm to rest within a day', () => {
    const { shape, alpha, radiusMm, diffusivityM2PerS, expected, tolerance } = oneDay
    const fourier = (diffusivityM2PerS * 86_400) / (radiusMm / 1000) ** 2
    const reached = uptakeFraction({ shape, alpha, fourier })
    expect(Math.abs(reached - expected)).toBeLessThanOrEqual(tolerance)
  })

  it.each(shapes)('agrees with a finite-volume solution of its own kind (%s)', (shape) => {
    const fouriers = [0.0005, 0.003, 0.01, 0.03, 0.049, 0.051, 0.1, 0.3, 1]
    for (const alpha of [0.1, 0.5, 1.5, 4, 20]) {
      const brute = finiteVolumeUptake(shape, alpha, fouriers)
      for (const [index, fourier] of fouriers.entries())
        expect(
          Math.abs(uptakeFraction({ shape, alpha, fourier }) - (brute[index] as number)),
          `${shape} alpha ${alpha} fourier ${fourier}`,
        ).toBeLessThan(0.0006)
    }
  })

  it('does not jump where the short-time form ends', () => {
    const ends = { slab: 0.05, cylinder: 0.002, sphere: 0.05 }
    const steps = { slab: 1e-6, cylinder: 2e-4, sphere: 1e-6 }
    fc.assert(
      fc.property(fc.constantFrom(...shapes), anyAlpha, (shape, alpha) => {
        const at = (fourier: number) => uptakeFraction({ shape, alpha, fourier })
        const end = ends[shape]
        expect(Math.abs(at(end * (1 + 1e-9)) - at(end))).toBeLessThan(steps[shape])
      }),
      { numRuns: 300 },
    )
  })

  it('rises from 0 to 1 for any shape and alpha', () => {
    const fourier = fc.double({ min: -8, max: 2, noNaN: true }).map((power) => 10 ** power)
    fc.assert(
      fc.property(fc.constantFrom(...shapes), anyAlpha, fourier, (shape, alpha, early) => {
        const first = uptakeFraction({ shape, alpha, fourier: early })
        const then = uptakeFraction({ shape, alpha, fourier: early * 1.1 })
        expect(first).toBeGreaterThanOrEqual(0)
        expect(then).toBeGreaterThanOrEqual(first - 1e-4)
        expect(then).toBeLessThanOrEqual(1)
      }),
      { numRuns: 500 },
    )
    expect(uptakeFraction({ shape: 'slab', alpha: 2, fourier: 0 })).toBe(0)
    expect(uptakeFraction({ shape: 'slab', alpha: 2, fourier: 100 })).toBe(1)
  })

  it('refuses what no jar is', () => {
    for (const alpha of [0, -1, Number.NaN])
      expect(() => uptakeFraction({ shape: 'slab', alpha, fourier: 1 })).toThrow(RangeError)
    expect(() => uptakeFraction({ shape: 'slab', alpha: 1, fourier: -1 })).toThrow(RangeError)
  })
})

describe('scaledErfc', () => {
  // Abramowitz & Stegun, table 7.1, from memory: erfc(0.5) = 0.4795001, erfc(1) = 0.1572992.
  it('is exp(x²) erfc(x)', () => {
    expect(scaledErfc(0.5)).toBeCloseTo(Math.exp(0.25) * 0.4795001, 7)
    expect(scaledErfc(1)).toBeCloseTo(Math.E * 0.1572992, 6)
    expect(scaledErfc(-1)).toBeCloseTo(Math.E * (2 - 0.1572992), 6)
    // For large x it falls as 1 / (x √π).
    expect(scaledErfc(1000) * 1000 * Math.sqrt(Math.PI)).toBeCloseTo(1, 6)
  })

  it('joins its series and its continued fraction', () => {
    expect(scaledErfc(2 - 1e-9)).toBeCloseTo(scaledErfc(2 + 1e-9), 8)
  })
})
