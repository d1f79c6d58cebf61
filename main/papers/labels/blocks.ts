/** The blocks of a column: as a design asks for them, and set at a size. */
import { mmPerPt, type Box } from './lengths.ts'
import type { LabelOp } from '../../../shared/schemas/labels.ts'
import type { Cell } from './place-line.ts'
import { setLine } from './set-line.ts'

/** Words on one or more lines; several cells stand on one line, spread over the width. */
export interface TextBlock {
  readonly kind: 'text'
  readonly cells: readonly Cell[]
  readonly mostPt: number
  readonly align: 'left' | 'center' | 'right'
  /** Letters shrink rather than run over more lines, down to the smallest. */
  readonly mostLines: number
  /** From line to line, in letter sizes. */
  readonly leading?: number
  /** Above the block, in its letter sizes; left out at the top. */
  readonly gap?: number
}

/** Something drawn, between two heights. */
export interface FigureBlock {
  readonly kind: 'figure'
  readonly leastMm: number
  readonly mostMm: number
  readonly draw: (box: Box) => readonly LabelOp[]
  /** Above it, in mm. */
  readonly gapMm: number
}

export type Block = TextBlock | FigureBlock

export interface SetText {
  readonly kind: 'text'
  readonly block: TextBlock
  readonly sizePt: number
  /** One cell's lines, or one line of several cells. */
  lines: readonly string[]
  readonly wholeLines: number
  /** A word had to be broken. */
  readonly isStrained: boolean
}
export type SetBlock =
  SetText | { readonly kind: 'figure'; readonly block: FigureBlock; readonly heightMm: number }

const usualLeading = 1.18
/** What letters usually reach above and below the baseline; stacked marks need more. */
const usualAbove = 0.74
const usualBelow = 0.25

interface LineRoom {
  /** From line to line, and from a line's top to its baseline, in letter sizes. */
  readonly leading: number
  readonly baseline: number
}

const rooms = new WeakMap<TextBlock, LineRoom>()

export function roomOf(block: TextBlock): LineRoom {
  const known = rooms.get(block)
  if (known) return known
  const set = block.cells.map(({ face, text, tracking = 0 }) => setLine(face, text, tracking))
  const above = Math.max(usualAbove, ...set.map((line) => line.above))
  const below = Math.max(usualBelow, ...set.map((line) => line.below))
  const leading = Math.max(block.leading ?? usualLeading, above + below + 0.02)
  const room = { leading, baseline: (leading - above - below) / 2 + above }
  rooms.set(block, room)
  return room
}

/** Between cells on one line, in letter sizes. */
export const cellGap = 1.2

export function rowWidth({ cells }: TextBlock, sizePt: number): number {
  const letters = cells.reduce((sum, cell) => sum + widthOf(cell), 0)
  return (letters + cellGap * (cells.length - 1)) * sizePt * mmPerPt
}

export const widthOf = ({ face, text, tracking = 0 }: Cell): number =>
  setLine(face, text, tracking).width

export const gapOf = (set: SetBlock): number =>
  set.kind === 'figure' ? set.block.gapMm : (set.block.gap ?? 0) * set.sizePt * mmPerPt

export const innerHeight = (set: SetBlock): number =>
  set.kind === 'figure' ? set.heightMm : set.lines.length * lineMm(set)

const lineMm = ({ block, sizePt }: SetText): number => roomOf(block).leading * sizePt * mmPerPt

export function heightOf(column: readonly SetBlock[]): number {
  const filled = column.filter((set) => innerHeight(set) > 0)
  return filled.reduce((sum, set, index) => sum + innerHeight(set) + (index ? gapOf(set) : 0), 0)
}
