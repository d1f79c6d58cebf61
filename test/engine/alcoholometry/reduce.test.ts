import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { densityOfSpirit } from '../../../main/engine/alcoholometry/density-of-spirit.ts'
import {
  reduce,
  reduceByWeight,
  reduceToVolume,
} from '../../../main/engine/alcoholometry/reduce.ts'
import { massFractionOfStrength } from '../../../main/engine/alcoholometry/strength.ts'
import { describeSolution } from '../../../main/engine/solution/describe-solution.ts'
import { composeSolution } from '../../../main/engine/solution/compose-solution.ts'
import { checksOf, missesOf } from '../../references/check-tables.ts'
import { physicsChecks } from '../../references/physics-checks.ts'
import { dilutionChecks } from '../../references/trade-checks.ts'

const strengths = fc
  .tuple(
    fc.double({ min: 0.1, max: 100, noNaN: true }),
    fc.double({ min: 0.1, max: 100, noNaN: true }),
  )
  .map(([a, b]) => ({ strengthPctVol: Math.max(a, b), targetPctVol: Math.min(a, b) }))
const volumeMl = fc.double({ min: 1, max: 1e5, noNaN: true })

describe('reduce', () => {
  it('meets the classical table of water to add to 100 volumes', () => {
    const water = (check: { strengthPctVol: number; targetPctVol: number }) =>
      reduce({ ...check, volumeMl: 100 }).waterMl
    expect(missesOf(checksOf(physicsChecks.reduceHundred), water)).toEqual([])
  })

  it('meets the volumes used in the trade within 2 mL a litre', () => {
    for (const { id, fromPctVol, toPctVol, waterL, resultL } of dilutionChecks) {
      const found = reduce({ volumeMl: 1000, strengthPctVol: fromPctVol, targetPctVol: toPctVol })
      expect(Math.abs(found.waterMl / 1000 - waterL), id).toBeLessThanOrEqual(0.002)
      expect(Math.abs(found.resultMl / 1000 - resultL), id).toBeLessThanOrEqual(0.002)
    }
  })

  it('keeps ethanol and mass, and makes the target', () => {
    fc.assert(
      fc.property(strengths, volumeMl, ({ strengthPctVol, targetPctVol }, ml) => {
        const spirit = composeSolution({ volumeMl: ml, strengthPctVol, sugarGPerL: 0 })
        const { waterG, resultMl } = reduce({ volumeMl: ml, strengthPctVol, targetPctVol })
        const result = describeSolution({ ...spirit, waterG: spirit.waterG + waterG })
        expect(result.strengthPctVol).toBeCloseTo(targetPctVol, 8)
        expect(result.volumeMl / resultMl).toBeCloseTo(1, 9)
      }),
    )
  })

  it('makes less than its parts of strong spirit, by less than 4 %', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 100, noNaN: true }),
        fc.double({ min: 20, max: 55, noNaN: true }),
        volumeMl,
        (strengthPctVol, targetPctVol, ml) => {
          const found = reduce({ volumeMl: ml, strengthPctVol, targetPctVol })
          expect(found.contractionMl).toBeGreaterThan(0)
          expect(found.contractionMl).toBeLessThan(0.04 * (ml + found.waterMl))
          expect(ml + found.waterMl - found.contractionMl).toBeCloseTo(found.resultMl, 6)
        },
      ),
    )
  })

  it('swells weak spirit a little, as the partial volume of ethanol is least near 15 % vol', () => {
    const { contractionMl } = reduce({ volumeMl: 1000, strengthPctVol: 15, targetPctVol: 1 })
    expect(contractionMl).toBeLessThan(0)
    expect(contractionMl).toBeGreaterThan(-5)
  })

  it('needs more water the lower the target', () => {
    fc.assert(
      fc.property(strengths, ({ strengthPctVol, targetPctVol }) => {
        fc.pre(targetPctVol > 0.2)
        const water = (target: number) =>
          reduce({ volumeMl: 1000, strengthPctVol, targetPctVol: target }).waterMl
        expect(water(targetPctVol - 0.1)).toBeGreaterThan(water(targetPctVol))
      }),
    )
  })

  it('shows the linear rule leaving 1 L of 95 % nearly 2 % too strong at a target of 60', () => {
    const linearWaterMl = 1000 * (95 / 60 - 1)
    const { waterMl } = reduce({ volumeMl: 1000, strengthPctVol: 95, targetPctVol: 60 })
    const spirit = composeSolution({ volumeMl: 1000, strengthPctVol: 95, sugarGPerL: 0 })
    const { strengthPctVol } = describeSolution({
      ...spirit,
      waterG: spirit.waterG + linearWaterMl * 0.9982,
    })
    expect(waterMl).toBeGreaterThan(linearWaterMl + 40)
    expect(strengthPctVol - 60).toBeGreaterThan(1.5)
    expect(strengthPctVol - 60).toBeLessThan(1.9)
  })

  it('adds nothing when the target is the strength', () => {
    const { waterMl, waterG, resultMl, contractionMl } = reduce({
      volumeMl: 700,
      strengthPctVol: 40,
      targetPctVol: 40,
    })
    expect([waterMl, waterG, resultMl, contractionMl]).toEqual([0, 0, 700, 0])
  })

  it('refuses a target above the strength, no volume, and no number', () => {
    const refused = { volumeMl: 1000, strengthPctVol: 40, targetPctVol: 45 }
    expect(() => reduce(refused)).toThrow('target strength is 45 % vol, must be 0.1 to 40 % vol')
    for (const volume of [0, -1, Number.NaN, Infinity]) {
      expect(() => reduce({ ...refused, targetPctVol: 30, volumeMl: volume })).toThrow(RangeError)
    }
    expect(() => reduce({ ...refused, targetPctVol: 0 })).toThrow(RangeError)
    expect(() => reduce({ ...refused, targetPctVol: Number.NaN })).toThrow(RangeError)
  })
})

