import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { composeSolution } from '../../../main/engine/solution/compose-solution.ts'
import { describeSolution } from '../../../main/engine/solution/describe-solution.ts'
import { sweeten } from '../../../main/engine/solution/sweeten.ts'

describe('sweeten', () => {
  it('reaches the target, keeps the ethanol, and tells what it makes', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 600, noNaN: true }),
        (strengthPctVol, sugarGPerL, more) => {
          const liquid = { volumeMl: 2000, strengthPctVol, sugarGPerL }
          const found = sweeten({ ...liquid, targetSugarGPerL: sugarGPerL + more })
          const before = composeSolution(liquid)
          const after = describeSolution({ ...before, sugarG: before.sugarG + found.sugarG })
          expect(after.sugarGPerL).toBeCloseTo(sugarGPerL + more, 6)
          expect(after.volumeMl).toBeCloseTo(found.resultMl, 9)
          expect(found.addedMl).toBeCloseTo(found.resultMl - 2000, 9)
          expect(found.resultPctVol * found.resultMl).toBeCloseTo(strengthPctVol * 2000, 5)
        },
      ),
    )
  })

  it('needs more than the missing grams, as sugar takes room', () => {
    const { sugarG, addedMl } = sweeten({
      volumeMl: 1000,
      strengthPctVol: 40,
      targetSugarGPerL: 200,
    })
    expect(sugarG).toBeGreaterThan(225)
    expect(sugarG).toBeLessThan(232)
    expect(addedMl / sugarG).toBeCloseTo(0.62, 2)
  })

  it('tells what will not dissolve in strong spirit', () => {
    const strong = sweeten({ volumeMl: 1000, strengthPctVol: 80, targetSugarGPerL: 400 })
    expect(strong.undissolvedG).toBeGreaterThan(100)
    const weak = sweeten({ volumeMl: 1000, strengthPctVol: 25, targetSugarGPerL: 400 })
    expect(weak.undissolvedG).toBe(0)
  })

  it('adds nothing when the liquid is as sweet as asked', () => {
    const found = sweeten({
      volumeMl: 500,
      strengthPctVol: 30,
      sugarGPerL: 120,
      targetSugarGPerL: 120,
    })
    expect(found.sugarG).toBe(0)
    expect(found.resultMl).toBeCloseTo(500, 9)
  })

  it('refuses a target below the sugar, and what is no number', () => {
    const liquid = { volumeMl: 500, strengthPctVol: 30, sugarGPerL: 120, targetSugarGPerL: 100 }
    expect(() => sweeten(liquid)).toThrow('target sugar is 100 g/L, must be 120 to 1200 g/L')
    for (const bad of [Number.NaN, Infinity, 1201]) {
      expect(() => sweeten({ ...liquid, targetSugarGPerL: bad })).toThrow(RangeError)
    }
    expect(() => sweeten({ ...liquid, volumeMl: 0, targetSugarGPerL: 200 })).toThrow(RangeError)
  })

  it('works at its limit in any spirit', () => {
    for (let strengthPctVol = 0; strengthPctVol <= 100; strengthPctVol += 10) {
      const { sugarG } = sweeten({ volumeMl: 1000, strengthPctVol, targetSugarGPerL: 1200 })
      expect(sugarG).toBeGreaterThan(1200)
      expect(Number.isFinite(sugarG)).toBe(true)
    }
  })
})
