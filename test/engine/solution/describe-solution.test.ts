import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { strengthOfMassFraction } from '../../../main/engine/alcoholometry/strength.ts'
import { composeSolution } from '../../../main/engine/solution/compose-solution.ts'
import { describeSolution } from '../../../main/engine/solution/describe-solution.ts'
import { minglingChecks } from '../../references/trade-checks.ts'

const grams = fc.double({ min: 0, max: 1e6, noNaN: true })

describe('describeSolution', () => {
  it('tells liquids poured together as the trade finds them', () => {
    for (const check of minglingChecks) {
      const sum = { ethanolG: 0, waterG: 0, sugarG: 0 }
      for (const [litres, strengthPctVol] of check.parts) {
        const part = composeSolution({ volumeMl: litres * 1000, strengthPctVol, sugarGPerL: 0 })
        sum.ethanolG += part.ethanolG
        sum.waterG += part.waterG
      }
      const { volumeMl, strengthPctVol } = describeSolution(sum)
      const { pctVol } = check
      expect(Math.abs(strengthPctVol - pctVol.expected), check.id).toBeLessThan(pctVol.tolerance)
      const expectedMl = 'volumeL' in check ? check.volumeL.expected * 1000 : volumeMl
      const toleranceMl = 'volumeL' in check ? check.volumeL.tolerance * 1000 : 0
      expect(Math.abs(volumeMl - expectedMl), check.id).toBeLessThanOrEqual(toleranceMl)
    }
  })

  it('keeps to the seven liqueurs worked out with the same equations', () => {
    const rows = [
      [15, 100, 1017.6, 14.9],
      [20, 150, 1031.3, 21.2],
      [25, 250, 1063.5, 31.1],
      [30, 100, 1000.5, 20.4],
      [35, 200, 1030.7, 30],
      [40, 100, 985.4, 23.3],
      [45, 20, 946.97, 17.8],
    ] as const
    for (const [strengthPctVol, sugarGPerL, density, brix] of rows) {
      const liqueur = composeSolution({ volumeMl: 700, strengthPctVol, sugarGPerL })
      const found = describeSolution(liqueur)
      expect(Math.abs(found.densityKgPerM3 - density)).toBeLessThan(0.06)
      expect(Math.abs(found.apparentBrix - brix)).toBeLessThan(0.06)
    }
  })

  it('states strength and sugar at 20 °C whatever the temperature of volume and density', () => {
    const liqueur = { ethanolG: 300, waterG: 500, sugarG: 200, acidG: 8 }
    const [cool, cellar] = [30, 5].map((temperatureC) =>
      describeSolution({ ...liqueur, temperatureC }),
    )
    expect(cool!.strengthPctVol).toBe(cellar!.strengthPctVol)
    expect(cool!.sugarGPerL).toBe(cellar!.sugarGPerL)
    expect(cool!.apparentBrix).toBe(cellar!.apparentBrix)
    expect(cool!.volumeMl).toBeGreaterThan(cellar!.volumeMl)
    expect(cool!.densityKgPerM3).toBeLessThan(cellar!.densityKgPerM3)
  })

  it('is the strength of the spirit without sugar, and below it with', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), (fraction) => {
        const spirit = { ethanolG: 1000 * fraction, waterG: 1000 * (1 - fraction) }
        const dry = describeSolution({ ...spirit, sugarG: 0 }).strengthPctVol
        expect(dry).toBeCloseTo(strengthOfMassFraction(fraction), 9)
        expect(describeSolution({ ...spirit, sugarG: 50 }).strengthPctVol).toBeLessThan(dry)
      }),
    )
  })

  it('weighs what is in it, and is finite, for any amounts with something liquid', () => {
    fc.assert(
      fc.property(
        grams,
        grams,
        grams,
        grams,
        grams,
        (ethanolG, waterG, sugarG, acidG, solublesG) => {
          fc.pre(ethanolG + waterG > 0)
          const found = describeSolution({ ethanolG, waterG, sugarG, acidG, solublesG })
          const massG = ethanolG + waterG + sugarG + acidG + solublesG
          expect((found.volumeMl * found.densityKgPerM3) / 1000 / massG).toBeCloseTo(1, 10)
          expect(Object.values(found).every(Number.isFinite)).toBe(true)
          expect(found.strengthPctVol).toBeGreaterThanOrEqual(0)
          expect(found.strengthPctVol).toBeLessThanOrEqual(100 + 1e-9)
        },
      ),
      { numRuns: 2000 },
    )
  })

  it('has no jump where the room of sugar starts to be held', () => {
    const around = [0.6999999, 0.7, 0.7000001].map((fraction) =>
      describeSolution({ ethanolG: 100, waterG: 1 - fraction, sugarG: fraction }),
    )
    const [below, at, above] = around.map((found) => found.densityKgPerM3)
    expect(Math.abs(at! - below!)).toBeLessThan(1e-4)
    expect(Math.abs(above! - at!)).toBeLessThan(1e-4)
  })

  it('refuses where nothing is liquid, and what is no amount', () => {
    expect(() => describeSolution({ ethanolG: 0, waterG: 0, sugarG: 10 })).toThrow(
      'ethanol and water are both 0 g',
    )
    for (const bad of [-1, Number.NaN, Infinity]) {
      expect(() => describeSolution({ ethanolG: 10, waterG: 10, sugarG: bad })).toThrow(RangeError)
    }
    expect(() =>
      describeSolution({ ethanolG: 10, waterG: 10, sugarG: 0, temperatureC: Number.NaN }),
    ).toThrow(RangeError)
  })

  it('finds pure ethanol 100 % vol, never more by rounding', () => {
    for (const ethanolG of [0.1, 0.7, 1.3, 153.85, 8431.7])
      expect(
        describeSolution({ ethanolG, waterG: 0, sugarG: 0 }).strengthPctVol,
      ).toBeLessThanOrEqual(100)
  })

  it('leaves what it is given as it was', () => {
    const frozen = Object.freeze({ ethanolG: 40, waterG: 60, sugarG: 10 })
    expect(describeSolution(frozen)).toEqual(describeSolution({ ...frozen }))
  })
})
