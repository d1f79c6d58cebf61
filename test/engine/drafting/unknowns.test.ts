import { describe, expect, it } from 'vitest'
import type { DraftPin, DraftSpec } from '../../../shared/schemas/drafts.ts'
import { fruitOf } from '../../../main/engine/index.ts'
import { unknownsOf, withUnknowns, type Reach } from '../../../main/engine/drafting/unknowns.ts'
import { plainDraft } from './seeded-drafts.ts'

const fruit = fruitOf('sour_cherry')
const draft = (change: Partial<DraftSpec> = {}): DraftSpec => ({
  ...plainDraft('sour_cherry', 1200),
  // 1.2 kg on a litre of liquor: in the middle of 0.8 to 2.7.
  spirits: [{ strengthPctVol: 65, volumeMl: 1000 }],
  steepWaterMl: 0,
  layeringSugarG: 300,
  sugarDraws: [
    { sugarG: 200, days: 10 },
    { sugarG: 100, days: 5 },
  ],
  finishWaterMl: 250,
  finishSugarG: 100,
  finishSpiritMl: 0,
  ...change,
})
const pinsOf = (spec: DraftSpec, reach: Reach, pins: DraftPin[] = []) =>
  unknownsOf(spec, pins, fruit, reach).map(({ pin }) => pin)

describe('unknownsOf', () => {
  it('begins with the amounts as they are, and goes as far as the library and physics let it', () => {
    expect(unknownsOf(draft({ steepWaterMl: 100 }), [], fruit, 'physics')).toEqual([
      { pin: 'fruit', start: 1, low: 1e-3, high: 1e4, pull: 0.001 },
      { pin: 'spirit', start: 1, low: 0.1, high: 10, pull: 1 },
      { pin: 'steepWater', start: 1, low: 0, high: 1, pull: 1.5 },
      { pin: 'layeringSugar', start: 1, low: 0, high: 1, pull: 0.8 },
      { pin: 'drawSugar', start: 1, low: 0.05, high: 1, pull: 1 },
      // Told by the litre of spirit.
      { pin: 'finishWater', start: 0.25, low: 0, high: 30, pull: 0.05 },
      { pin: 'finishSugar', start: 0.1, low: 0, high: 10, pull: 0.05 },
      { pin: 'finishSpirit', start: 0, low: 0, high: 10, pull: 2 },
    ])
  })

  it('keeps fruit by the litre within its window', () => {
    const spiritOf = (spec: DraftSpec, reach: Reach = 'window') =>
      unknownsOf(spec, [], fruit, reach).find(({ pin }) => pin === 'spirit')
    // 1.2 kg/L may become 2.7 with 0.444 of the spirit, or 0.8 with 1.5 times as much.
    expect(spiritOf(draft())).toMatchObject({
      low: expect.closeTo(1.2 / 2.7, 3),
      high: expect.closeTo(1.5, 3),
    })
    // Outside of it already, it may stay as it is.
    const crowded = draft({ spirits: [{ strengthPctVol: 65, volumeMl: 300 }] })
    expect(spiritOf(crowded)).toMatchObject({ low: 1, high: expect.closeTo(5, 2) })
    const thin = draft({ spirits: [{ strengthPctVol: 65, volumeMl: 2400 }] })
    expect(spiritOf(thin)).toMatchObject({ low: expect.closeTo(0.5 / 2.7, 3), high: 1 })
    expect(spiritOf(draft(), 'fortified')).toEqual(spiritOf(draft()))
    expect(spiritOf(draft(), 'physics')).toMatchObject({ low: 0.1, high: 10 })
    const { fruitKgPerLSpirit: _, ...unknown } = fruit
    expect(unknownsOf(draft(), [], unknown, 'window')[1]).toMatchObject({ low: 0.1, high: 10 })
  })

  it('turns nothing that is pinned, and nothing that the draft has none of', () => {
    expect(pinsOf(draft(), 'window', ['fruit', 'finishSugar'])).toEqual([
      'spirit',
      'layeringSugar',
      'drawSugar',
      'finishWater',
    ])
    expect(pinsOf(draft({ layeringSugarG: 0, sugarDraws: [] }), 'window')).toEqual([
      'fruit',
      'spirit',
      'finishWater',
      'finishSugar',
    ])
  })

  it('adds spirit at the end only where it must, or where its maker did already', () => {
    expect(pinsOf(draft(), 'window')).not.toContain('finishSpirit')
    expect(pinsOf(draft(), 'fortified')).toContain('finishSpirit')
    expect(pinsOf(draft(), 'physics')).toContain('finishSpirit')
    expect(pinsOf(draft({ finishSpiritMl: 50 }), 'window')).toContain('finishSpirit')
    expect(pinsOf(draft(), 'physics', ['finishSpirit'])).not.toContain('finishSpirit')
  })
})

describe('withUnknowns', () => {
  const spec = draft({ steepWaterMl: 100, finishSpiritMl: 40 })
  const all = () => unknownsOf(spec, [], fruit, 'physics')

  it('is the draft itself at the numbers it began with', () => {
    const unknowns = all()
    expect(
      withUnknowns(
        spec,
        unknowns,
        unknowns.map(({ start }) => start),
      ),
    ).toEqual(spec)
  })

  it('sizes everything by the fruit, and each amount by its own number', () => {
    const x = [2, 1.5, 0.5, 0.25, 0.1, 0.3, 0.2, 0.05]
    expect(withUnknowns(spec, all(), x)).toEqual({
      ...spec,
      fruits: [{ ...spec.fruits[0], massG: 2400 }],
      spirits: [{ strengthPctVol: 65, volumeMl: 3000 }],
      // Half of the water, for three times the spirit.
      steepWaterMl: 150,
      layeringSugarG: 150,
      sugarDraws: [
        { sugarG: expect.closeTo(40, 9), days: 10 },
        { sugarG: expect.closeTo(20, 9), days: 5 },
      ],
      // By the litre of the spirit begun with, twice.
      finishWaterMl: 600,
      finishSugarG: 400,
      finishSpiritMl: 100,
    })
  })

  it('leaves what is pinned as it is, whatever the size of the rest', () => {
    const pins: DraftPin[] = [
      'spirit',
      'steepWater',
      'layeringSugar',
      'drawSugar',
      'finishWater',
      'finishSugar',
      'finishSpirit',
    ]
    const sized = withUnknowns(spec, unknownsOf(spec, pins, fruit, 'physics'), [3])
    expect(sized).toEqual({ ...spec, fruits: [{ ...spec.fruits[0], massG: 3600 }] })
  })
})
