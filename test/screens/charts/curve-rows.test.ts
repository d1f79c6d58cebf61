import { describe, expect, it } from 'vitest'
import { curveRows, rowAt } from '../../../renderer/charts/curve-rows.ts'
import type { CurveSeries, CurveValues } from '../../../shared/schemas/steeping.ts'

const day = 86_400_000
const start = Date.parse('2026-06-01T08:00:00Z')
const at = (days: number) => new Date(start + days * day).toISOString()
const valuesOf = (strengthPctVol: number, sugarGPerL = 0): CurveValues => ({
  strengthPctVol,
  sugarGPerL,
  acidGPerL: 5,
  volumeMl: 1000,
  ethanolInFruitMl: 50,
})
const point = (days: number, strengthPctVol: number, sugarGPerL = 0) => ({
  at: at(days),
  ...valuesOf(strengthPctVol, sugarGPerL),
})
describe('curveRows', () => {
  it('keeps a batch of one move as one row', () => {
    const rows = curveRows([{ key: 'whole', points: [point(0, 96)] }], 'whole')
    expect(rows.map((row) => row.values?.strengthPctVol)).toEqual([96])
  })

  it('breaks the line of a jar while it stood empty', () => {
    const curve: CurveSeries[] = [
      { key: 'whole', points: [0, 1, 2, 3, 4].map((days) => point(days, 40 + days)) },
      { key: 'north', points: [point(0, 40), point(1, 41), point(3, 43), point(4, 44.5)] },
    ]
    const rows = curveRows(curve, 'north')
    expect(rows.map((row) => row.values?.strengthPctVol)).toEqual([40, 41, undefined, 43, 44.5])
  })

  it('thins 3,000 points of two smooth years to at most 500 and stays within 0.1 % vol of each', () => {
    const points = Array.from({ length: 3000 }, (_, i) =>
      point(i / 4, 30 + 20 * Math.exp(-i / 300), 200 * (1 - Math.exp(-i / 500))),
    )
    const rows = curveRows([{ key: 'whole', points }], 'whole')
    expect(rows.length).toBeLessThanOrEqual(500)
    expect(rows[0]?.atMs).toBe(start)
    expect(rows.at(-1)?.atMs).toBe(Date.parse(at(2999 / 4)))
    for (const { at: instant, strengthPctVol } of points)
      expect(Math.abs(between(rows, Date.parse(instant)) - strengthPctVol)).toBeLessThan(0.1)
  })

  it('keeps both ends of the step that a pour makes', () => {
    const before = { ...point(10, 20), at: new Date(start + 10 * day - 1).toISOString() }
    const points = [point(0, 20), point(5, 20), before, point(10, 45), point(20, 45)]
    const rows = curveRows([{ key: 'whole', points }], 'whole')
    expect(rows.map(({ values }) => values?.strengthPctVol)).toEqual([20, 20, 45, 45])
  })

  it('is empty where a jar never held liquid', () => {
    expect(curveRows([{ key: 'whole', points: [] }], 'north')).toEqual([])
  })
})

describe('rowAt', () => {
  const rows = curveRows(
    [{ key: 'whole', points: [point(1, 40), point(2, 42), point(3, 50)] }],
    'whole',
  )
  it('lies on the line between the rows around an instant', () => {
    expect(rowAt(rows, start + 2.5 * day)?.values.strengthPctVol).toBeCloseTo(46, 9)
    expect(rowAt(rows, start + 3 * day)?.values.strengthPctVol).toBe(50)
  })
  it('finds nothing before the first, after the last, or where the jar stood empty', () => {
    expect(rowAt(rows, start)).toBeUndefined()
    expect(rowAt(rows, start + 4 * day)).toBeUndefined()
    const broken = curveRows(
      [
        { key: 'whole', points: [0, 1, 2, 3].map((days) => point(days, 40)) },
        { key: 'north', points: [point(0, 40), point(1, 41), point(3, 43)] },
      ],
      'north',
    )
    expect(rowAt(broken, start + 2 * day)).toBeUndefined()
  })
  it('reads the band between the rows too', () => {
    const banded = curveRows(
      [
        {
          key: 'whole',
          points: [0, 2].map((days) => ({
            ...point(days, 40 + days),
            low: valuesOf(38 + days),
            high: valuesOf(44 + days),
          })),
        },
      ],
      'whole',
    )
    const at1 = rowAt(banded, start + day)
    expect([at1?.low?.strengthPctVol, at1?.high?.strengthPctVol]).toEqual([39, 45])
  })
})

function between(rows: ReturnType<typeof curveRows>, atMs: number): number {
  const right = rows.findIndex((row) => row.atMs >= atMs)
  const b = rows[right]
  const a = rows[Math.max(0, right - 1)]
  if (!a || !b) throw new Error('outside the rows')
  const share = b.atMs === a.atMs ? 1 : (atMs - a.atMs) / (b.atMs - a.atMs)
  const [from, to] = [a, b].map((row) => row.values?.strengthPctVol ?? 0) as [number, number]
  return from + (to - from) * share
}
