import { describe, expect, it } from 'vitest'
import { densityOfSpirit } from '../../../main/engine/alcoholometry/density-of-spirit.ts'
import { densityOfWater } from '../../../main/engine/solution/density-of-water.ts'

/** Tanaka and others (2001), Metrologia 38: an independent formula for air-free water. */
const tanaka = (t: number) =>
  999.97495 * (1 - ((t - 3.983035) ** 2 * (t + 301.797)) / (522528.9 * (t + 69.34881)))

describe('densityOfWater', () => {
  it('agrees with Tanaka within 0.01 kg/m³ from 0 to 40 °C', () => {
    for (let t = 0; t <= 40; t += 0.5) {
      expect(Math.abs(densityOfWater(t) - tanaka(t)), `${t} °C`).toBeLessThan(0.01)
    }
  })

  it('agrees with the water of the spirit equation within 0.02 kg/m³', () => {
    for (let t = 0; t <= 40; t += 0.5) {
      const spirit = densityOfSpirit({ massFraction: 0, temperatureC: t })
      expect(Math.abs(densityOfWater(t) - spirit), `${t} °C`).toBeLessThan(0.02)
    }
  })

  it('is greatest at 4 °C', () => {
    expect(densityOfWater(4)).toBeGreaterThan(densityOfWater(3))
    expect(densityOfWater(4)).toBeGreaterThan(densityOfWater(5))
  })

  it('refuses ice, steam and what is no number', () => {
    for (const bad of [-0.1, 100.1, Number.NaN, Infinity]) {
      expect(() => densityOfWater(bad)).toThrow(RangeError)
    }
    expect(() => densityOfWater(-5)).toThrow('temperature of water is -5 °C, must be 0 to 100 °C')
  })
})
