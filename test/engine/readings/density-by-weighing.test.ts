import { describe, expect, it } from 'vitest'
import {
  densityByWeighing,
  flaskByWater,
} from '../../../main/engine/readings/density-by-weighing.ts'
import { densityOfWater } from '../../../main/engine/solution/density-of-water.ts'

describe('densityByWeighing', () => {
  it('finds water again in a flask learnt by water', () => {
    const { volumeMl } = flaskByWater({ massG: 99.7, temperatureC: 20 })
    const { densityKgPerM3 } = densityByWeighing({ massG: 99.7, volumeMl })
    expect(densityKgPerM3).toBeCloseTo(densityOfWater(20), 9)
  })

  it('adds about 1.05 kg/m³ for the air', () => {
    const { densityKgPerM3 } = densityByWeighing({ massG: 100, volumeMl: 100 })
    expect(densityKgPerM3 - 1000).toBeCloseTo(1.05, 2)
  })

  it('is sure to 0.9 kg/m³ with a 0.1 g scale and a 100 mL flask', () => {
    const { uncertaintyKgPerM3 } = densityByWeighing({ massG: 100, volumeMl: 100 })
    expect(uncertaintyKgPerM3).toBeCloseTo(0.9, 1)
  })

  it('is surer with a finer scale, a larger flask or a known flask', () => {
    const usual = densityByWeighing({ massG: 100, volumeMl: 100 }).uncertaintyKgPerM3
    const fine = densityByWeighing({ massG: 100, volumeMl: 100, scaleStepG: 0.01 })
    const large = densityByWeighing({ massG: 500, volumeMl: 500 })
    const { uncertaintyMl } = flaskByWater({ massG: 100, temperatureC: 20 })
    const known = densityByWeighing({
      massG: 100,
      volumeMl: 100,
      volumeUncertaintyMl: uncertaintyMl,
    })
    for (const better of [fine, large, known]) expect(better.uncertaintyKgPerM3).toBeLessThan(usual)
  })

  it('refuses what no scale and flask show', () => {
    for (const bad of [Number.NaN, 0, -5, Infinity]) {
      expect(() => densityByWeighing({ massG: bad, volumeMl: 100 })).toThrow(RangeError)
      expect(() => densityByWeighing({ massG: 100, volumeMl: bad })).toThrow(RangeError)
      expect(() => flaskByWater({ massG: bad, temperatureC: 20 })).toThrow(RangeError)
    }
    expect(() => densityByWeighing({ massG: 100, volumeMl: 1000 })).toThrow(
      'density is 100 kg/m³, must be 600 to 2000 kg/m³',
    )
  })
})
