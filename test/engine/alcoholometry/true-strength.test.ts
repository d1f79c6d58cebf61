import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { densityOfSpirit } from '../../../main/engine/alcoholometry/density-of-spirit.ts'
import { massFractionOfStrength } from '../../../main/engine/alcoholometry/strength.ts'
import { glassGrowth, trueStrength } from '../../../main/engine/alcoholometry/true-strength.ts'
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

  it('is that of the spirit which has, there, the density in which the grown glass floats', () => {
    for (const temperatureC of [-20, -5, 12, 28, 40]) {
      const strengthPctVol = trueStrength({ readingPctVol: 60, temperatureC })
      const density = (pctVol: number, t: number) =>
        densityOfSpirit({ massFraction: massFractionOfStrength(pctVol), temperatureC: t })
      const floatsIn = density(60, 20) / (1 + 25e-6 * (temperatureC - 20))
      expect(density(strengthPctVol, temperatureC)).toBeCloseTo(floatsIn, 8)
    }
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

describe('glassGrowth', () => {
  it('is 25 millionths a degree from where it was graduated', () => {
    expect(glassGrowth(30, 20)).toBeCloseTo(1.00025, 12)
    expect(glassGrowth(10, 15)).toBeCloseTo(0.999875, 12)
    expect(glassGrowth(15, 15)).toBe(1)
  })
})
