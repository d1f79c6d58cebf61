/** Colour left as rows of one chart: what is gone, and what is to come. */
import type { ShelfPage } from '../../shared/schemas/shelf.ts'

export interface ColourRow {
  readonly atMs: number
  readonly band: readonly [number, number]
  readonly past?: number
  readonly forecast?: number
}

/** The last row that is past begins the forecast too, so that the line does not break there. */
export function colourRows(points: ShelfPage['colour'], nowMs: number): ColourRow[] {
  const lastPast = points.findLastIndex(({ at }) => Date.parse(at) <= nowMs)
  return points.map(({ at, left: { value, low, high } }, index) => ({
    atMs: Date.parse(at),
    band: [low, high],
    ...(index <= lastPast && { past: value }),
    ...(index >= lastPast && { forecast: value }),
  }))
}
