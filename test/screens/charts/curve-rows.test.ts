import { describe, expect, it } from 'vitest'
import { curveRows, rowAt } from '../../../renderer/charts/curve-rows.ts'
import type { BatchCurve } from '../../../shared/schemas/steeping.ts'

const day = 86_400_000
const start = Date.parse('2026-06-01T08:00:00Z')
const at = (days: number) => new Date(start + days * day).toISOString()
const point = (days: number, strengthPctVol: number, sugarGPerL = 0) => ({
  at: at(days),
  strengthPctVol,
  sugarGPerL,
  acidGPerL: 5,
  volumeMl: 1000,
  ethanolInFruitMl: 50,
})
const curveOf = (series: BatchCurve['series']): BatchCurve => ({
  series,
  now: at(1000),
  bands: [],
  readings: [],
})

describe('curveRows', () => {
  it('keeps a batch of one move as one row', () => {
    const rows = curveRows(curveOf([{ key: 'whole', points: [point(0, 96)] }]), 'whole')
    expect(rows.map((row) => row.strengthPctVol)).toEqual([96])
  })

  it('breaks the line of a jar while it stood empty', () => {
    const curve = curveOf([
      { key: 'whole', points: [0, 1, 2, 3, 4].map((days) => point(days, 40 + days)) },
      { key: 'north', points: [point(0, 40), point(1, 41), point(3, 43), point(4, 44.5)] },
    ])
    const rows = curveRows(curve, 'north')
    expect(rows.map((row) => row.strengthPctVol)).toEqual([40, 41, null, 43, 44.5])
  })

  it('thins 3,000 points of two smooth years to at most 500 and stays within 0.1 % vol of each', () => {
    const points = Array.from({ length: 3000 }, (_, i) =>
      point(i / 4, 30 + 20 * Math.exp(-i / 300), 200 * (1 - Math.exp(-i / 500))),
    )
    const rows = curveRows(curveOf([{ key: 'whole', points }]), 'whole')
    expect(rows.length).toBeLessThanOrEqual(500)
    expect(rows[0]?.atMs).toBe(start)
    expect(rows.at(-1)?.atMs).toBe(Date.parse(at(2999 / 4)))
    for (const { at: instant, strengthPctVol } of points)
      expect(Math.abs(between(rows, Date.parse(instant)) - strengthPctVol)).toBeLessThan(0.1)
  })

  it('keeps both ends of the step that a pour makes', () => {
    const before = { ...point(10, 20), at: new Date(start + 10 * day - 1).toISOString() }
    const points = [point(0, 20), point(5, 20), before, point(10, 45), point(20, 45)]
    const rows = curveRows(curveOf([{ key: 'whole', points }]), 'whole')
    expect(rows.map(({ strengthPctVol }) => strengthPctVol)).toEqual([20, 20, 45, 45])
  })

  it('is empty where a jar never held liquid', () => {
    expect(curveRows(curveOf([{ key: 'whole', points: [] }]), 'north')).toEqual([])
  })
})

describe('rowAt', () => {
  const rows = curveRows(
    curveOf([{ key: 'whole', points: [point(1, 40), point(2, 42), point(3, 50)] }]),
    'whole',
  )
  it('finds the last row at or before an instant', () => {
    expect(rowAt(rows, start + 2.5 * day)?.strengthPctVol).toBe(42)
  })
  it('finds nothing before the first', () => {
    expect(rowAt(rows, start)).toBeUndefined()
  })
})

function between(rows: ReturnType<typeof curveRows>, atMs: number): number {
  const right = rows.findIndex((row) => row.atMs >= atMs)
  const b = rows[right]
  const a = rows[Math.max(0, right - 1)]
  if (!a || !b) throw new Error('outside the rows')
  const share = b.atMs === a.atMs ? 1 : (atMs - a.atMs) / (b.atMs - a.atMs)
  return (a.strengthPctVol ?? 0) + ((b.strengthPctVol ?? 0) - (a.strengthPctVol ?? 0)) * share
}
