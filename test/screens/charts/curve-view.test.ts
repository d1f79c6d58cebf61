import { describe, expect, it } from 'vitest'
import { curveView, stageAt } from '../../../renderer/charts/curve-view.ts'
import type { BatchCurve } from '../../../shared/schemas/steeping.ts'

const day = 86_400_000
const start = Date.parse('2026-06-01T08:00:00Z')
const at = (days: number) => new Date(start + days * day).toISOString()
const point = (days: number, strengthPctVol: number, sugarGPerL: number) => ({
  at: at(days),
  strengthPctVol,
  sugarGPerL,
  acidGPerL: 5,
  volumeMl: 1000,
  ethanolInFruitMl: 50,
})

const steeping = (layeredDays: number): BatchCurve => ({
  series: [
    {
      key: 'whole',
      points: [
        point(0.1, 0, 880),
        point(layeredDays, 45, 120),
        point(30, 38, 150),
        point(60, 38, 150),
      ],
    },
  ],
  now: at(60),
  bands: [
    { stage: 'layered', from: at(0), to: at(layeredDays) },
    { stage: 'steeping', from: at(layeredDays), to: at(60) },
  ],
  readings: [
    {
      moveId: 'a',
      jarId: 'north',
      at: at(30),
      interpretation: { strengthPctVol: 37, doubts: [] },
      isUsed: true,
      isOutlier: false,
    },
    {
      moveId: 'b',
      jarId: 'south',
      at: at(31),
      interpretation: { sugarGPerL: 260, doubts: [] },
      isUsed: true,
      isOutlier: false,
    },
  ],
})

describe('curveView', () => {
  it('lets a brief syrup run off the scale, and says how sweet it was', () => {
    const view = curveView(steeping(1), 'whole', start + 60 * day)
    expect(view.sugarTicks.at(-1)).toBe(320)
    expect(view.sugarPeak?.sugarGPerL).toBe(880)
  })

  it('keeps a syrup on the scale that stood for a third of the time', () => {
    const view = curveView(steeping(20), 'whole', start + 60 * day)
    expect(view.sugarTicks.at(-1)).toBe(1000)
    expect(view.sugarPeak).toBeUndefined()
  })

  it('has as many marks on both scales', () => {
    const { strengthTicks, sugarTicks } = curveView(steeping(1), 'whole', start)
    expect(strengthTicks).toHaveLength(sugarTicks.length)
  })

  it('leaves readings of other jars out of a jar’s curve', () => {
    const { readings } = curveView(steeping(1), 'north', start)
    expect(readings.map(({ moveId }) => moveId)).toEqual(['a'])
  })

  it('draws a day for a batch that began this minute', () => {
    const { domain } = curveView(
      { series: [], now: at(0), bands: [], readings: [] },
      'whole',
      start,
    )
    expect(domain.toMs - domain.fromMs).toBe(day)
  })
})

describe('stageAt', () => {
  it('is the last stage that had begun', () => {
    const { bands } = curveView(steeping(1), 'whole', start)
    expect(stageAt(bands, start + day / 2)).toBe('layered')
    expect(stageAt(bands, start + 40 * day)).toBe('steeping')
    expect(stageAt(bands, start - day)).toBeUndefined()
  })
})
