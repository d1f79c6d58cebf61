import { describe, expect, it } from 'vitest'
import { fruitOf, usualDraft } from '../../../main/engine/index.ts'

const startAt = '2026-07-01T08:00:00.000Z'
const draft = (fruitId: string, fruitG = 2000, spiritPctVol = 96) =>
  usualDraft({ fruit: fruitOf(fruitId), fruitG, spiritPctVol, startAt })

describe('usualDraft', () => {
  it('steeps as the library has it: fruit by the litre, cut spirit, and its weeks', () => {
    const spec = draft('quince')
    expect(spec).toEqual({
      startAt,
      fruits: [{ fruitId: 'quince', massG: 2000, refuseShare: 0, cut: 'cut' }],
      sweetenerId: 'sugar',
      // A quarter of the fruit, overnight and again on the spent fruit.
      layeringSugarG: 500,
      layeringDays: 1,
      spirits: [{ strengthPctVol: 96, volumeMl: expect.any(Number) }],
      steepWaterMl: expect.any(Number),
      steepWeeks: 8,
      temperatureC: 20,
      turned: 'weekly',
      sugarDraws: [{ sugarG: 500, days: 10 }],
      isPressed: false,
      finishWaterMl: 0,
      finishSugarG: 0,
      finishSpiritMl: 0,
      settleDays: 14,
      filters: ['cloth', 'paper'],
      bottleSizeMl: 500,
      vessels: { steep: [], extracts: [] },
    })
    // A kilogram to the litre at 65 % vol: 2 L hold 1.3 L of ethanol, which is in 1,354 ml.
    const volumeMl = spec.spirits[0]?.volumeMl ?? 0
    expect(Math.abs(volumeMl - 1354)).toBeLessThanOrEqual(1)
    expect(volumeMl + spec.steepWaterMl).toBeGreaterThan(2000)
    expect(Number.isInteger(volumeMl) && Number.isInteger(spec.steepWaterMl)).toBe(true)
  })

  it('pours spirit as it is where it is no stronger than the fruit wants', () => {
    expect(draft('quince', 2000, 65)).toMatchObject({
      spirits: [{ strengthPctVol: 65, volumeMl: 2000 }],
      steepWaterMl: 0,
    })
    expect(draft('quince', 1500, 40)).toMatchObject({
      spirits: [{ strengthPctVol: 40, volumeMl: 1500 }],
      steepWaterMl: 0,
    })
  })

  it('puts neither peel nor dried fruit under sugar', () => {
    const none = { layeringSugarG: 0, layeringDays: 0, sugarDraws: [] }
    expect(draft('lemon_peel', 100)).toMatchObject(none)
    expect(draft('dried_plum', 500)).toMatchObject(none)
  })

  it('has no sugar draw where its sugar comes to nothing', () => {
    // A quarter of 19 g is less than half of 10 g.
    expect(draft('sour_cherry', 19)).toMatchObject({ layeringSugarG: 0, sugarDraws: [] })
    expect(draft('sour_cherry', 21).sugarDraws).toEqual([{ sugarG: 10, days: 10 }])
  })

  it('cuts hard and soft-fleshed fruit, pricks waxy skins, and leaves the rest whole', () => {
    const cutOf = (fruitId: string) => draft(fruitId).fruits[0]?.cut
    expect(
      ['plum', 'quince', 'sloe', 'raspberry', 'sour_cherry', 'juniper', 'raisin'].map(cutOf),
    ).toEqual(['cut', 'cut', 'pricked', 'whole', 'whole', 'whole', 'whole'])
  })

  it('goes by common practice where the library says nothing', () => {
    const {
      fruitKgPerLSpirit: _,
      steepingStrengthPctVol: __,
      steepingWeeks: ___,
      ...unknown
    } = fruitOf('quince')
    const spec = usualDraft({ fruit: unknown, fruitG: 3000, spiritPctVol: 60, startAt })
    // A kilogram to the litre at 60 % vol, for 6 weeks.
    expect(spec).toMatchObject({
      spirits: [{ strengthPctVol: 60, volumeMl: 3000 }],
      steepWaterMl: 0,
      steepWeeks: 6,
    })
  })
})
