import { describe, expect, it } from 'vitest'
import { trueStrength } from '../../../main/engine/alcoholometry/true-strength.ts'
import { apparentStrength } from '../../../main/engine/solution/apparent-strength.ts'

describe('apparentStrength', () => {
  it('is what trueStrength undoes where there is no sugar', () => {
    for (const temperatureC of [5, 20, 30]) {
      const { readingPctVol } = apparentStrength({
        strengthPctVol: 45,
        sugarGPerL: 0,
        temperatureC,
      })
      expect(trueStrength({ readingPctVol: readingPctVol!, temperatureC })).toBeCloseTo(45, 9)
    }
  })

  it('loses 0.24 to 0.29 % vol for each g/L of sugar near 40 % vol', () => {
    const { readingPctVol } = apparentStrength({ strengthPctVol: 40, sugarGPerL: 10 })
    const lostPerGram = (40 - readingPctVol!) / 10
    expect(lostPerGram).toBeGreaterThan(0.235)
    expect(lostPerGram).toBeLessThan(0.295)
  })

  it('shows 9.4 in 100 g/L at 40 % vol and 40.7 in 20 g/L at 45', () => {
    expect(apparentStrength({ strengthPctVol: 40, sugarGPerL: 100 }).readingPctVol).toBeCloseTo(
      9.4,
      1,
    )
    expect(apparentStrength({ strengthPctVol: 45, sugarGPerL: 20 }).readingPctVol).toBeCloseTo(
      40.7,
      1,
    )
  })

  it('says how far off the scale a sweet liqueur floats it', () => {
    const liqueur = apparentStrength({ strengthPctVol: 25, sugarGPerL: 250 })
    expect(liqueur.readingPctVol).toBeUndefined()
    expect(liqueur.offScaleKgPerM3).toBeCloseTo(1063.54 - 998.2, 1)
  })

  it('shows what spirit without sugar has, and is on its scale from nothing to all of it', () => {
    const at = (strengthPctVol: number) => apparentStrength({ strengthPctVol, sugarGPerL: 0 })
    for (const strengthPctVol of [0, 40, 100])
      expect(at(strengthPctVol).offScaleKgPerM3).toBeCloseTo(0, 6)
    expect(at(40).readingPctVol).toBeCloseTo(40, 6)
    // Strong spirit in the warmth is lighter than the scale's end, by OIML R 22 and what glass grows.
    const warm = apparentStrength({ strengthPctVol: 100, sugarGPerL: 0, temperatureC: 30 })
    expect(warm.readingPctVol).toBeUndefined()
    // Ethanol at 30 °C: 780.7 kg/m³, at 20 °C 789.24.
    expect(warm.offScaleKgPerM3).toBeCloseTo(780.7 - 789.24, 0)
  })

  it('refuses what is no liqueur', () => {
    expect(() => apparentStrength({ strengthPctVol: 40, sugarGPerL: Number.NaN })).toThrow(
      RangeError,
    )
    expect(() => apparentStrength({ strengthPctVol: 40, sugarGPerL: 0, temperatureC: 50 })).toThrow(
      RangeError,
    )
  })
})
