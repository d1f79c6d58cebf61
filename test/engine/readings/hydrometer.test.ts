import { describe, expect, it } from 'vitest'
import { densityOfHydrometer } from '../../../main/engine/readings/hydrometer.ts'

describe('densityOfHydrometer', () => {
  it('is the reading where the glass was graduated', () => {
    expect(densityOfHydrometer({ readingKgPerM3: 1030, temperatureC: 20 })).toBe(1030)
    expect(densityOfHydrometer({ readingKgPerM3: 1030, temperatureC: 15, graduatedAtC: 15 })).toBe(
      1030,
    )
  })

  it('takes 0.26 kg/m³ off 1030 for ten degrees of warmth', () => {
    const warm = densityOfHydrometer({ readingKgPerM3: 1030, temperatureC: 30 })
    expect(1030 - warm).toBeCloseTo(1030 * 25e-5, 2)
  })

  it('refuses what it cannot show', () => {
    for (const bad of [Number.NaN, Infinity, 0, 2001]) {
      expect(() => densityOfHydrometer({ readingKgPerM3: bad, temperatureC: 20 })).toThrow(
        RangeError,
      )
    }
    expect(() => densityOfHydrometer({ readingKgPerM3: 1000, temperatureC: 60 })).toThrow(
      'temperature is 60 °C, must be -20 to 40 °C',
    )
  })
})
