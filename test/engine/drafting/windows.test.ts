import { describe, expect, it } from 'vitest'
import type { ChainStage, DraftSpec } from '../../../shared/schemas/drafts.ts'
import { fruitOf } from '../../../main/engine/index.ts'
import {
  chargedKg,
  leadingFruit,
  steepingLiquor,
  windowsOf,
  windowWarnings,
} from '../../../main/engine/drafting/windows.ts'
import { plainDraft } from './seeded-drafts.ts'

const fruits = (...masses: [string, number, number?][]): DraftSpec['fruits'] =>
  masses.map(([fruitId, massG, refuseShare = 0]) => ({ fruitId, massG, refuseShare, cut: 'whole' }))

const draft = (change: Partial<DraftSpec> = {}): DraftSpec => ({
  ...plainDraft('sour_cherry'),
  spirits: [{ strengthPctVol: 60, volumeMl: 1000 }],
  steepWaterMl: 0,
  ...change,
})

describe('the fruit whose windows count', () => {
  it('is the one there is most of, the first of two alike', () => {
    const leading = (...masses: [string, number][]) =>
      leadingFruit(draft({ fruits: fruits(...masses) }), fruitOf).id
    expect(leading(['quince', 900], ['sloe', 1000], ['apple', 500])).toBe('sloe')
    expect(leading(['quince', 1000], ['sloe', 1000])).toBe('quince')
  })

  it('is weighed without what is thrown away', () => {
    const spec = draft({ fruits: fruits(['quince', 1000, 0.4], ['sloe', 500]) })
    expect(chargedKg(spec)).toBeCloseTo(0.6 + 0.5, 12)
  })
})

describe('the liquor that fruit is steeped in', () => {
  it('is all spirits and the water as if mixed before', () => {
    const liquor = steepingLiquor(
      draft({
        spirits: [
          { strengthPctVol: 60, volumeMl: 700 },
          { strengthPctVol: 60, volumeMl: 300 },
        ],
      }),
    )
    expect(liquor?.strengthPctVol).toBeCloseTo(60, 3)
    expect(liquor?.volumeMl).toBeCloseTo(1000, 1)
    // OIML R 22: a litre at 96 % vol with 0.6 of its volume of water comes to about 61 % vol.
    const thinned = steepingLiquor(
      draft({ spirits: [{ strengthPctVol: 96, volumeMl: 1000 }], steepWaterMl: 600 }),
    )
    expect(thinned?.strengthPctVol).toBeGreaterThan(61)
    expect(thinned?.strengthPctVol).toBeLessThan(62.5)
    expect(thinned?.volumeMl).toBeLessThan(1600)
  })

  it('is none where nothing is poured', () => {
    expect(steepingLiquor(draft({ spirits: [] }))).toBeUndefined()
  })
})

describe('windowsOf', () => {
  const finished = {
    strengthPctVol: 31,
    sugarGPerL: 205,
    acidGPerL: 6,
    volumeMl: 2000,
    densityKgPerM3: 1030,
  }
  const cherry = fruitOf('sour_cherry')

  it('holds each number against the library’s range for it', () => {
    const spec = draft({ fruits: fruits(['sour_cherry', 1500, 0.2]), steepWeeks: 7 })
    expect(windowsOf(spec, cherry, finished)).toEqual([
      {
        window: 'steepingStrengthPctVol',
        value: expect.closeTo(60, 3),
        typical: 65,
        low: 50,
        high: 80,
      },
      // 1.5 kg less a fifth, on a litre.
      {
        window: 'fruitKgPerLSpirit',
        value: expect.closeTo(1.2, 3),
        typical: 1.2,
        low: 0.8,
        high: 2.7,
      },
      { window: 'steepingWeeks', value: 7, typical: 6, low: 3, high: 10 },
      { window: 'finishedSugarGPerL', value: 205, typical: 200, low: 120, high: 300 },
      { window: 'finishedStrengthPctVol', value: 31, typical: 32, low: 22, high: 42 },
    ])
  })

  it('leaves out what there is no number for, and what the library says nothing of', () => {
    const names = (
      spec: DraftSpec,
      fruit = cherry,
      liquid: typeof finished | undefined = finished,
    ) => windowsOf(spec, fruit, liquid).map(({ window }) => window)
    expect(names(draft(), cherry, undefined).length).toBe(5)
    expect(windowsOf(draft(), cherry, undefined).map(({ window }) => window)).toEqual([
      'steepingStrengthPctVol',
      'fruitKgPerLSpirit',
      'steepingWeeks',
    ])
    expect(names(draft({ spirits: [] }))).toEqual([
      'steepingWeeks',
      'finishedSugarGPerL',
      'finishedStrengthPctVol',
    ])
    const { steepingWeeks: _, finishedSugarGPerL: __, ...unknown } = cherry
    expect(names(draft(), unknown)).toEqual([
      'steepingStrengthPctVol',
      'fruitKgPerLSpirit',
      'finishedStrengthPctVol',
    ])
  })
})

describe('windowWarnings', () => {
  const weeks = (value: number) =>
    ({ window: 'steepingWeeks', value, typical: 6, low: 3, high: 10 }) as const
  const stage = (key: ChainStage['key']): ChainStage => ({
    key,
    ordinal: 1,
    from: '2026-07-01T08:00:00.000Z',
    to: '2026-07-02T08:00:00.000Z',
    inflows: [],
    vessels: [],
  })
  const stages = [stage('layered'), stage('steeping'), stage('married'), stage('bottled')]

  it('tells what left its window, at the stage where it did', () => {
    expect(windowWarnings([weeks(10.2)], stages)).toStrictEqual([
      { code: 'outsideWindow', window: 'steepingWeeks', value: 10.2, low: 3, high: 10, stage: 1 },
    ])
    const sweet = {
      window: 'finishedSugarGPerL',
      value: 90,
      typical: 200,
      low: 120,
      high: 300,
    } as const
    expect(windowWarnings([sweet], stages)).toMatchObject([{ value: 90, stage: 2 }])
    expect(windowWarnings([weeks(1)], [])).toStrictEqual([
      { code: 'outsideWindow', window: 'steepingWeeks', value: 1, low: 3, high: 10 },
    ])
  })

  it('warns nobody of what looks like the limit', () => {
    // Half a hundredth of the upper end is not seen on a screen.
    expect(windowWarnings([weeks(3), weeks(10), weeks(2.951), weeks(10.049)], stages)).toEqual([])
    expect(windowWarnings([weeks(2.949), weeks(10.051)], stages)).toHaveLength(2)
  })
})
