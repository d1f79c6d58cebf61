import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { redFruitIds } from '../../../main/engine/ageing/colour-stability.ts'
import {
  anthocyaninHalfLifeWeeks,
  colourLeft,
  colourStabilityOf,
  fruitLibrary,
  fruitOf,
  halfLifeAt,
  type Stay,
} from '../../../main/engine/index.ts'
import { rootBetween } from '../../../main/engine/root.ts'
import {
  activationOfHalfLives,
  colourLeftChecks,
  lossChecks,
  movedHalfLives,
} from '../../references/ageing-checks.ts'
import { checksOf, missesOf } from '../../references/check-tables.ts'

const weekMs = 7 * 86_400_000
const only = (fruitId: string) => [{ fruit: fruitOf(fruitId), share: 1 }]

function leftAfter(weeks: number, fruitId: string, ...stays: Stay[]) {
  const left = colourLeft({ fruits: only(fruitId), stays, bottledAtMs: 0, atMs: weeks * weekMs })
  if (!left) throw new Error('no colour')
  return left
}

describe('halfLifeAt', () => {
  it('finds the activation energies published with the half-lives', () => {
    const misses = missesOf(checksOf([activationOfHalfLives]), (check) =>
      rootBetween(
        (activationKJPerMol) =>
          halfLifeAt({
            halfLife: check.warmHalfLife,
            atC: check.warmC,
            temperatureC: check.coldC,
            activationKJPerMol,
          }) - check.coldHalfLife,
        10,
        200,
      ),
    )
    expect(misses).toEqual([])
  })

  it('moves a half-life to where another study measured it', () => {
    expect(missesOf(checksOf(movedHalfLives), halfLifeAt)).toEqual([])
  })

  it('leaves what ten liqueurs kept after half a year', () => {
    const misses = missesOf(
      checksOf(colourLeftChecks),
      ({ weeks, ...check }) => 2 ** (-weeks / halfLifeAt({ ...check, atC: 30 })),
    )
    expect(misses).toEqual([])
  })
})

describe('anthocyaninHalfLifeWeeks', () => {
  it('is 14, 7 and 4 weeks at 20 °C in the dark', () => {
    const at20 = (stability: 'stable' | 'medium' | 'labile') =>
      anthocyaninHalfLifeWeeks({ stability, temperatureC: 20 })
    expect([at20('stable'), at20('medium'), at20('labile')]).toEqual([14, 7, 4])
  })

  it('holds the half-life of sour cherry juice between the ends of the stable class', () => {
    const misses = missesOf(
      checksOf([lossChecks]),
      ({ lostShare, weeks }) => weeks / Math.log2(1 / (1 - lostShare)),
    )
    expect(misses).toEqual([])
    const left = leftAfter(26, 'sour_cherry', warm(20))
    expect(left.low).toBeLessThan(0.25)
    expect(left.high).toBeGreaterThan(0.25)
  })

  it('is a third in daylight', () => {
    const light = { stability: 'stable', temperatureC: 15 } as const
    expect(anthocyaninHalfLifeWeeks({ ...light, light: 'daylight' })).toBeCloseTo(
      anthocyaninHalfLifeWeeks(light) / 3,
      12,
    )
  })
})

const warm = (temperatureC: number): Stay => ({ fromMs: 0, temperatureC, light: 'dark' })

describe('colourLeft', () => {
  it('leaves half of a sour cherry after 14 weeks at 20 °C, and a band around it', () => {
    const left = leftAfter(14, 'sour_cherry', warm(20))
    expect(left.value).toBeCloseTo(0.5, 9)
    // At 20 °C in the dark only the half-life itself is uncertain: 9 to 20 weeks.
    expect(left.low).toBeCloseTo(2 ** (-14 / 9), 9)
    expect(left.high).toBeCloseTo(2 ** (-14 / 20), 9)
  })

  it('covers what ten liqueurs kept after half a year at 15 and 30 °C', () => {
    // Food Chem. 157 (2014) 533: from 0 (blackcurrant) to 47 % (sloe) at 15 °C, near nothing at 30 °C.
    expect(leftAfter(26, 'sloe', warm(15)).value).toBeCloseTo(0.47, 1)
    expect(leftAfter(26, 'blackcurrant', warm(15)).low).toBeLessThan(0.01)
    expect(leftAfter(26, 'sloe', warm(30)).value).toBeLessThan(0.06)
  })

  it('has nothing to say where there is no red, or hardly any', () => {
    const question = { stays: [], bottledAtMs: 0, atMs: weekMs }
    for (const id of ['quince', 'green_walnut', 'orange_peel', 'ginger'])
      expect(colourLeft({ ...question, fruits: only(id) })).toBeUndefined()
    expect(colourLeft({ ...question, fruits: [] })).toBeUndefined()
    const mixed = (share: number) => [
      { fruit: fruitOf('quince'), share: 1 },
      { fruit: fruitOf('sloe'), share },
    ]
    expect(colourLeft({ ...question, fruits: mixed(0.05) })).toBeUndefined()
    expect(colourLeft({ ...question, fruits: mixed(0.5) })).toBeDefined()
  })

  it('mixes fruits by share', () => {
    const at = { stays: [warm(20)], bottledAtMs: 0, atMs: 10 * weekMs }
    const sum = colourLeft({
      ...at,
      fruits: [
        { fruit: fruitOf('sloe'), share: 300 },
        { fruit: fruitOf('strawberry'), share: 100 },
      ],
    })
    expect(sum?.value).toBeCloseTo(0.75 * 2 ** (-10 / 14) + 0.25 * 2 ** (-10 / 4), 9)
  })

  it('never rises with time, warmth or light, and keeps its band in order', () => {
    const light = fc.constantFrom('dark', 'dim', 'daylight' as const)
    const brighter = { dark: 'dim', dim: 'daylight', daylight: 'daylight' } as const
    const temperature = fc.double({ min: 0, max: 38, noNaN: true })
    const stay = fc.record({
      fromMs: fc.integer({ min: -20, max: 200 }).map((weeks) => weeks * weekMs),
      temperatureC: temperature,
      light,
    })
    const fruitId = fc.constantFrom(...redFruitIds)
    fc.assert(
      fc.property(
        fruitId,
        fc.array(stay, { maxLength: 4 }),
        fc.double({ min: 0, max: 300, noNaN: true }),
        (id, stays, weeks) => {
          const left = leftAfter(weeks, id, ...stays)
          expect(left.low).toBeGreaterThanOrEqual(0)
          expect(left.low).toBeLessThanOrEqual(left.value)
          expect(left.value).toBeLessThanOrEqual(left.high)
          expect(left.high).toBeLessThanOrEqual(1)
          expect(leftAfter(weeks + 1, id, ...stays).value).toBeLessThanOrEqual(left.value)
          const warmer = stays.map((s) => ({ ...s, temperatureC: s.temperatureC + 2 }))
          expect(leftAfter(weeks, id, ...warmer).value).toBeLessThanOrEqual(left.value)
          const lighter = stays.map((s) => ({ ...s, light: brighter[s.light] }))
          expect(leftAfter(weeks, id, ...lighter).value).toBeLessThanOrEqual(left.value)
        },
      ),
    )
  })
})

describe('colourStabilityOf', () => {
  it('knows only fruits of the library', () => {
    expect(redFruitIds.filter((id) => !fruitLibrary.has(id))).toEqual([])
    expect(colourStabilityOf('quince')).toBeUndefined()
    expect(colourStabilityOf('aronia')).toBe('stable')
  })
})
