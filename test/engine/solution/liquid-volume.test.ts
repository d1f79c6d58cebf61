import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { matterOf } from '../../../shared/matter.ts'
import { densityOfSpirit } from '../../../main/engine/alcoholometry/density-of-spirit.ts'
import { densityOfSucrose } from '../../../main/engine/solution/density-of-sucrose.ts'
import { liquidVolumeMl } from '../../../main/engine/solution/liquid-volume.ts'

const grams = fc.double({ min: 0, max: 1e5, noNaN: true })

describe('liquidVolumeMl', () => {
  it('is the volume of the spirit where there is no sugar', () => {
    const volume = liquidVolumeMl({ ethanolG: 333, waterG: 667, sugarG: 0 })
    expect(volume).toBeCloseTo(1e6 / densityOfSpirit({ massFraction: 0.333, temperatureC: 20 }), 9)
  })

  it('is the volume of the syrup where there is no spirit, within 0.003 mL a litre', () => {
    const volume = liquidVolumeMl({ ethanolG: 0, waterG: 600, sugarG: 400 }, 15)
    const syrup = 1e6 / densityOfSucrose({ massFraction: 0.4, temperatureC: 15 })
    expect(Math.abs(volume - syrup)).toBeLessThan(0.01)
  })

  it('makes 96.46 mL of 50 mL ethanol and 50 mL water', () => {
    const ethanolG = (50 * densityOfSpirit({ massFraction: 1, temperatureC: 20 })) / 1000
    const waterG = (50 * densityOfSpirit({ massFraction: 0, temperatureC: 20 })) / 1000
    expect(liquidVolumeMl({ ethanolG, waterG, sugarG: 0 })).toBeCloseTo(96.46, 2)
  })

  it('scales with the amounts and grows with each of them', () => {
    fc.assert(
      fc.property(grams, grams, grams, grams, (ethanolG, waterG, sugarG, acidG) => {
        fc.pre(ethanolG + waterG > 1)
        const amounts = { ethanolG, waterG, sugarG, acidG }
        const volume = liquidVolumeMl(amounts)
        const doubled = {
          ethanolG: 2 * ethanolG,
          waterG: 2 * waterG,
          sugarG: 2 * sugarG,
          acidG: 2 * acidG,
        }
        expect(liquidVolumeMl(doubled) / volume).toBeCloseTo(2, 9)
        const more = 0.01 * (ethanolG + waterG)
        for (const kind of ['ethanolG', 'waterG', 'sugarG', 'acidG'] as const) {
          const grown = liquidVolumeMl({ ...amounts, [kind]: amounts[kind] + more })
          expect(grown, kind).toBeGreaterThan(volume)
        }
      }),
    )
  })

  it('takes no room for nothing, none for pulp, and sugar alone as in the thickest syrup', () => {
    expect(liquidVolumeMl(matterOf({}))).toBe(0)
    expect(liquidVolumeMl(matterOf({ pulpG: 500 }))).toBe(0)
    expect(liquidVolumeMl(matterOf({ sugarG: 100 }))).toBeCloseTo(63, 0)
    expect(liquidVolumeMl(matterOf({ acidG: 10, solublesG: 10 }))).toBe(12)
  })

  it('forgives the rounding of a subtraction and refuses less', () => {
    expect(liquidVolumeMl({ ethanolG: -1e-12, waterG: 100, sugarG: 0 })).toBeCloseTo(100.18, 2)
    for (const bad of [-1, Number.NaN, Infinity]) {
      expect(() => liquidVolumeMl({ ethanolG: 1, waterG: bad, sugarG: 0 })).toThrow(RangeError)
    }
    expect(() => liquidVolumeMl({ ethanolG: 1, waterG: 1, sugarG: 0 }, 41)).toThrow(RangeError)
  })
})
