import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { densityOfSpirit } from '../../../main/engine/alcoholometry/density-of-spirit.ts'
import {
  massFractionOfDensity,
  strengthOfDensity,
} from '../../../main/engine/alcoholometry/strength-of-density.ts'
import { massFractionOfStrength } from '../../../main/engine/alcoholometry/strength.ts'
import { DomainError } from '../../../main/engine/domain-error.ts'

function massFractionOr<Code extends DomainError['code']>(
  code: Code,
  measured: { densityKgPerM3: number; temperatureC: number },
) {
  try {
    return massFractionOfDensity(measured)
  } catch (error) {
    if (error instanceof DomainError && error.code === code) return code
    throw error
  }
}

describe('massFractionOfDensity', () => {
  it('undoes densityOfSpirit within 1e-12 from 0 to 40 °C', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (massFraction, temperatureC) => {
          const densityKgPerM3 = densityOfSpirit({ massFraction, temperatureC })
          const back = massFractionOfDensity({ densityKgPerM3, temperatureC })
          expect(Math.abs(back - massFraction)).toBeLessThan(1e-12)
        },
      ),
      { numRuns: 3000 },
    )
  })

  it('undoes it in the cold as well, or says that the density does not tell', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: -20, max: 0, noNaN: true }),
        (massFraction, temperatureC) => {
          const densityKgPerM3 = densityOfSpirit({ massFraction, temperatureC })
          const back = massFractionOr('ambiguous', { densityKgPerM3, temperatureC })
          const mayBeSlush = massFraction > 0.1 && massFraction < 0.3 && temperatureC < -7
          return back === 'ambiguous' ? mayBeSlush : Math.abs(back - massFraction) < 1e-11
        },
      ),
      { numRuns: 2000 },
    )
  })

  it('refuses 20 % by mass at -15 °C, where 1 kg/m³ hides 3 % of mass', () => {
    const densityKgPerM3 = densityOfSpirit({ massFraction: 0.2, temperatureC: -15 })
    const measured = { densityKgPerM3, temperatureC: -15 }
    expect(() => massFractionOfDensity(measured)).toThrow('warm it')
    const details = { quantity: 'density of spirit', value: densityKgPerM3, unit: 'kg/m³' }
    expect(() => massFractionOfDensity(measured)).toThrowError(
      expect.objectContaining({
        code: 'ambiguous',
        details: { ...details, temperatureC: -15 },
      }),
    )
  })

  it('tells every spirit at -7 °C, and at -8 °C all but those about 19 % by mass', () => {
    const back = (massFraction: number, temperatureC: number) =>
      massFractionOr('ambiguous', {
        densityKgPerM3: densityOfSpirit({ massFraction, temperatureC }),
        temperatureC,
      })
    for (let percent = 0; percent <= 100; percent += 1)
      expect(back(percent / 100, -7), `${percent} %`).toBeCloseTo(percent / 100, 11)
    expect([0.18, 0.19, 0.2].map((massFraction) => back(massFraction, -8))).toEqual([
      'ambiguous',
      'ambiguous',
      'ambiguous',
    ])
    for (const massFraction of [0, 0.1, 0.3, 0.6, 1])
      expect(back(massFraction, -8)).toBeCloseTo(massFraction, 11)
  })

  it('forgives the rounding of the great terms, and no more', () => {
    const water = densityOfSpirit({ massFraction: 0, temperatureC: 20 })
    const ethanol = densityOfSpirit({ massFraction: 1, temperatureC: 20 })
    const of = (densityKgPerM3: number) =>
      massFractionOfDensity({ densityKgPerM3, temperatureC: 20 })
    expect(of(water + 5e-9)).toBeCloseTo(0, 9)
    expect(of(ethanol - 5e-9)).toBeCloseTo(1, 9)
    expect(() => of(water + 5e-8)).toThrow(RangeError)
    expect(() => of(ethanol - 5e-8)).toThrow(RangeError)
  })

  it('refuses densities that no spirit has, with the range at that temperature', () => {
    expect(() => strengthOfDensity({ densityKgPerM3: 999, temperatureC: 20 })).toThrow(
      'density of spirit at 20 °C is 999 kg/m³, must be 789.2391 to 998.2012 kg/m³',
    )
    for (const bad of [Number.NaN, Infinity, 0, 700]) {
      expect(() => strengthOfDensity({ densityKgPerM3: bad, temperatureC: 20 })).toThrow(RangeError)
    }
    expect(() => strengthOfDensity({ densityKgPerM3: 950, temperatureC: 40.1 })).toThrow(RangeError)
  })
})

describe('strengthOfDensity', () => {
  it('finds the strength at 20 °C of a spirit measured cold', () => {
    const massFraction = massFractionOfStrength(45)
    const densityKgPerM3 = densityOfSpirit({ massFraction, temperatureC: 5 })
    expect(strengthOfDensity({ densityKgPerM3, temperatureC: 5 })).toBeCloseTo(45, 9)
  })
})
