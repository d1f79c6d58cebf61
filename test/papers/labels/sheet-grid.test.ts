import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cutMarks, pagesOf } from '../../../main/papers/labels/sheet-grid.ts'
import { usualSheetId, usualSheets } from '../../../main/papers/labels/usual-sheets.ts'
import { LabelSheet } from '../../../shared/schemas/labels.ts'
import { pointsOf } from './ink.ts'

describe('usualSheets', () => {
  it('all fit on their paper, in its middle, under ids of their own', () => {
    for (const sheet of usualSheets) {
      expect(LabelSheet.safeParse(sheet).success, sheet.id).toBe(true)
      const right =
        sheet.marginLeftMm + sheet.columns * sheet.labelWidthMm + (sheet.columns - 1) * sheet.gapXMm
      expect(sheet.pageWidthMm - right).toBeCloseTo(sheet.marginLeftMm, 2)
    }
    expect(new Set(usualSheets.map(({ id }) => id)).size).toBe(usualSheets.length)
  })

  it('has the one to begin with, for either paper', () => {
    const ids = usualSheets.map(({ id }) => id)
    expect(ids).toContain(usualSheetId(false))
    expect(ids).toContain(usualSheetId(true))
  })
})

describe('LabelSheet', () => {
  it('refuses a grid that is larger than its paper', () => {
    const [sheet] = usualSheets
    const wide = LabelSheet.safeParse({ ...sheet, columns: 3 })
    expect(wide.error?.issues.map(({ path }) => path)).toEqual([['columns']])
    expect(LabelSheet.safeParse({ ...sheet, rows: 9 }).success).toBe(false)
  })
})

describe('pagesOf', () => {
  it('prints every copy once, from the first position on, and leaves no page empty', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...usualSheets),
        fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 6 }),
        fc.nat(),
        (sheet, copies, from) => {
          const places = sheet.columns * sheet.rows
          const first = 1 + (from % places)
          const pages = pagesOf(sheet, first, copies)
          const counts = copies.map(
            (_, index) =>
              pages
                .flatMap(({ placements }) => placements)
                .filter((one) => one.labelIndex === index).length,
          )
          expect(counts).toEqual(copies)
          expect(pages.every(({ placements }) => placements.length > 0)).toBe(true)
          expect(pages[0]?.placements.length).toBeLessThanOrEqual(places - first + 1)
          for (const { placements } of pages)
            expect(new Set(placements.map(({ xMm, yMm }) => `${xMm} ${yMm}`)).size).toBe(
              placements.length,
            )
        },
      ),
      { numRuns: 60 },
    )
  })
})

describe('cutMarks', () => {
  it.each(usualSheets.map((sheet) => [sheet.id, sheet]))('stay on the paper of %s', (_, sheet) => {
    const points = pointsOf(cutMarks(sheet))
    expect(points.length).toBeGreaterThan(8)
    for (const [x, y] of points) {
      expect(x).toBeGreaterThanOrEqual(0)
      expect(y).toBeGreaterThanOrEqual(0)
      expect(x).toBeLessThanOrEqual(sheet.pageWidthMm)
      expect(y).toBeLessThanOrEqual(sheet.pageHeightMm)
    }
  })

  it('lie outside the labels where the margins have room', () => {
    const sheet = usualSheets.find(({ id }) => id === 'a4-2x4-99x68')
    if (!sheet) throw new Error('no such sheet')
    const inside = pointsOf(cutMarks(sheet)).filter(
      ([x, y]) =>
        x > sheet.marginLeftMm &&
        x < sheet.pageWidthMm - sheet.marginLeftMm &&
        y > sheet.marginTopMm &&
        y < sheet.pageHeightMm - sheet.marginTopMm,
    )
    expect(inside).toEqual([])
  })
})
