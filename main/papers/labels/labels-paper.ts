/** Labels as a PDF: text as text, in faces that travel inside the file, everything else as paths. */
import PdfDocument from 'pdfkit'
import {
  LabelFace,
  type DrawnLabels,
  type LabelOp,
  type LabelSheet,
} from '../../../shared/schemas/labels.ts'
import { pdfBytes } from '../pdf-bytes.ts'
import { faceFiles } from './faces.ts'
import { mmPerPt } from './lengths.ts'

const pt = (lengthMm: number): number => lengthMm / mmPerPt

export interface LabelsPaper {
  readonly drawn: DrawnLabels
  readonly sheet: LabelSheet
  readonly title: string
  readonly locale: string
}

export function labelsPaper({ drawn, sheet, title, locale }: LabelsPaper): Promise<Uint8Array> {
  const doc = new PdfDocument({
    autoFirstPage: false,
    lang: locale,
    info: { Title: title, Creator: 'Ratafia' },
  })
  const bytes = pdfBytes(doc)
  for (const face of LabelFace.options) doc.registerFont(face, Buffer.from(faceFiles[face]))
  for (const { placements } of drawn.pages) {
    doc.addPage({ size: [pt(sheet.pageWidthMm), pt(sheet.pageHeightMm)], margin: 0 })
    if (drawn.cutMarks) drawPath(doc, drawn.cutMarks, cutMarkInk)
    for (const { labelIndex, xMm, yMm } of placements) {
      doc.save().translate(pt(xMm), pt(yMm))
      for (const op of drawn.drawings[labelIndex] ?? []) draw(doc, op)
      doc.restore()
    }
  }
  doc.end()
  return bytes
}

export const cutMarkInk = { stroke: { colour: '#8a8a8a', widthMm: 0.1 } } as const

function draw(doc: PDFKit.PDFDocument, op: LabelOp) {
  if (op.op === 'path') {
    drawPath(doc, op.d, op)
    return
  }
  doc.font(op.face).fontSize(op.sizePt).fillColor(op.colour)
  doc.text(op.text, pt(op.xMm), pt(op.baselineMm), {
    lineBreak: false,
    baseline: 'alphabetic',
    characterSpacing: pt(op.trackingMm),
    // Asked for by name, a list makes the whole run be shaped at once, as it was laid out.
    features: [],
  })
}

function drawPath(
  doc: PDFKit.PDFDocument,
  d: string,
  {
    fill,
    stroke,
  }: { fill?: string | undefined; stroke?: { colour: string; widthMm: number } | undefined },
) {
  if (d === '') return
  doc.save().scale(1 / mmPerPt)
  doc.path(d)
  if (fill) doc.fill(fill)
  else if (stroke) doc.lineWidth(stroke.widthMm).stroke(stroke.colour)
  doc.restore()
}
