import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { rootBetween } from '../../main/engine/root.ts'

describe('rootBetween', () => {
  it('finds the crossing of rising and falling, flat and steep functions', () => {
    const cases: [(x: number) => number, number, number, number][] = [
      [(x) => x * x - 2, 0, 2, Math.SQRT2],
      [(x) => 2 - x * x, 0, 2, Math.SQRT2],
      [(x) => Math.cos(x) - x, 0, 1, 0.739085133215161],
      [(x) => Math.expm1(50 * (x - 0.3)), 0, 1, 0.3],
      [(x) => Math.cbrt(x - 0.7), 0, 1, 0.7],
    ]
    for (const [f, low, high, root] of cases) {
      expect(Math.abs(rootBetween(f, low, high) - root)).toBeLessThan(1e-11)
    }
  })

  it('stays within its ends and finds any crossing of a cubic that rises', () => {
    fc.assert(
      fc.property(fc.double({ min: -1, max: 1, noNaN: true }), (root) => {
        const found = rootBetween((x) => (x - root) ** 3 + 0.1 * (x - root), -1, 1)
        expect(Math.abs(found - root)).toBeLessThan(1e-11)
      }),
    )
  })

  it('takes few looks at a smooth function', () => {
    let looks = 0
    rootBetween(
      (x) => {
        looks += 1
        return x * x * x - 0.2
      },
      0,
      1,
    )
    expect(looks).toBeLessThan(14)
  })

  it('answers an end that is the root, and refuses ends of one sign', () => {
    expect(rootBetween((x) => x, 0, 1)).toBe(0)
    expect(rootBetween((x) => x - 1, 0, 1)).toBe(1)
    expect(() => rootBetween((x) => x + 1, 0, 1)).toThrow('no root between 0 and 1')
    expect(() => rootBetween(() => Number.NaN, 0, 1)).toThrow(RangeError)
  })
})
