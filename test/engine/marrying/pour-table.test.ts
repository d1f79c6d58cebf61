import { describe, expect, it } from 'vitest'
import { marry, waterPart } from '../../../main/engine/index.ts'
import { lpSolver } from '../../../main/service/lp-solver.ts'
import { exactly, extract, spirit, sugar } from './blend-samples.ts'

const solve = await lpSolver()

const table = marry(
  {
    parts: [
      extract('first', { volumeMl: 4000, strengthPctVol: 44 }),
      extract('draw', { volumeMl: 2500, strengthPctVol: 21, sugarGPerL: 390 }),
      spirit(1000),
      sugar(2000),
      waterPart(),
    ],
    wishes: {
      strengthPctVol: exactly(31),
      sugarGPerL: exactly(190),
      bottles: [
        { sizeMl: 500, count: 7 },
        { sizeMl: 200, count: 5 },
        { sizeMl: 700, count: 1 },
      ],
    },
    prefer: 'even',
    holds: 'composition',
    amount: 'most',
  },
  solve,
).pourTable

describe('pourTable', () => {
  it('gives whole ml and grams to every bottle, and the rest is what remains', () => {
    expect(table?.rows.map(({ sizeMl, count }) => [sizeMl, count])).toEqual([
      [500, 7],
      [200, 5],
      [700, 1],
    ])
    table?.columns.forEach(({ total, remainder }, column) => {
      const poured = (table?.rows ?? []).reduce(
        (sum, { count, amounts }) => sum + count * (amounts[column] ?? 0),
        0,
      )
      expect(Number.isInteger(poured)).toBe(true)
      expect(poured + remainder).toBe(total)
      expect(remainder).toBeGreaterThan(-1e-6)
      expect(remainder).toBeLessThan(13)
    })
  })

  it('keeps the bottles within what whole ml allow of each other', () => {
    for (const { sizeMl, filledMl, strengthPctVol, sugarGPerL } of table?.rows ?? []) {
      expect(Math.abs(filledMl - sizeMl)).toBeLessThan(3)
      expect(Math.abs(strengthPctVol - 31)).toBeLessThan(0.25)
      expect(Math.abs(sugarGPerL - 190)).toBeLessThan(3)
    }
  })

  it('pours what is dry first, then the lightest liquid, the heaviest last', () => {
    const places = table?.columns.map(({ place }) => place) ?? []
    expect(places.at(-1)).toBe('jar:draw')
    expect(places.indexOf('jar:first')).toBeLessThan(places.indexOf('jar:draw'))
  })
})
