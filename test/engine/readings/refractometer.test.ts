import { describe, expect, it } from 'vitest'
import { brixAt20 } from '../../../main/engine/readings/refractometer.ts'
import { refractiveIndexOfBrix } from '../../../main/engine/solution/refraction.ts'
import { brixCorrections } from '../../references/refractometer-corrections.ts'

describe('brixAt20', () => {
  it('meets the rows of the tables it was not made from within 0.02 °Bx', () => {
    const misses = brixCorrections.flatMap(({ temperatureC, rows }) =>
      rows.filter(([brixReading, correction]) => {
        const found = brixAt20({ brixReading, temperatureC }) - brixReading
        return Math.abs(found - correction) > 0.02
      }),
    )
    expect(misses).toEqual([])
  })

  it('meets the fall of the index of water from 20 to 30 °C, 1.33299 to 1.33194', () => {
    const shownWarm = (100 * (1.33194 - 1.33299)) / ((refractiveIndexOfBrix(1) - 1.33299) * 100)
    expect(brixAt20({ brixReading: 0, temperatureC: 30 })).toBeCloseTo(-shownWarm, 1)
  })

  it('is the reading at 20 °C, and rises with the reading everywhere', () => {
    for (let brix = 0; brix < 85; brix += 0.5) {
      expect(brixAt20({ brixReading: brix, temperatureC: 20 })).toBe(brix)
      for (const temperatureC of [10, 17, 30]) {
        const more = brixAt20({ brixReading: brix + 0.5, temperatureC })
        expect(more).toBeGreaterThan(brixAt20({ brixReading: brix, temperatureC }))
      }
    }
  })

  it('refuses what the table does not have', () => {
    for (const bad of [Number.NaN, -1, 86]) {
      expect(() => brixAt20({ brixReading: bad, temperatureC: 20 })).toThrow(RangeError)
    }
    expect(() => brixAt20({ brixReading: 20, temperatureC: 9 })).toThrow(
      'temperature of the prism is 9 °C, must be 10 to 30 °C',
    )
  })
})
