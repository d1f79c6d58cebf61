import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { densityOfSpirit } from '../../../main/engine/alcoholometry/density-of-spirit.ts'
import {
  celsiusOfFahrenheit,
  fahrenheitOfCelsius,
  massFractionOfProof,
  proofOfStrength,
  strengthOfProof,
  trueProof,
  volumeAtSixtyFahrenheit,
} from '../../../main/engine/alcoholometry/proof.ts'
import { massFractionOfStrength } from '../../../main/engine/alcoholometry/strength.ts'
import { checksOf, missesOf } from '../../references/check-tables.ts'
import { physicsChecks } from '../../references/physics-checks.ts'

const sixtyC = celsiusOfFahrenheit(60)

describe('massFractionOfProof', () => {
  it('meets the pharmacopoeia of the United States', () => {
    const checks = checksOf(physicsChecks.massPercentOfStrengthAt60F)
    const massPercent = (check: { strengthPctVolAt15_56C: number }) =>
      100 * massFractionOfProof(2 * check.strengthPctVolAt15_56C)
    expect(missesOf(checks, massPercent)).toEqual([])
  })

  it('meets the specific gravities of 27 CFR 30.66', () => {
    const water = densityOfSpirit({ massFraction: 0, temperatureC: sixtyC })
    const gravity = (check: { proof: number }) =>
      densityOfSpirit({ massFraction: massFractionOfProof(check.proof), temperatureC: sixtyC }) /
      water
    expect(missesOf(checksOf(physicsChecks.specificGravityOfProof), gravity)).toEqual([])
  })
})

describe('trueProof', () => {
  it('meets 27 CFR 30.61 within a quarter of a proof from 40 to 90 °F', () => {
    expect(missesOf(checksOf(physicsChecks.trueProof), trueProof)).toEqual([])
  })

  it('is the reading at 60 °F', () => {
    expect(trueProof({ readingProof: 80, temperatureF: 60 })).toBeCloseTo(80, 8)
  })

  it('works to the edges of its range', () => {
    // Within the reach of the equation: −20 and 40 °C.
    expect(trueProof({ readingProof: 100, temperatureF: -4 })).toBeGreaterThan(120)
    expect(trueProof({ readingProof: 100, temperatureF: 104 })).toBeLessThan(85)
    for (const temperatureF of [-4.1, 104.1])
      expect(() => trueProof({ readingProof: 100, temperatureF })).toThrow(RangeError)
  })

  it('is of the spirit that has, at that temperature, the density in which the glass floats', () => {
    for (const [readingProof, temperatureF] of [
      [60, 41],
      [100, 77],
      [150, 95],
    ] as const) {
      const temperatureC = ((temperatureF - 32) * 5) / 9
      const massFraction = massFractionOfProof(trueProof({ readingProof, temperatureF }))
      const shown = { massFraction: massFractionOfProof(readingProof), temperatureC: sixtyC }
      const growth = 1 + 25e-6 * (temperatureC - sixtyC)
      const floatsIn = densityOfSpirit(shown) / growth
      expect(densityOfSpirit({ massFraction, temperatureC })).toBeCloseTo(floatsIn, 8)
    }
  })

  it('refuses 110 °F and 201 proof', () => {
    expect(() => trueProof({ readingProof: 80, temperatureF: 110 })).toThrow(
      'temperature is 110 °F, must be -4 to 104 °F',
    )
    expect(() => trueProof({ readingProof: 201, temperatureF: 60 })).toThrow(RangeError)
    expect(() => trueProof({ readingProof: 80, temperatureF: Number.NaN })).toThrow(RangeError)
  })
})

describe('strengthOfProof', () => {
  it('is above half the proof by 0.04 at 10 % vol, 0.073 at 30, 0.061 at 50, 0.016 at 90', () => {
    const lift = [10, 30, 50, 90].map((pctVol) => strengthOfProof(2 * pctVol) - pctVol)
    expect(lift.map((value) => Number(value.toFixed(3)))).toEqual([0.038, 0.073, 0.061, 0.016])
  })

  it('is nothing of water, and all of ethanol', () => {
    expect([0, 200].map(strengthOfProof)).toEqual([0, 100])
    expect([0, 100].map(proofOfStrength)).toEqual([0, 200])
  })

  it('is undone by proofOfStrength', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 200, noNaN: true }), (proof) => {
        expect(proofOfStrength(strengthOfProof(proof))).toBeCloseTo(proof, 9)
      }),
    )
  })
})

describe('volumeAtSixtyFahrenheit', () => {
  it('shrinks 1 L of 40 % vol by 0.3 % from 20 °C', () => {
    const volume = volumeAtSixtyFahrenheit({ volumeMl: 1000, strengthPctVol: 40, temperatureC: 20 })
    expect(volume).toBeGreaterThan(996.5)
    expect(volume).toBeLessThan(997.5)
  })

  it('keeps the weight', () => {
    for (const [strengthPctVol, temperatureC] of [
      [0, 40],
      [60, -20],
      [96, 30],
    ] as const) {
      const massFraction = massFractionOfStrength(strengthPctVol)
      const there = densityOfSpirit({ massFraction, temperatureC })
      const atSixty = densityOfSpirit({ massFraction, temperatureC: sixtyC })
      const volume = volumeAtSixtyFahrenheit({ volumeMl: 500, strengthPctVol, temperatureC })
      expect(volume).toBeCloseTo((500 * there) / atSixty, 8)
    }
  })

  it('leaves a volume measured at 60 °F as it is', () => {
    const measured = { volumeMl: 750, strengthPctVol: 40, temperatureC: sixtyC }
    expect(volumeAtSixtyFahrenheit(measured)).toBeCloseTo(750, 10)
  })
})

describe('celsiusOfFahrenheit', () => {
  it('turns 68 °F into 20 °C and back', () => {
    expect(celsiusOfFahrenheit(68)).toBe(20)
    expect(fahrenheitOfCelsius(20)).toBe(68)
  })
})
