/** A sheet's outlines with numbers and a ruler: held against the labels, it shows what the printer shifts. */
import PdfDocument from 'pdfkit'
import type { LabelSheet } from '../../../shared/schemas/labels.ts'
import { pdfBytes } from '../pdf-bytes.ts'
import { faceFiles } from './faces.ts'
import { line, mmPerPt, rectangle } from './lengths.ts'
import { cornerOf } from './sheet-grid.ts'

const rulerMm = 100

export function testPaper(sheet: LabelSheet, title: string): Promise<Uint8Array> {
  const { pageWidthMm, pageHeightMm, labelWidthMm: width, labelHeightMm: height } = sheet
  const doc = new PdfDocument({
    size: [pageWidthMm / mmPerPt, pageHeightMm / mmPerPt],
    margin: 0,
    info: { Title: title, Creator: 'Ratafia' },
  })
  const bytes = pdfBytes(doc)
  doc.registerFont('sans', Buffer.from(faceFiles.sans))
  doc.scale(1 / mmPerPt).lineWidth(0.15)
  for (let position = 0; position < sheet.columns * sheet.rows; position += 1) {
    const { xMm: x, yMm: y } = cornerOf(sheet, position)
    const [middleX, middleY] = [x + width / 2, y + height / 2]
    doc.path(rectangle({ x, y, width, height })).stroke('#1c2521')
    doc.path(line(middleX - 2, middleY, middleX + 2, middleY)).stroke('#1c2521')
    doc.path(line(middleX, middleY - 2, middleX, middleY + 2)).stroke('#1c2521')
    doc.font('sans').fontSize(3).fillColor('#1c2521')
    doc.text(String(position + 1), x + 1.5, y + 1.2, { lineBreak: false })
  }
  drawRuler(doc, sheet)
  doc.end()
  return bytes
}

/** A length to measure: printers that scale to fit make it shorter. */
function drawRuler(doc: PDFKit.PDFDocument, sheet: LabelSheet) {
  const lengthMm = Math.min(rulerMm, Math.floor(sheet.pageWidthMm / 10 - 1) * 10)
  const x = (sheet.pageWidthMm - lengthMm) / 2
  const y = sheet.marginTopMm + sheet.labelHeightMm * 0.72
  doc.path(line(x, y, x + lengthMm, y)).stroke('#97291c')
  for (let at = 0; at <= lengthMm; at += 10)
    doc.path(line(x + at, y - 1, x + at, y + 1)).stroke('#97291c')
  doc.font('sans').fontSize(3).fillColor('#97291c')
  doc.text(`${lengthMm} mm`, x, y + 1.4, { lineBreak: false })
}
