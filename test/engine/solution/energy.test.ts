import { describe, expect, it } from 'vitest'
import { energyOf } from '../../../main/engine/solution/energy.ts'
import { energyChecks } from '../../references/trade-checks.ts'

describe('energyOf', () => {
  it('meets published labels and the law of the factors', () => {
    for (const { id, glass, kJ, kcal } of energyChecks) {
      const found = energyOf(glass)
      expect(Math.abs(found.kJ - kJ.expected), id).toBeLessThanOrEqual(kJ.tolerance)
      expect(Math.abs(found.kcal - kcal.expected), id).toBeLessThanOrEqual(kcal.tolerance)
    }
  })

  it('is in proportion to the volume', () => {
    const glass = { strengthPctVol: 30, sugarGPerL: 100, acidGPerL: 5 }
    expect(energyOf({ ...glass, volumeMl: 40 }).kJ).toBeCloseTo(energyOf(glass).kJ * 0.4, 10)
  })

  it('refuses what is no glass', () => {
    expect(() => energyOf({ strengthPctVol: 140, sugarGPerL: 0 })).toThrow(RangeError)
    expect(() => energyOf({ strengthPctVol: 40, sugarGPerL: Number.NaN })).toThrow(RangeError)
    expect(() => energyOf({ volumeMl: 0, strengthPctVol: 40, sugarGPerL: 0 })).toThrow(RangeError)
  })
})
