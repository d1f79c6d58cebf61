import { describe, expect, it } from 'vitest'
import { describeSolution, marry, waterPart } from '../../../main/engine/index.ts'
import { pourTable, type PouredPart } from '../../../main/engine/marrying/pour-table.ts'
import { lpSolver } from '../../../main/service/lp-solver.ts'
import { massOf, matterOf, scaleMatter, sumMatter } from '../../../shared/matter.ts'
import { exactly, extract, spirit, sugar } from './blend-samples.ts'

const solve = await lpSolver()

const married = () =>
  marry(
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

describe('the table of a marriage', () => {
  it('gives whole ml and grams to every bottle, and the rest is what remains', () => {
    const table = married()
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
    const { rows = [] } = married() ?? {}
    expect(rows).toHaveLength(3)
    for (const { sizeMl, filledMl, strengthPctVol, sugarGPerL } of rows) {
      expect(Math.abs(filledMl - sizeMl)).toBeLessThan(3)
      expect(Math.abs(strengthPctVol - 31)).toBeLessThan(0.25)
      expect(Math.abs(sugarGPerL - 190)).toBeLessThan(3)
    }
  })

  it('pours what is dry first, then the lightest liquid, the heaviest last', () => {
    const places = married()?.columns.map(({ place }) => place) ?? []
    expect(places.at(-1)).toBe('jar:draw')
    expect(places.indexOf('jar:first')).toBeLessThan(places.indexOf('jar:draw'))
  })
})

/** Of water alone, so that its ml are its grams over 0.9982. */
const poured = (
  unit: PouredPart['amount']['unit'],
  volumeMl: number,
  more: Partial<PouredPart> = {},
): PouredPart => {
  const matter = more.matter ?? matterOf({ waterG: 0.9982 * volumeMl })
  return {
    amount: {
      place: `jar:${unit}${volumeMl}`,
      unit,
      amount: volumeMl,
      volumeMl,
      massG: massOf(matter),
      isUsedUp: false,
      cost: { minor: 0, isComplete: true },
    },
    matter,
    kind: 'extract',
    volumeMl,
    densityKgPerM3: 998.2,
    ...more,
  }
}

describe('pourTable', () => {
  it('rounds to the nearest ml where that is enough for all bottles', () => {
    // 100 ml over 200 and 100 ml of 300: 66.7 and 33.3.
    const { columns, rows } = pourTable(
      [poured('ml', 100), poured('ml', 200)],
      [
        { sizeMl: 200, count: 1 },
        { sizeMl: 100, count: 1 },
      ],
      300,
    )
    expect(columns).toEqual([
      { place: 'jar:ml100', unit: 'ml', total: 100, remainder: 0 },
      { place: 'jar:ml200', unit: 'ml', total: 200, remainder: 0 },
    ])
    expect(rows).toEqual([
      {
        sizeMl: 200,
        count: 1,
        amounts: [67, 133],
        filledMl: expect.closeTo(200, 1),
        strengthPctVol: 0,
        sugarGPerL: 0,
      },
      {
        sizeMl: 100,
        count: 1,
        amounts: [33, 67],
        filledMl: expect.closeTo(100, 1),
        strengthPctVol: 0,
        sugarGPerL: 0,
      },
    ])
  })

  it('rounds down where the nearest would not last for all, and tells what remains', () => {
    // Three times 33.67 would be three times 34, one more than there is.
    const { columns, rows } = pourTable([poured('ml', 101)], [{ sizeMl: 100, count: 3 }], 300)
    expect(rows.map(({ amounts }) => amounts)).toEqual([[33]])
    expect(columns).toEqual([{ place: 'jar:ml101', unit: 'ml', total: 101, remainder: 2 }])
    // 49.5 twice is what there is, and 50 twice is not; 50 twice of 100 is.
    const amountsOf = (totalMl: number) =>
      pourTable([poured('ml', totalMl)], [{ sizeMl: 100, count: 2 }], 200).rows[0]?.amounts
    expect(amountsOf(99)).toEqual([49])
    expect(amountsOf(100)).toEqual([50])
  })

  it('takes a whole ml that rounding shaved off for whole', () => {
    const amountsOf = (totalMl: number) =>
      pourTable([poured('ml', totalMl)], [{ sizeMl: 100, count: 3 }], 300).rows[0]?.amounts
    expect(amountsOf(150 - 1e-9)).toEqual([50])
    // 33.5 - 0.3e-9 each: a hair below a half is no half.
    expect(amountsOf(100.5 - 1e-9)).toEqual([33])
  })

  it('weighs what is dry and measures what comes out of bottles', () => {
    const { columns, rows } = pourTable(
      [
        poured('g', 31.5, { matter: matterOf({ sugarG: 50 }), kind: 'sweetener' }),
        poured('bottles', 168.5),
      ],
      [{ sizeMl: 100, count: 2 }],
      200,
    )
    expect(columns).toEqual([
      { place: 'jar:g31.5', unit: 'g', total: 50, remainder: 0 },
      { place: 'jar:bottles168.5', unit: 'ml', total: 168.5, remainder: 0.5 },
    ])
    expect(rows.map(({ amounts }) => amounts)).toEqual([[25, 84]])
  })

  it('tells what the whole amounts make, not what was wished', () => {
    const strong = poured('ml', 50, {
      matter: extract('s', { volumeMl: 50, strengthPctVol: 90 }).matter,
    })
    const sweet = poured('ml', 50.4, {
      matter: extract('w', { volumeMl: 50.4, strengthPctVol: 0, sugarGPerL: 500 }).matter,
    })
    const { rows } = pourTable([strong, sweet], [{ sizeMl: 50, count: 2 }], 100)
    expect(rows[0]?.amounts).toEqual([25, 25])
    const made = describeSolution(
      sumMatter([scaleMatter(strong.matter, 25 / 50), scaleMatter(sweet.matter, 25 / 50.4)]),
    )
    expect(rows[0]).toMatchObject({
      filledMl: expect.closeTo(made.volumeMl, 9),
      strengthPctVol: expect.closeTo(made.strengthPctVol, 9),
      sugarGPerL: expect.closeTo(made.sugarGPerL, 9),
    })
    // About 22.5 ml of ethanol and 12.5 g of sugar in a little less than 50 ml.
    expect(rows[0]?.strengthPctVol).toBeGreaterThan(45)
    expect(rows[0]?.sugarGPerL).toBeGreaterThan(250)
  })

  it('gives nothing of nothing', () => {
    const nothing = poured('ml', 0)
    expect(pourTable([nothing], [{ sizeMl: 100, count: 1 }], 0)).toEqual({
      columns: [{ place: 'jar:ml0', unit: 'ml', total: 0, remainder: 0 }],
      rows: [
        { sizeMl: 100, count: 1, amounts: [0], filledMl: 0, strengthPctVol: 0, sugarGPerL: 0 },
      ],
    })
  })
})
