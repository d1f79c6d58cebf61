import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { densityOfSpirit } from '../../../main/engine/alcoholometry/density-of-spirit.ts'
import { massFractionOfStrength } from '../../../main/engine/alcoholometry/strength.ts'
import { volumeAt20 } from '../../../main/engine/solution/volume-at-20.ts'

describe('volumeAt20', () => {
  it('is the ratio of densities for spirit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: -20, max: 40, noNaN: true }),
        (strengthPctVol, temperatureC) => {
          const massFraction = massFractionOfStrength(strengthPctVol)
          const ratio =
            densityOfSpirit({ massFraction, temperatureC }) /
            densityOfSpirit({ massFraction, temperatureC: 20 })
          const found = volumeAt20({ volumeMl: 1000, strengthPctVol, temperatureC })
          expect(found).toBeCloseTo(1000 * ratio, 7)
        },
      ),
    )
  })

  it('grows 0.68 % from 10 °C and shrinks 0.73 % from 30 °C at 40 % vol', () => {
    const from = (temperatureC: number) =>
      volumeAt20({ volumeMl: 1000, strengthPctVol: 40, temperatureC })
    expect(from(10)).toBeCloseTo(1006.8, 0)
    expect(from(30)).toBeCloseTo(1000 / 1.0073, 0)
    expect(from(20)).toBeCloseTo(1000, 9)
  })

  it('takes an unnamed liquid for water', () => {
    expect(volumeAt20({ volumeMl: 1000, temperatureC: 30 })).toBeCloseTo(997.44, 2)
  })

  it('refuses what is out of range', () => {
    expect(() => volumeAt20({ volumeMl: 1000, temperatureC: 55 })).toThrow(RangeError)
    expect(() => volumeAt20({ volumeMl: Number.NaN, temperatureC: 20 })).toThrow(RangeError)
  })
})
