/** A line of letters at its place: one operation for each run of a face, a box for what none has. */
import type { LabelFace, LabelField, LabelOp } from '../../../shared/schemas/labels.ts'
import { mmPerPt, rectangle } from './lengths.ts'
import { setLine } from './set-line.ts'

export interface Cell {
  readonly field: LabelField
  readonly text: string
  readonly face: LabelFace
  readonly colour: string
  /** Between letters, in shares of the letter size. */
  readonly tracking?: number
}

/** The box stands on the baseline, as high as a capital. */
const boxHeight = 0.64
const boxLine = 0.05

export function placeLine(
  { field, face, colour, tracking = 0 }: Cell,
  text: string,
  sizePt: number,
  xMm: number,
  baselineMm: number,
): LabelOp[] {
  const emMm = sizePt * mmPerPt
  const trackingMm = tracking * emMm
  return setLine(face, text, tracking).parts.map((part): LabelOp => {
    const startMm = xMm + part.x * emMm
    if (part.kind === 'missing') {
      const edge = boxLine * emMm
      const d = rectangle({
        x: startMm + edge,
        y: baselineMm - boxHeight * emMm,
        width: part.width * emMm - 2 * edge,
        height: boxHeight * emMm,
      })
      return { op: 'path', of: 'missing', d, stroke: { colour, widthMm: edge } }
    }
    return {
      op: 'text',
      field,
      face: part.face,
      sizePt,
      xMm: startMm,
      baselineMm,
      widthMm: (part.run.width + tracking * Math.max(0, part.run.glyphs.length - 1)) * emMm,
      trackingMm,
      colour,
      text: part.text,
      glyphs: part.run.glyphs.map(({ key, x, y }, index) => ({
        key,
        xMm: x * emMm + index * trackingMm,
        yMm: y * emMm,
      })),
    }
  })
}
