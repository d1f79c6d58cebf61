import { describe, expect, it } from 'vitest'
import { DomainError } from '../../../main/engine/domain-error.ts'
import { strengthAtSugar, sugarAtStrength } from '../../../main/engine/readings/solve-one.ts'
import { describeSolution } from '../../../main/engine/solution/describe-solution.ts'
import type { Solution } from '../../../main/engine/solution/liquid-volume.ts'
import { liqueurGrid, readTwoInstruments } from './composed-liqueurs.ts'

const density = (liquid: Solution) => describeSolution(liquid).densityKgPerM3
const brix = (liquid: Solution) => describeSolution(liquid).apparentBrix

describe('strengthAtSugar', () => {
  it('finds the strength of every liqueur of the grid by either instrument', () => {
    for (const { strengthPctVol, sugarGPerL } of liqueurGrid) {
      const read = readTwoInstruments({ strengthPctVol, sugarGPerL })
      const byDensity = { sugarGPerL, see: density, seen: read.densityKgPerM3, margin: 0 }
      const byBrix = { sugarGPerL, see: brix, seen: read.brixReading, margin: 0 }
      expect(strengthAtSugar(byDensity)).toBeCloseTo(strengthPctVol, 7)
      expect(strengthAtSugar(byBrix)).toBeCloseTo(strengthPctVol, 7)
    }
  })

  it('takes the weaker of two spirits that refract the same', () => {
    const strong = describeSolution({ ethanolG: 92, waterG: 8, sugarG: 0 })
    const found = strengthAtSugar({
      sugarGPerL: 0,
      see: brix,
      seen: strong.apparentBrix,
      margin: 0,
    })
    expect(found).toBeLessThan(strong.strengthPctVol - 5)
  })

  it('takes the nearest within the margin and refuses beyond it', () => {
    const water = { sugarGPerL: 0, see: density, seen: 999 }
    expect(strengthAtSugar({ ...water, margin: 1 })).toBe(0)
    expect(() => strengthAtSugar({ ...water, margin: 0.5 })).toThrow(DomainError)
  })
})

describe('sugarAtStrength', () => {
  it('finds the sugar of every liqueur of the grid by its density', () => {
    for (const { strengthPctVol, sugarGPerL } of liqueurGrid) {
      const seen = readTwoInstruments({ strengthPctVol, sugarGPerL }).densityKgPerM3
      const found = sugarAtStrength({ strengthPctVol, see: density, seen, margin: 0 })
      expect(found).toBeCloseTo(sugarGPerL, 6)
    }
  })
})
