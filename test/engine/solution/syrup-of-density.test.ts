import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { densityOfSucrose } from '../../../main/engine/solution/density-of-sucrose.ts'
import { densityOfWater } from '../../../main/engine/solution/density-of-water.ts'
import {
  extractOfDensity,
  massFractionOfSyrup,
} from '../../../main/engine/solution/syrup-of-density.ts'
import { checksOf, missesOf } from '../../references/check-tables.ts'
import { physicsChecks } from '../../references/physics-checks.ts'

describe('extractOfDensity', () => {
  it('meets the extract table for spirit drinks', () => {
    const extract = ({ relativeDensity2020 }: { relativeDensity2020: number }) =>
      extractOfDensity({
        densityKgPerM3: relativeDensity2020 * densityOfWater(20),
        temperatureC: 20,
      })
    expect(missesOf(checksOf(physicsChecks.extractOfRelativeDensity), extract)).toEqual([])
  })

  it('is 0 in water', () => {
    expect(extractOfDensity({ densityKgPerM3: densityOfWater(15), temperatureC: 15 })).toBe(0)
  })
})

describe('massFractionOfSyrup', () => {
  it('undoes densityOfSucrose', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.85, noNaN: true }),
        fc.double({ min: 0, max: 80, noNaN: true }),
        (massFraction, temperatureC) => {
          const densityKgPerM3 = densityOfSucrose({ massFraction, temperatureC })
          const back = massFractionOfSyrup({ densityKgPerM3, temperatureC })
          expect(Math.abs(back - massFraction)).toBeLessThan(1e-11)
        },
      ),
    )
  })

  it('refuses a density below water or beyond syrup', () => {
    for (const bad of [990, 1500, Number.NaN, Infinity]) {
      expect(() => massFractionOfSyrup({ densityKgPerM3: bad, temperatureC: 20 })).toThrow(
        RangeError,
      )
    }
  })
})
