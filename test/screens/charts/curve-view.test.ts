import { describe, expect, it } from 'vitest'
import { bottledMs, curveView, stageAt } from '../../../renderer/charts/curve-view.ts'
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
    const view = curveView(steeping(1), { key: 'whole' })
    expect(view.scales.sugarGPerL.at(-1)).toBe(300)
    expect(view.sugarPeak?.sugarGPerL).toBe(880)
  })

  it('keeps a syrup on the scale that stood for a third of the time', () => {
    const view = curveView(steeping(20), { key: 'whole' })
    expect(view.scales.sugarGPerL.at(-1)).toBe(1000)
    expect(view.sugarPeak).toBeUndefined()
  })

  it('scales strength to where it steeps, not to the syrup before the spirit', () => {
    // The lines run from 45 to 38 % vol, a reading says 37; sugar from 120 to a reading of 260.
    const { scales } = curveView(steeping(1), { key: 'whole' })
    expect(scales.strengthPctVol).toEqual([36, 38, 40, 42, 44, 46])
    expect(scales.sugarGPerL).toEqual([100, 150, 200, 250, 300])
    expect(scales.volumeMl[0]).toBe(0)
  })

  it('has a row at now, where the line becomes a forecast', () => {
    const view = curveView({ ...steeping(1), now: at(45) }, { key: 'whole' })
    expect(view.rows.map(({ atMs }) => atMs)).toContain(start + 45 * day)
    expect(view.nowMs).toBe(start + 45 * day)
    expect(view.hasForecast).toBe(true)
    expect(curveView(steeping(1), { key: 'whole' }).hasForecast).toBe(false)
  })

  it('ends at the bottles where the liquid has rested there longer than it was worked', () => {
    const rested: BatchCurve = {
      ...steeping(1),
      now: at(60),
      bands: [
        { stage: 'steeping', from: at(0), to: at(20) },
        { stage: 'resting', from: at(20), to: at(60) },
      ],
    }
    const view = curveView(rested, { key: 'whole', endsAtBottles: true })
    expect(view.domain.toMs).toBe(start + 20 * day)
    expect(view.rows.at(-1)?.atMs).toBe(start + 20 * day)
    expect(view.readings).toEqual([])
    expect(bottledMs({ bands: rested.bands.slice(0, 1) })).toBeUndefined()
  })

  it('tells readings used, not used and outliers apart', () => {
    const curve = steeping(1)
    const [used, other] = curve.readings
    if (!used || !other) throw new Error('the fixture has two readings')
    const readings = [used, { ...other, isUsed: false }, { ...used, moveId: 'c', isOutlier: true }]
    const view = curveView({ ...curve, readings }, { key: 'whole' })
    expect(view.readings.map(({ standing }) => standing)).toEqual(['used', 'notUsed', 'outlier'])
  })

  it('holds the changed curve on the same scale', () => {
    const series = [{ key: 'whole', points: [point(1, 60, 120), point(60, 30, 150)] }]
    const view = curveView(steeping(1), { key: 'whole', whatIf: { series, drawOffMs: start } })
    expect(view.changed?.rows).toHaveLength(2)
    expect(view.scales.strengthPctVol).toEqual([30, 40, 50, 60])
  })

  it('leaves readings of other jars out of a jar’s curve', () => {
    const { readings } = curveView(steeping(1), { key: 'north' })
    expect(readings.map(({ moveId }) => moveId)).toEqual(['a'])
  })

  it('draws a day for a batch that began this minute', () => {
    const { domain } = curveView(
      { series: [], now: at(0), bands: [], readings: [] },
      { key: 'whole' },
    )
    expect(domain.toMs - domain.fromMs).toBe(day)
  })
})

describe('stageAt', () => {
  it('is the last stage that had begun', () => {
    const { bands } = curveView(steeping(1), { key: 'whole' })
    expect(stageAt(bands, start + day / 2)).toBe('layered')
    expect(stageAt(bands, start + 40 * day)).toBe('steeping')
    expect(stageAt(bands, start - day)).toBeUndefined()
  })
})
