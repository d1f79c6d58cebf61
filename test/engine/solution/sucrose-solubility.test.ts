import { describe, expect, it } from 'vitest'
import { sucroseSolubility } from '../../../main/engine/solution/sucrose-solubility.ts'
import { solubilityChecks } from '../../references/syrup-checks.ts'

const inSpirit = (ethanolMassFraction: number, temperatureC = 20) =>
  sucroseSolubility({ ethanolMassFraction, temperatureC })

describe('sucroseSolubility', () => {
  it('is about 66.7 % by mass, 2.0 g a gram, in water at 20 °C', () => {
    const grams = inSpirit(0)
    expect((100 * grams) / (1 + grams)).toBeCloseTo(66.7, 1)
  })

  it('agrees with another table within 3 % from 0 to 80 °C', () => {
    for (const [temperatureC, gramsPer100] of solubilityChecks) {
      const ratio = (100 * inSpirit(0, temperatureC)) / gramsPer100
      expect(Math.abs(ratio - 1), `${temperatureC} °C`).toBeLessThan(0.03)
    }
  })

  it('rises with temperature', () => {
    for (let t = 0; t < 90; t += 5) expect(inSpirit(0, t + 5)).toBeGreaterThan(inSpirit(0, t))
  })

  it('keeps its share of water up to a fifth of ethanol, then falls to nothing without a jump', () => {
    expect(inSpirit(0.2)).toBe(inSpirit(0))
    expect(inSpirit(0.2 + 1e-9)).toBeCloseTo(inSpirit(0.2), 6)
    expect(inSpirit(0.6)).toBeCloseTo(inSpirit(0) / 2, 9)
    expect(inSpirit(1)).toBe(0)
  })

  it('refuses what is out of range', () => {
    for (const bad of [Number.NaN, -0.1, 1.1]) expect(() => inSpirit(bad)).toThrow(RangeError)
    for (const bad of [Number.NaN, -1, 91]) expect(() => inSpirit(0, bad)).toThrow(RangeError)
  })
})
