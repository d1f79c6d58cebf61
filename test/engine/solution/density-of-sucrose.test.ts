import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  densityOfSucrose,
  sucroseMlPerG,
} from '../../../main/engine/solution/density-of-sucrose.ts'
import { densityOfWater } from '../../../main/engine/solution/density-of-water.ts'
import { checksOf, missesOf } from '../../references/check-tables.ts'
import { physicsChecks } from '../../references/physics-checks.ts'
import { syrupDensityChecks } from '../../references/syrup-checks.ts'

/** The brewers' rational formula for degrees Plato: an independent route for weak syrups. */
const specificGravityOfPlato = (plato: number) => 1 + plato / (258.6 - (227.1 * plato) / 258.2)

describe('densityOfSucrose', () => {
  it('meets a university table and the CRC Handbook', () => {
    expect(missesOf(checksOf(physicsChecks.densityOfSucrose), densityOfSucrose)).toEqual([])
  })

  it('agrees with a sugar handbook within 0.2 kg/m³ from 10 to 60 °C', () => {
    for (const { temperatureC, rows } of syrupDensityChecks)
      for (const [massFraction, density] of rows) {
        const off = densityOfSucrose({ massFraction, temperatureC }) - density
        expect(Math.abs(off), `${massFraction} at ${temperatureC} °C`).toBeLessThan(0.2)
      }
  })

  it("agrees with the brewers' formula within 0.2 kg/m³ to 25 % by mass", () => {
    for (let plato = 0; plato <= 25; plato++) {
      const found = densityOfSucrose({ massFraction: plato / 100, temperatureC: 20 })
      const other = specificGravityOfPlato(plato) * densityOfWater(20)
      expect(Math.abs(found - other), `${plato} °P`).toBeLessThan(0.2)
    }
  })

  it('rises with sugar', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.849, noNaN: true }),
        fc.double({ min: 0, max: 80, noNaN: true }),
        (massFraction, temperatureC) =>
          densityOfSucrose({ massFraction: massFraction + 0.001, temperatureC }) >
          densityOfSucrose({ massFraction, temperatureC }),
      ),
    )
  })

  it('refuses what is beyond its tables', () => {
    for (const bad of [Number.NaN, -0.01, 0.86, Infinity]) {
      expect(() => densityOfSucrose({ massFraction: bad, temperatureC: 20 })).toThrow(RangeError)
    }
    expect(() => densityOfSucrose({ massFraction: 0.5, temperatureC: 81 })).toThrow(
      'temperature of syrup is 81 °C, must be 0 to 80 °C',
    )
  })
})

describe('sucroseMlPerG', () => {
  it('gives back the volume of the syrup it was taken from', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 0.7, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (massFraction, temperatureC) => {
          const waterMl = (1000 * (1 - massFraction)) / densityOfWater(temperatureC)
          const sugarMl = massFraction * sucroseMlPerG(massFraction, temperatureC)
          const syrupMl = 1000 / densityOfSucrose({ massFraction, temperatureC })
          expect(Math.abs(waterMl + sugarMl - syrupMl)).toBeLessThan(1e-14)
        },
      ),
    )
  })

  it('is 0.615 mL/g in a trace, 0.63 at half, and held from 70 %', () => {
    expect(sucroseMlPerG(0, 20)).toBeCloseTo(0.615, 3)
    expect(sucroseMlPerG(0.5, 20)).toBeCloseTo(0.625, 2)
    expect(sucroseMlPerG(1, 20)).toBe(sucroseMlPerG(0.7, 20))
  })
})
