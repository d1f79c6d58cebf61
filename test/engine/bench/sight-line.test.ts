import { describe, expect, it } from 'vitest'
import {
  brixSight,
  densitySight,
  sightLine,
  strengthsAround,
} from '../../../main/engine/bench/sight-line.ts'
import { densityOfSpirit } from '../../../main/engine/alcoholometry/density-of-spirit.ts'
import { composeSolution, massFractionOfStrength } from '../../../main/engine/index.ts'

/** An instrument that shows the g/L themselves. */
const sees = (seen: number, uncertainty: number) => ({
  see: ({ sugarG }: { sugarG: number }) => sugarG,
  seen,
  uncertainty,
})

describe('sightLine', () => {
  it('is the sugar that goes with each strength, an uncertainty less and more', () => {
    const point = (strengthPctVol: number) => ({
      strengthPctVol,
      sugarGPerL: expect.closeTo(100, 6),
      lowGPerL: expect.closeTo(90, 6),
      highGPerL: expect.closeTo(110, 6),
    })
    expect(sightLine(sees(100, 10), [20, 40])).toEqual([point(20), point(40)])
  })

  it('has no point where no sugar fits, and a band that ends where liquids do', () => {
    // With 96 % vol of spirit no litre has room for 500 g; with less than none it is drawn at 0.
    expect(sightLine(sees(500, 10), [30, 96]).map((point) => point.strengthPctVol)).toEqual([30])
    expect(sightLine(sees(5, 10), [30])[0]).toMatchObject({
      sugarGPerL: expect.closeTo(5, 6),
      lowGPerL: 0,
      highGPerL: expect.closeTo(15, 6),
    })
    const [edge] = sightLine(sees(500, 5000), [30])
    expect(edge?.highGPerL).toBeCloseTo(500, 6)
  })

  it('lets through an error that is no refusal', () => {
    const broken = { ...sees(1, 1), see: () => { throw new TypeError('broken') } } // prettier-ignore
    expect(() => sightLine(broken, [30])).toThrow(TypeError)
  })
})

describe('the sights', () => {
  const spirit = composeSolution({ volumeMl: 1000, strengthPctVol: 40, sugarGPerL: 0 })
  const syrup = { ethanolG: 0, waterG: 800, sugarG: 200, acidG: 0, solublesG: 0 }

  it('of density are what a spirit has at that temperature', () => {
    for (const temperatureC of [10, 20, 30])
      expect(densitySight(temperatureC)(spirit)).toBeCloseTo(
        densityOfSpirit({ massFraction: massFractionOfStrength(40), temperatureC }),
        6,
      )
  })

  it('of refraction show 20 °Bx of a fifth of sugar, warm or not', () => {
    expect(brixSight(20)(syrup)).toBeCloseTo(20, 3)
    // Temperature is compensated as for syrup: a syrup shows the same when warm.
    expect(brixSight(30)(syrup)).toBeCloseTo(20, 2)
    // A spirit grows more than syrup does, and so shows less when warm.
    expect(brixSight(30)(spirit)).toBeLessThan(brixSight(20)(spirit) - 0.1)
  })
})

describe('strengthsAround', () => {
  it('are evenly spaced about the middle', () => {
    expect(strengthsAround(40, 10, 5)).toEqual([30, 35, 40, 45, 50])
  })

  it('stay between water and 96 % vol', () => {
    expect(strengthsAround(5, 10, 5)).toEqual([0, 5, 10, 15, 20])
    expect(strengthsAround(92, 10, 3)).toEqual([82, 89, 96])
  })
})
