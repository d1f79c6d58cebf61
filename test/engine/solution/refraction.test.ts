import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { describeSolution } from '../../../main/engine/solution/describe-solution.ts'
import { liquidVolumeMl } from '../../../main/engine/solution/liquid-volume.ts'
import {
  brixOfRefractiveIndex,
  brixShownAt,
  refractiveIndex,
  refractiveIndexOfBrix,
} from '../../../main/engine/solution/refraction.ts'
import { checksOf, missesOf } from '../../references/check-tables.ts'
import { physicsChecks } from '../../references/physics-checks.ts'

describe('refractiveIndex', () => {
  it('meets the CRC table of ethanol in water', () => {
    const index = ({ massFraction }: { massFraction: number }) =>
      refractiveIndex({ ethanolG: massFraction, waterG: 1 - massFraction, sugarG: 0 })
    expect(missesOf(checksOf(physicsChecks.refractionOfSpirit), index)).toEqual([])
  })

  it('meets the CRC table of sucrose in water, by its own route and by degrees Brix', () => {
    const checks = checksOf(physicsChecks.refractionOfSucrose)
    const index = ({ massFraction }: { massFraction: number }) =>
      refractiveIndex({ ethanolG: 0, waterG: 1 - massFraction, sugarG: massFraction })
    expect(missesOf(checks, index)).toEqual([])
    expect(
      missesOf(checks, ({ massFraction }) => refractiveIndexOfBrix(100 * massFraction)),
    ).toEqual([])
  })

  it('rises with sugar in any spirit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.double({ min: 0, max: 400, noNaN: true }),
        (ethanolG, sugarG) =>
          refractiveIndex({ ethanolG, waterG: 500, sugarG: sugarG + 1 }) >
          refractiveIndex({ ethanolG, waterG: 500, sugarG }),
      ),
    )
  })

  it('takes acid and other solubles for sugar', () => {
    const of = (solid: object) =>
      refractiveIndex({ ethanolG: 300, waterG: 600, sugarG: 0, ...solid })
    const sugar = of({ sugarG: 60 })
    // They take less room than sugar: the same refraction in a little less liquid.
    for (const solid of [
      { acidG: 60 },
      { solublesG: 60 },
      { acidG: 20, solublesG: 20, sugarG: 20 },
    ])
      expect(Math.abs(of(solid) - sugar)).toBeLessThan(0.001)
    expect(sugar - of({})).toBeGreaterThan(0.005)
  })

  it('refuses where nothing is liquid', () => {
    expect(() => refractiveIndex({ ethanolG: 0, waterG: 0, sugarG: 1 })).toThrow(RangeError)
  })
})

describe('brixOfRefractiveIndex', () => {
  it('undoes refractiveIndexOfBrix from -5 to 85', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 85, noNaN: true }), (brix) => {
        expect(brixOfRefractiveIndex(refractiveIndexOfBrix(brix))).toBeCloseTo(brix, 9)
      }),
    )
  })

  it('is 0 for water', () => {
    expect(brixOfRefractiveIndex(1.33299)).toBe(0)
  })

  it('refuses indices that no syrup has', () => {
    for (const bad of [1, 1.6, Number.NaN, Infinity]) {
      expect(() => brixOfRefractiveIndex(bad)).toThrow(RangeError)
    }
    expect(() => refractiveIndexOfBrix(Number.NaN)).toThrow(RangeError)
  })
})

describe('brixShownAt', () => {
  const shown = (amounts: { ethanolG: number; waterG: number; sugarG: number }, t: number) =>
    brixShownAt({ ...amounts, acidG: 0, solublesG: 0 }, liquidVolumeMl(amounts, t), t)

  it('shows a syrup the same at any temperature, within the two waters of 0.02 °Bx', () => {
    for (const t of [5, 10, 30, 40]) {
      expect(shown({ ethanolG: 0, waterG: 700, sugarG: 300 }, t)).toBeCloseTo(30, 1)
    }
  })

  it('shows a liqueur less when it is warm, as spirit thins more than syrup', () => {
    const liqueur = { ethanolG: 300, waterG: 500, sugarG: 200 }
    const at20 = describeSolution(liqueur).apparentBrix
    expect(shown(liqueur, 20)).toBe(at20)
    expect(at20 - shown(liqueur, 25)).toBeGreaterThan(0.2)
    expect(at20 - shown(liqueur, 25)).toBeLessThan(1.2)
    expect(shown(liqueur, 15)).toBeGreaterThan(at20)
  })
})
