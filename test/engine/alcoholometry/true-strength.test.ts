import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { trueStrength } from '../../../main/engine/alcoholometry/true-strength.ts'
import { checksOf, missesOf } from '../../references/check-tables.ts'
import { physicsChecks } from '../../references/physics-checks.ts'

describe('trueStrength', () => {
  it('meets the table evaluated from the definition within 0.1 % vol', () => {
    expect(missesOf(checksOf(physicsChecks.trueStrength), trueStrength)).toEqual([])
  })

  it('is the reading itself at 20 °C', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (readingPctVol) => {
        expect(trueStrength({ readingPctVol, temperatureC: 20 })).toBe(readingPctVol)
      }),
    )
  })

  it('is above the reading in the cold, below it in the warmth', () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 90, noNaN: true }), (readingPctVol) => {
        expect(trueStrength({ readingPctVol, temperatureC: 12 })).toBeGreaterThan(readingPctVol)
        expect(trueStrength({ readingPctVol, temperatureC: 28 })).toBeLessThan(readingPctVol)
      }),
    )
  })

  it('has no jump at 20 °C', () => {
    const near = trueStrength({ readingPctVol: 40, temperatureC: 20 + 1e-9 })
    expect(near).toBeCloseTo(40, 7)
  })

  it('refuses readings that no spirit gives at that temperature', () => {
    expect(() => trueStrength({ readingPctVol: 0, temperatureC: 30 })).toThrow('at 30 °C')
    expect(() => trueStrength({ readingPctVol: 104, temperatureC: 15 })).toThrow(
      'alcoholometer reading is 104 % vol, must be 0 to 100 % vol',
    )
    expect(() => trueStrength({ readingPctVol: 40, temperatureC: 68 })).toThrow(RangeError)
    expect(() => trueStrength({ readingPctVol: Number.NaN, temperatureC: 15 })).toThrow(RangeError)
    expect(() => trueStrength({ readingPctVol: 40, temperatureC: Number.NaN })).toThrow(RangeError)
  })
})
