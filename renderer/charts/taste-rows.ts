/** A taste over years: for each axis the scores of one lot, or of two on the same axes. */
import { msPerDay } from '../../shared/spans-of-time.ts'
import type { MoveOf, TasteAxis } from '../../shared/schemas/moves.ts'
import { TasteAxis as AllAxes } from '../../shared/schemas/moves.ts'
import type { TimeDomain } from './time-axis.ts'

export interface TastedLot {
  readonly lotId: string
  readonly name: string
  readonly bottledMs: number
  /** Of its batch. */
  readonly colour: string
  readonly tastings: readonly MoveOf<'taste'>[]
}

/** By the calendar, or by how long the lot has been in the bottle. */
export type TasteTime = 'date' | 'age'

export interface TastePoint {
  readonly xMs: number
  readonly score: number
  readonly at: string
}

export interface TastePanel {
  readonly axis: TasteAxis
  /** In the order of the lots. */
  readonly series: readonly (readonly TastePoint[])[]
}

const placeOf = ({ bottledMs }: TastedLot, at: string, by: TasteTime): number =>
  by === 'date' ? Date.parse(at) : Date.parse(at) - bottledMs

/** Only axes that were ever judged, in the order in which a glass is judged. */
export function tastePanels(lots: readonly TastedLot[], by: TasteTime): TastePanel[] {
  return AllAxes.options
    .map((axis) => ({ axis, series: lots.map((lot) => seriesOf(lot, axis, by)) }))
    .filter(({ series }) => series.some((points) => points.length > 0))
}

const seriesOf = (lot: TastedLot, axis: TasteAxis, by: TasteTime): TastePoint[] =>
  lot.tastings
    .flatMap(({ at, scores }) => {
      const score = scores[axis]
      return score === undefined ? [] : [{ xMs: placeOf(lot, at, by), score, at }]
    })
    .sort((a, b) => a.xMs - b.xMs)

const msPerMonth = 30.44 * msPerDay

/** One domain for all panels, half a year at least, with room so that no mark stands on the edge. */
export function tasteDomain(panels: readonly TastePanel[]): TimeDomain {
  const all = panels.flatMap(({ series }) => series.flat().map(({ xMs }) => xMs))
  if (all.length === 0) return { fromMs: 0, toMs: msPerMonth }
  const least = Math.min(...all)
  const greatest = Math.max(...all)
  const room = Math.max(3 * msPerMonth, 0.06 * (greatest - least))
  return { fromMs: least - room, toMs: greatest + room }
}
