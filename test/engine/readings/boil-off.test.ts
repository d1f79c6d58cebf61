import { describe, expect, it } from 'vitest'
import { DomainError } from '../../../main/engine/domain-error.ts'
import { strengthByBoilOff } from '../../../main/engine/readings/boil-off.ts'
import { liqueurGrid, noiseOf, readBoilOff } from './composed-liqueurs.ts'

describe('strengthByBoilOff', () => {
  it('recovers strength within 0.3 % vol and sugar within 3 g/L over the grid (a round trip)', () => {
    for (const liqueur of liqueurGrid) {
      const found = strengthByBoilOff(readBoilOff(liqueur))
      const name = `${liqueur.strengthPctVol} % vol, ${liqueur.sugarGPerL} g/L`
      expect(Math.abs(found.strengthPctVol - liqueur.strengthPctVol), name).toBeLessThan(0.3)
      expect(Math.abs(found.sugarGPerL - liqueur.sugarGPerL), name).toBeLessThan(3)
    }
  })

  it('is exact to 1e-8 where the equations are its own', () => {
    for (const liqueur of liqueurGrid) {
      const found = strengthByBoilOff(readBoilOff(liqueur))
      expect(found.strengthPctVol).toBeCloseTo(liqueur.strengthPctVol, 8)
      expect(found.sugarGPerL).toBeCloseTo(liqueur.sugarGPerL, 8)
    }
  })

  it('gives the same from densities taken warm or cold', () => {
    for (const temperatureC of [5, 15, 25, 35]) {
      const liqueur = { strengthPctVol: 32, sugarGPerL: 180 }
      const found = strengthByBoilOff(readBoilOff(liqueur, { temperatureC }))
      expect(found.strengthPctVol).toBeCloseTo(32, 7)
      expect(found.sugarGPerL).toBeCloseTo(180, 1)
    }
  })

  it('shows how far the rule of Tabarié errs: 1.1 at 35 % and 200 g/L, 2.2 at 40 % and 250', () => {
    const error = (strengthPctVol: number, sugarGPerL: number) =>
      strengthByBoilOff(readBoilOff({ strengthPctVol, sugarGPerL })).shortcutPctVol! -
      strengthPctVol
    expect(error(35, 200)).toBeCloseTo(1.1, 1)
    expect(error(40, 250)).toBeCloseTo(2.2, 1)
    expect(Math.abs(error(20, 150))).toBeLessThan(0.35)
  })

  it('covers the truth in 90 % of 1,000 noisy cases within two uncertainties, and not for being wide', () => {
    const noise = noiseOf(20261125)
    const uncertainty = 0.5
    const cases = Array.from({ length: 1000 }, () => {
      const liqueur = noise.liqueur()
      const read = readBoilOff(liqueur, { roomOff: 0.005 * noise.normal() })
      const found = strengthByBoilOff({
        densityBeforeKgPerM3: read.densityBeforeKgPerM3 + uncertainty * noise.normal(),
        densityAfterKgPerM3: read.densityAfterKgPerM3 + uncertainty * noise.normal(),
        densityUncertaintyKgPerM3: uncertainty,
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

  it('is less sure with a coarser hydrometer', () => {
    const read = readBoilOff({ strengthPctVol: 30, sugarGPerL: 100 })
    const fine = strengthByBoilOff({ ...read, densityUncertaintyKgPerM3: 0.5 })
    const coarse = strengthByBoilOff({ ...read, densityUncertaintyKgPerM3: 2 })
    expect(coarse.uncertaintyPctVol).toBeGreaterThan(fine.uncertaintyPctVol * 2)
    expect(strengthByBoilOff(read).uncertaintyPctVol).toBeGreaterThan(0.5)
  })

  it('takes a misreading within the noise for the nearest liquid that can be', () => {
    const dry = strengthByBoilOff({ densityBeforeKgPerM3: 948.05, densityAfterKgPerM3: 997.5 })
    expect(dry.sugarGPerL).toBe(0)
    expect(dry.strengthPctVol).toBeCloseTo(40, 1)
    const syrup = strengthByBoilOff({ densityBeforeKgPerM3: 1041, densityAfterKgPerM3: 1040 })
    expect(syrup.strengthPctVol).toBe(0)
  })

  it('refuses pairs that no liqueur has and says by how much', () => {
    const refusal = (densityBeforeKgPerM3: number, densityAfterKgPerM3: number) => {
      try {
        return strengthByBoilOff({ densityBeforeKgPerM3, densityAfterKgPerM3 })
      } catch (error) {
        return error as DomainError
      }
    }
    for (const [before, after, excess] of [
      [1060, 1040, 20],
      [950, 990, 8.2],
      [750, 1040, 94],
    ] as const) {
      const error = refusal(before, after)
      expect(error).toBeInstanceOf(DomainError)
      expect(error).toMatchObject({ code: 'noSuchMixture' })
      const by = (error as DomainError).details.excessKgPerM3 as number
      expect(Math.abs(by - excess), `${before}, ${after}`).toBeLessThan(1)
    }
  })

  it('refuses what no instrument shows', () => {
    const good = { densityBeforeKgPerM3: 1000, densityAfterKgPerM3: 1040 }
    for (const bad of [Number.NaN, Infinity, 0]) {
      expect(() => strengthByBoilOff({ ...good, densityBeforeKgPerM3: bad })).toThrow(RangeError)
      expect(() => strengthByBoilOff({ ...good, densityAfterKgPerM3: bad })).toThrow(RangeError)
      expect(() => strengthByBoilOff({ ...good, densityUncertaintyKgPerM3: bad })).toThrow(
        RangeError,
      )
    }
    expect(() => strengthByBoilOff({ ...good, temperatureC: -1 })).toThrow('0 to 40 °C')
  })
})
