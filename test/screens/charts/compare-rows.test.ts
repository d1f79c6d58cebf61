import { describe, expect, it } from 'vitest'
import {
  compareRows,
  compareTicks,
  lastDayOf,
  valuesOnDay,
} from '../../../renderer/charts/compare-rows.ts'
import type { ComparedBatch } from '../../../shared/schemas/steeping.ts'

const point = (day: number, strengthPctVol: number, sugarGPerL = 100) => ({
  day,
  strengthPctVol,
  sugarGPerL,
  acidGPerL: 5,
  volumeMl: 1000,
  ethanolInFruitMl: 50,
})
const batches: ComparedBatch[] = [
  { batchId: 'a', points: [point(0, 0, 900), point(1, 50), point(11, 30)] },
  { batchId: 'b', points: [point(0, 60), point(6, 48), point(20, 34)] },
]

describe('compareRows', () => {
  it('reads every line off on the days of all, on the line between its own', () => {
    const rows = compareRows(batches, 'strengthPctVol', 100)
    expect(rows.map(({ day }) => day)).toEqual([0, 1, 6, 11, 20])
    expect(rows.map(({ values }) => values[0])).toEqual([0, 50, 40, 30, null])
    expect(rows.map(({ values }) => values[1])).toEqual([60, 58, 48, 43, 34])
  })

  it('ends at the last day asked for', () => {
    expect(compareRows(batches, 'strengthPctVol', 8).at(-1)?.day).toBe(6)
    expect(lastDayOf(batches)).toBe(20)
    expect(lastDayOf([])).toBe(1)
  })
})

describe('valuesOnDay', () => {
  const rows = compareRows(batches, 'strengthPctVol', 100)
  it('lies between the rows around it, and is null where a batch has ended', () => {
    expect(valuesOnDay(rows, 3.5)).toEqual([45, 53])
    expect(valuesOnDay(rows, 15.5)).toEqual([null, 38.5])
    expect(valuesOnDay(rows, 21)).toEqual([])
  })
})

describe('compareTicks', () => {
  it('is not set by the syrup before the spirit', () => {
    expect(compareTicks(batches, 'sugarGPerL', 100).at(-1)).toBeLessThan(120)
    expect(compareTicks(batches, 'strengthPctVol', 100)).toEqual([30, 40, 50, 60])
  })
})