describe('reduceToVolume', () => {
  it('meets a pharmacopoeia within 0.4 mL of spirit and of water for a litre', () => {
    const checks = checksOf(physicsChecks.reduceToLitre)
    const spirit = checks.map((check) => ({ ...check, expected: check.spiritMl }))
    const water = checks.map((check) => ({ ...check, expected: check.waterMl }))
    expect(
      missesOf(spirit, (check) => reduceToVolume({ ...check, resultMl: 1000 }).spiritMl),
    ).toEqual([])
    expect(
      missesOf(water, (check) => reduceToVolume({ ...check, resultMl: 1000 }).waterMl),
    ).toEqual([])
  })

  it('agrees with reduce on the spirit it asks for', () => {
    fc.assert(
      fc.property(strengths, (pair) => {
        const wanted = reduceToVolume({ ...pair, resultMl: 1000 })
        const made = reduce({ ...pair, volumeMl: wanted.spiritMl })
        expect(made.resultMl).toBeCloseTo(1000, 7)
        expect(made.waterG).toBeCloseTo(wanted.waterG, 7)
      }),
    )
  })
})

describe('reduceByWeight', () => {
  it('weighs what reduce measures', () => {
    const byWeight = reduceByWeight({ massG: 1000, strengthPctVol: 96, targetPctVol: 40 })
    const byVolume = reduce({
      volumeMl: byWeight.spiritMl,
      strengthPctVol: 96,
      targetPctVol: 40,
    })
    expect(byWeight.waterG).toBeCloseTo(byVolume.waterG, 9)
    expect(byWeight.resultG).toBeCloseTo(1000 + byVolume.waterG, 9)
    expect(byWeight.spiritMl).toBeCloseTo(1000 / 0.80742, 1)
  })
})

describe('a reduction of a kilogram', () => {
  it.each([
    [96, 40],
    [100, 0.1],
    [15, 1],
    [40, 40],
  ])('from %f to %f %% vol keeps its ethanol: mass · (p1 / p2 − 1) of water', (from, to) => {
    const both = { strengthPctVol: from, targetPctVol: to }
    const [p1, p2] = [massFractionOfStrength(from), massFractionOfStrength(to)]
    const gPerMl = (massFraction: number) =>
      densityOfSpirit({ massFraction, temperatureC: 20 }) / 1000
    const waterG = 1000 * (p1 / p2 - 1)
    const spiritMl = 1000 / gPerMl(p1)
    const waterMl = waterG / gPerMl(0)
    const resultMl = (1000 + waterG) / gPerMl(p2)
    // The amounts reach a million ml: to a millionth of each.
    const near = (value: number) => expect.closeTo(value, value > 1e5 ? 2 : 6)
    const reduced = {
      waterG: near(waterG),
      waterMl: near(waterMl),
      resultMl: near(resultMl),
      contractionMl: near(spiritMl + waterMl - resultMl),
    }
    expect(reduce({ ...both, volumeMl: spiritMl })).toEqual(reduced)
    expect(reduceByWeight({ ...both, massG: 1000 })).toEqual({
      ...reduced,
      spiritMl: near(spiritMl),
      resultG: near(1000 + waterG),
    })
    expect(reduceToVolume({ ...both, resultMl })).toEqual({
      ...reduced,
      spiritMl: near(spiritMl),
    })
  })

  it('refuses what is weaker than a thousandth', () => {
    const weak = { volumeMl: 1000, strengthPctVol: 0.09, targetPctVol: 0.09 }
    expect(() => reduce(weak)).toThrow('strength is 0.09 % vol, must be 0.1 to 100 % vol')
    expect(reduce({ ...weak, strengthPctVol: 0.1, targetPctVol: 0.1 }).waterMl).toBeCloseTo(0, 9)
  })
})
