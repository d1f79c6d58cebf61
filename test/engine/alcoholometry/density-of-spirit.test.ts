import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  densityOfSpirit,
  densityOn,
  densityProfile,
  densitySlopeOn,
  ethanolDensityKgPerM3,
} from '../../../main/engine/alcoholometry/density-of-spirit.ts'
import { massFractionOfStrength } from '../../../main/engine/alcoholometry/strength.ts'
import { checksOf, missesOf } from '../../references/check-tables.ts'
import { physicsChecks } from '../../references/physics-checks.ts'
import { strengthChecks } from '../../references/trade-checks.ts'

/** Landolt-Börnstein, group IV, volume 8G (2000): an independent formula for pure ethanol. */
function landolt(temperatureC: number): number {
  const t = temperatureC + 273.15
  return 1162.39 - 2.25788 * t + 5.30621e-3 * t ** 2 - 6.6307e-6 * t ** 3
}

describe('densityOfSpirit', () => {
  it('meets the tables by volume at 20 °C', () => {
    const checks = checksOf(physicsChecks.densityOfSpiritByVolume)
    const density = (check: { strengthPctVol: number; temperatureC: number }) =>
      densityOfSpirit({
        massFraction: massFractionOfStrength(check.strengthPctVol),
        temperatureC: check.temperatureC,
      })
    expect(missesOf(checks, density)).toEqual([])
  })

  it('meets the tables by mass from 10 to 40 °C', () => {
    expect(missesOf(checksOf(physicsChecks.densityOfSpiritByMass), densityOfSpirit)).toEqual([])
  })

  it('meets the densities used in the trade within 0.03', () => {
    for (const { id, pctVol, densityKgPerM3 } of strengthChecks) {
      const massFraction = massFractionOfStrength(pctVol)
      const off = densityOfSpirit({ massFraction, temperatureC: 20 }) - densityKgPerM3
      expect(Math.abs(off), id).toBeLessThanOrEqual(0.03)
    }
  })

  it('is 998.20 for water and 789.24 for ethanol at 20 °C', () => {
    expect(densityOfSpirit({ massFraction: 0, temperatureC: 20 })).toBeCloseTo(998.20123, 5)
    expect(densityOfSpirit({ massFraction: 1, temperatureC: 20 })).toBeCloseTo(789.2391, 4)
  })

  it('agrees for pure ethanol with Landolt-Börnstein within 0.3 kg/m³ from -20 to 40 °C', () => {
    for (let temperatureC = -20; temperatureC <= 40; temperatureC += 1) {
      const off = densityOfSpirit({ massFraction: 1, temperatureC }) - landolt(temperatureC)
      expect(Math.abs(off), `${temperatureC} °C`).toBeLessThan(0.3)
    }
  })

  it('falls with every step of strength at every temperature in range', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.999, noNaN: true }),
        fc.double({ min: -20, max: 40, noNaN: true }),
        (massFraction, temperatureC) =>
          densityOfSpirit({ massFraction: massFraction + 0.001, temperatureC }) <
          densityOfSpirit({ massFraction, temperatureC }),
      ),
      { numRuns: 2000 },
    )
  })

  it('falls with temperature for any spirit above 30 % by mass', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        fc.double({ min: -20, max: 39, noNaN: true }),
        (massFraction, temperatureC) =>
          densityOfSpirit({ massFraction, temperatureC: temperatureC + 1 }) <
          densityOfSpirit({ massFraction, temperatureC }),
      ),
    )
  })

  it('works at the edges of its range and refuses what lies beyond, by name', () => {
    expect(densityOfSpirit({ massFraction: 1, temperatureC: -20 })).toBeGreaterThan(800)
    expect(densityOfSpirit({ massFraction: 0, temperatureC: 40 })).toBeLessThan(993)
    expect(() => densityOfSpirit({ massFraction: 0.4, temperatureC: 68 })).toThrow(
      'temperature is 68 °C, must be -20 to 40 °C',
    )
    expect(() => densityOfSpirit({ massFraction: 40, temperatureC: 20 })).toThrow(
      'mass fraction of ethanol is 40 of 1, must be 0 to 1 of 1',
    )
    for (const bad of [Number.NaN, Infinity, -Infinity, -1e-9]) {
      expect(() => densityOfSpirit({ massFraction: bad, temperatureC: 20 })).toThrow(RangeError)
    }
    expect(() => densityOfSpirit({ massFraction: 0.4, temperatureC: Number.NaN })).toThrow(
      RangeError,
    )
  })

  it('leaves what it is given as it was', () => {
    expect(densityOfSpirit(Object.freeze({ massFraction: 0.4, temperatureC: 12 }))).toBeGreaterThan(
      900,
    )
  })
})

describe('the density at one temperature', () => {
  it('is the sum of powers of the mass fraction', () => {
    // 3 + 5 · 0.5 + 8 · 0.25
    expect(densityOn([3, 5, 8], 0.5)).toBe(7.5)
    expect(densityOn([3, 5, 8], 0)).toBe(3)
    expect(densityOn([3, 5, 8], 1)).toBe(16)
  })

  it('has the slope of that sum', () => {
    // 5 + 2 · 8 · 0.5 + 3 · 2 · 0.25
    expect(densitySlopeOn([3, 5, 8, 2], 0.5)).toBe(14.5)
    for (const temperatureC of [-10, 15.56, 20, 35]) {
      const profile = densityProfile(temperatureC)
      for (const massFraction of [0.05, 0.3, 0.7, 0.95]) {
        const up = densityOn(profile, massFraction + 1e-5)
        const down = densityOn(profile, massFraction - 1e-5)
        const slope = densitySlopeOn(profile, massFraction)
        expect(slope).toBeCloseTo((up - down) / 2e-5, 3)
      }
    }
  })

  it('of pure ethanol at 20 °C defines strength', () => {
    expect(ethanolDensityKgPerM3).toBeCloseTo(789.2391, 4)
  })

  it('is the same however near 20 °C it is asked for', () => {
    const [near, there] = [densityProfile(20 + 1e-9), densityProfile(20)]
    expect(near).toHaveLength(there.length)
    expect(densityOn(near, 0.4)).toBeCloseTo(densityOn(there, 0.4), 7)
  })
})
