import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DomainError } from '../../../main/engine/domain-error.ts'
import {
  composeSolution,
  greatestStrengthPctVol,
  greatestSugarGPerL,
} from '../../../main/engine/solution/compose-solution.ts'
import { describeSolution } from '../../../main/engine/solution/describe-solution.ts'
import { liquidVolumeMl } from '../../../main/engine/solution/liquid-volume.ts'

describe('composeSolution', () => {
  it('is undone by describeSolution for any liqueur, at any temperature of its volume', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 600, noNaN: true }),
        fc.double({ min: -20, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (strengthPctVol, sugarGPerL, temperatureC, acidGPerL) => {
          const wanted = { volumeMl: 700, strengthPctVol, sugarGPerL, acidGPerL }
          fc.pre(strengthPctVol < greatestStrengthPctVol(sugarGPerL + 2 * acidGPerL))
          const solution = composeSolution({ ...wanted, solublesGPerL: 3, temperatureC })
          const found = describeSolution({ ...solution, temperatureC })
          expect(found.volumeMl).toBeCloseTo(700, 8)
          expect(found.strengthPctVol).toBeCloseTo(strengthPctVol, 9)
          expect(found.sugarGPerL).toBeCloseTo(sugarGPerL, 8)
          const volumeAt20L = liquidVolumeMl(solution) / 1000
          expect(solution.acidG / volumeAt20L).toBeCloseTo(acidGPerL, 8)
          expect(solution.solublesG / volumeAt20L).toBeCloseTo(3, 8)
        },
      ),
      { numRuns: 1000 },
    )
  })

  it('gives back the grams that describeSolution was told', () => {
    const liqueur = { ethanolG: 315.7, waterG: 520, sugarG: 210 }
    const { volumeMl, strengthPctVol, sugarGPerL } = describeSolution(liqueur)
    const back = composeSolution({ volumeMl, strengthPctVol, sugarGPerL })
    expect(back.ethanolG).toBeCloseTo(liqueur.ethanolG, 8)
    expect(back.waterG).toBeCloseTo(liqueur.waterG, 8)
    expect(back.sugarG).toBeCloseTo(liqueur.sugarG, 8)
  })

  it('makes pure water and pure ethanol', () => {
    expect(composeSolution({ volumeMl: 1000, strengthPctVol: 0, sugarGPerL: 0 })).toEqual({
      ethanolG: 0,
      waterG: expect.closeTo(998.20123, 8),
      sugarG: 0,
      acidG: 0,
      solublesG: 0,
    })
    const ethanol = composeSolution({ volumeMl: 1000, strengthPctVol: 100, sugarGPerL: 0 })
    expect(ethanol.ethanolG).toBeCloseTo(789.2391, 4)
    expect(ethanol.waterG).toBeLessThan(1e-8)
  })

  it('refuses a strength and sugar that leave no room, and says by how much', () => {
    const impossible = { volumeMl: 1000, strengthPctVol: 80, sugarGPerL: 500 }
    let refusal: unknown
    try {
      composeSolution(impossible)
    } catch (error) {
      refusal = error
    }
    expect(refusal).toBeInstanceOf(RangeError)
    expect((refusal as DomainError).code).toBe('noSuchMixture')
    const overflowMlPerL = (refusal as DomainError).details.overflowMlPerL as number
    // 800 mL of ethanol and 500 g of sugar at 0.631 mL/g.
    expect(overflowMlPerL).toBeCloseTo(800 + 500 * 0.631 - 1000, 0)
  })

  it('refuses what is no volume, strength or sugar', () => {
    const good = { volumeMl: 1000, strengthPctVol: 40, sugarGPerL: 100 }
    for (const bad of [Number.NaN, Infinity, -1]) {
      for (const kind of ['volumeMl', 'strengthPctVol', 'sugarGPerL'] as const) {
        expect(() => composeSolution({ ...good, [kind]: bad }), kind).toThrow(RangeError)
      }
      expect(() => composeSolution({ ...good, acidGPerL: bad })).toThrow(RangeError)
    }
    expect(() => composeSolution({ ...good, volumeMl: 0 })).toThrow('must be above 0')
    expect(() => composeSolution({ ...good, temperatureC: 60 })).toThrow(RangeError)
  })
})

describe('greatestStrengthPctVol', () => {
  it('is the last that fits, and undoes greatestSugarGPerL', () => {
    const most = greatestStrengthPctVol(400)
    expect(
      composeSolution({ volumeMl: 1, strengthPctVol: most, sugarGPerL: 400 }).waterG,
    ).toBeLessThan(1e-9)
    expect(() =>
      composeSolution({ volumeMl: 1, strengthPctVol: most + 0.001, sugarGPerL: 400 }),
    ).toThrow(RangeError)
    expect(greatestSugarGPerL(most)).toBeCloseTo(400, 9)
  })
})
