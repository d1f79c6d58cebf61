/** Where labels stand on their sheets, and where to cut. */
import type { DrawnLabels, LabelSheet } from '../../../shared/schemas/labels.ts'
import { line } from './lengths.ts'

type Page = DrawnLabels['pages'][number]

/** Row by row from the first position that is not used up; the next sheet begins at its first. */
export function pagesOf(
  sheet: LabelSheet,
  firstPosition: number,
  copies: readonly number[],
): Page[] {
  const perPage = sheet.columns * sheet.rows
  const pages: Page[] = []
  let position = firstPosition - 1
  for (const [labelIndex, count] of copies.entries())
    for (let copy = 0; copy < count; copy += 1) {
      const page = Math.floor(position / perPage)
      const { placements } = (pages[page] ??= { placements: [] })
      placements.push({ labelIndex, ...cornerOf(sheet, position % perPage) })
      position += 1
    }
  return pages
}

/** Top left corner of a position, counted from 0. */
export const cornerOf = (sheet: LabelSheet, position: number) => ({
  xMm: sheet.marginLeftMm + (position % sheet.columns) * (sheet.labelWidthMm + sheet.gapXMm),
  yMm:
    sheet.marginTopMm + Math.floor(position / sheet.columns) * (sheet.labelHeightMm + sheet.gapYMm),
})

/** Ticks outside the grid, in line with every edge; where the page has no margin, the edges themselves. */
export function cutMarks(sheet: LabelSheet): string {
  const xs = edges(sheet.marginLeftMm, sheet.labelWidthMm, sheet.gapXMm, sheet.columns)
  const ys = edges(sheet.marginTopMm, sheet.labelHeightMm, sheet.gapYMm, sheet.rows)
  const [left, right] = ends(xs)
  const [top, bottom] = ends(ys)
  const room = Math.min(left, sheet.pageWidthMm - right, top, sheet.pageHeightMm - bottom)
  if (room < leastTickMm + tickGapMm)
    return [
      ...xs.map((x) => line(x, top, x, bottom)),
      ...ys.map((y) => line(left, y, right, y)),
    ].join('')
  const from = tickGapMm
  const to = Math.min(tickGapMm + 4, room)
  return [
    ...xs.flatMap((x) => [
      line(x, top - to, x, top - from),
      line(x, bottom + from, x, bottom + to),
    ]),
    ...ys.flatMap((y) => [
      line(left - to, y, left - from, y),
      line(right + from, y, right + to, y),
    ]),
  ].join('')
}

const tickGapMm = 1
const leastTickMm = 2

const ends = (values: readonly number[]): [number, number] => [
  values.at(0) ?? 0,
  values.at(-1) ?? 0,
]

function edges(from: number, size: number, gap: number, count: number): number[] {
  const found = Array.from({ length: count }, (_, index) => from + index * (size + gap)).flatMap(
    (start) => [start, start + size],
  )
  return [...new Set(found.map((edge) => Math.round(edge * 1000) / 1000))]
}
