import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { densityOfSpirit } from '../../../main/engine/alcoholometry/density-of-spirit.ts'
import { DomainError } from '../../../main/engine/domain-error.ts'
import { strengthByTwoInstruments } from '../../../main/engine/readings/two-instruments.ts'
import { rootBetween } from '../../../main/engine/root.ts'
import { describeSolution } from '../../../main/engine/solution/describe-solution.ts'
import { liqueurGrid, noiseOf, readTwoInstruments } from './composed-liqueurs.ts'

describe('strengthByTwoInstruments', () => {
  it('recovers every liqueur of the grid (a round trip)', () => {
    for (const liqueur of liqueurGrid) {
      const found = strengthByTwoInstruments(readTwoInstruments(liqueur))
      expect(found.strengthPctVol).toBeCloseTo(liqueur.strengthPctVol, 7)
      expect(found.sugarGPerL).toBeCloseTo(liqueur.sugarGPerL, 6)
      expect(found.residualBrix).toBe(0)
    }
  })

  it('recovers it from a density taken warm or cold', () => {
    for (const temperatureC of [2, 12, 28, 38]) {
      const liqueur = { strengthPctVol: 28, sugarGPerL: 220 }
      const found = strengthByTwoInstruments(readTwoInstruments(liqueur, { temperatureC }))
      expect(found.strengthPctVol).toBeCloseTo(28, 7)
      expect(found.sugarGPerL).toBeCloseTo(220, 6)
    }
  })

  it('finds sugar-free spirit and spirit-free syrup', () => {
    const spirit = describeSolution({ ethanolG: 333, waterG: 667, sugarG: 0 })
    const dry = strengthByTwoInstruments({
      densityKgPerM3: spirit.densityKgPerM3,
      brixReading: spirit.apparentBrix,
    })
    expect(dry.strengthPctVol).toBeCloseTo(spirit.strengthPctVol, 6)
    expect(dry.sugarGPerL).toBeCloseTo(0, 6)
    const syrup = describeSolution({ ethanolG: 0, waterG: 700, sugarG: 300 })
    const weak = strengthByTwoInstruments({
      densityKgPerM3: syrup.densityKgPerM3,
      brixReading: syrup.apparentBrix,
    })
    expect(weak.strengthPctVol).toBeCloseTo(0, 6)
    expect(weak.sugarGPerL).toBeCloseTo(syrup.sugarGPerL, 6)
  })

  it('covers the truth in 90 % of 1,000 noisy cases within two uncertainties, and not for being wide', () => {
    const noise = noiseOf(3)
    const [density, brix] = [0.5, 0.1]
    const cases = Array.from({ length: 1000 }, () => {
      const liqueur = noise.liqueur()
      const read = readTwoInstruments(liqueur, { roomOff: 0.005 * noise.normal() })
      const found = strengthByTwoInstruments({
        densityKgPerM3: read.densityKgPerM3 + density * noise.normal(),
        brixReading: read.brixReading + Math.hypot(brix, 0.2) * noise.normal(),
        densityUncertaintyKgPerM3: density,
        brixUncertainty: brix,
      })
      return {
        strength: (found.strengthPctVol - liqueur.strengthPctVol) / found.uncertaintyPctVol,
        sugar: (found.sugarGPerL - liqueur.sugarGPerL) / found.uncertaintyGPerL,
      }
    })
    for (const quantity of ['strength', 'sugar'] as const) {
      const within = (k: number) => cases.filter((off) => Math.abs(off[quantity]) <= k).length
      expect(within(2), quantity).toBeGreaterThanOrEqual(900)
      expect(within(1), quantity).toBeGreaterThan(600)
      expect(within(1), quantity).toBeLessThan(760)
    }
  })

  it('covers it in 90 % with the noise of the instruments alone as well', () => {
    const noise = noiseOf(4)
    const misses = Array.from({ length: 1000 }, () => {
      const liqueur = noise.liqueur()
      const read = readTwoInstruments(liqueur)
      const found = strengthByTwoInstruments({
        densityKgPerM3: read.densityKgPerM3 + 0.5 * noise.normal(),
        brixReading: read.brixReading + 0.1 * noise.normal(),
        densityUncertaintyKgPerM3: 0.5,
        brixUncertainty: 0.1,
      })
      const off = Math.abs(found.strengthPctVol - liqueur.strengthPctVol)
      return off > 2 * found.uncertaintyPctVol
    }).filter(Boolean)
    expect(misses.length).toBeLessThanOrEqual(100)
  })

  it('states about 0.5 % vol of its own beside perfect instruments, and more beside poor ones', () => {
    const read = readTwoInstruments({ strengthPctVol: 30, sugarGPerL: 200 })
    const perfect = strengthByTwoInstruments({
      ...read,
      densityUncertaintyKgPerM3: 1e-6,
      brixUncertainty: 1e-6,
    })
    expect(perfect.uncertaintyPctVol).toBeGreaterThan(0.4)
    expect(perfect.uncertaintyPctVol).toBeLessThan(0.6)
    expect(strengthByTwoInstruments(read).uncertaintyPctVol).toBeGreaterThan(0.6)
  })

  it('follows the instruments as worked out: 1.5 to 1.9 % vol per °Bx, -0.36 per kg/m³', () => {
    for (const liqueur of [
      { strengthPctVol: 20, sugarGPerL: 100 },
      { strengthPctVol: 40, sugarGPerL: 300 },
    ]) {
      const read = readTwoInstruments(liqueur)
      const here = strengthByTwoInstruments(read).strengthPctVol
      const brixier = strengthByTwoInstruments({ ...read, brixReading: read.brixReading + 0.1 })
      const denser = strengthByTwoInstruments({
        ...read,
        densityKgPerM3: read.densityKgPerM3 + 0.1,
      })
      expect((brixier.strengthPctVol - here) / 0.1).toBeGreaterThan(1.45)
      expect((brixier.strengthPctVol - here) / 0.1).toBeLessThan(1.95)
      expect((denser.strengthPctVol - here) / 0.1).toBeGreaterThan(-0.37)
      expect((denser.strengthPctVol - here) / 0.1).toBeLessThan(-0.345)
    }
  })

  it('has one answer at most: at a given density refraction only rises with spirit', () => {
    const mixture = (fraction: number, sugar: number) => ({
      ethanolG: (1 - sugar) * fraction,
      waterG: (1 - sugar) * (1 - fraction),
      sugarG: sugar,
    })
    for (let density = 800; density <= 1300; density += 50) {
      let before = -Infinity
      for (let fraction = 0; fraction <= 0.995; fraction += 0.02) {
        if (densityOfSpirit({ massFraction: fraction, temperatureC: 20 }) > density) continue
        const excess = (sugar: number) =>
          describeSolution(mixture(fraction, sugar)).densityKgPerM3 - density
        if (excess(0.9) < 0) continue
        const sugar = rootBetween(excess, 0, 0.9)
        const { apparentBrix } = describeSolution(mixture(fraction, sugar))
        expect(apparentBrix, `${density} kg/m³ at ${fraction}`).toBeGreaterThan(before)
        before = apparentBrix
      }
    }
  })

  it('refuses an impossible pair and says by how much', () => {
    const act = () => strengthByTwoInstruments({ densityKgPerM3: 950, brixReading: 10 })
    expect(act).toThrow('density 950 kg/m³ with 10 °Bx is no mixture: 4.4 °Bx too few')
    expect(act).toThrow(DomainError)
    expect(() => strengthByTwoInstruments({ densityKgPerM3: 950, brixReading: 60 })).toThrow(
      '°Bx too many',
    )
  })

  it('takes a pair within the noise for the nearest liquid, and shows the residual', () => {
    const found = strengthByTwoInstruments({ densityKgPerM3: 1040, brixReading: 10 })
    expect(found.strengthPctVol).toBe(0)
    expect(found.residualBrix).toBeLessThan(-0.1)
    expect(found.residualBrix).toBeGreaterThan(-0.8)
  })

  it('is finite and within what can be, or refuses, for whatever the instruments show', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 700, max: 1450, noNaN: true }),
        fc.double({ min: -5, max: 85, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (densityKgPerM3, brixReading, temperatureC) => {
          let found
          try {
            found = strengthByTwoInstruments({ densityKgPerM3, brixReading, temperatureC })
          } catch (error) {
            return error instanceof DomainError
          }
          const { strengthPctVol, sugarGPerL } = found
          return (
            Object.values(found).every(Number.isFinite) &&
            strengthPctVol >= 0 &&
            strengthPctVol <= 100 &&
            sugarGPerL >= 0
          )
        },
      ),
      { numRuns: 2000 },
    )
  })

  it('refuses what no instrument shows', () => {
    const good = { densityKgPerM3: 1000, brixReading: 20 }
    for (const bad of [Number.NaN, Infinity, -Infinity]) {
      for (const kind of ['densityKgPerM3', 'brixReading', 'temperatureC', 'brixUncertainty'])
        expect(() => strengthByTwoInstruments({ ...good, [kind]: bad }), kind).toThrow(RangeError)
    }
    expect(() => strengthByTwoInstruments({ ...good, brixReading: 86 })).toThrow(
      'refractometer reading is 86 °Bx, must be -5 to 85 °Bx',
    )
  })
})
