/** The plan of a batch on one page, to hang on the kitchen wall and tick off. */
import PdfDocument from 'pdfkit'
import type { Settings } from '../../shared/channels.ts'
import { ratafiaSans } from './fonts/ratafia-sans.ts'
import { paperQuantities, type PaperQuantities } from './paper-quantities.ts'
import { pdfBytes } from './pdf-bytes.ts'
import { paperWords, type PaperWords } from './words/paper-words.ts'
import { deedLines, shoppingLines, type PlanToTell } from './plan-lines.ts'

export interface PlanPaper extends PlanToTell {
  readonly name: string
  readonly note: string
  readonly size: 'A4' | 'Letter'
  readonly settings: Settings
}

const marginPt = 48
const ink = '#2b2320'
const quiet = '#6b5f58'
const rule = '#c9beb4'

/** What a page holds at the largest size; a longer plan is set smaller. */
const roomyLines = 22

export async function planPaper(paper: PlanPaper): Promise<Uint8Array> {
  const { name, note, size, settings } = paper
  const q = paperQuantities(settings)
  const words = paperWords(settings)
  const shopping = shoppingLines(paper, q, words)
  const deeds = deedLines(paper, q, words)
  const lines = deeds.length + shopping.length / 2
  const fontPt = Math.max(7.5, Math.min(11.5, (11.5 * roomyLines) / Math.max(roomyLines, lines)))

  const doc = new PdfDocument({
    size: size === 'A4' ? 'A4' : 'LETTER',
    margins: { top: marginPt, bottom: marginPt / 2, left: marginPt, right: marginPt },
    lang: settings.language ?? 'en',
    info: { Title: name, Creator: 'Ratafia' },
  })
  const bytes = pdfBytes(doc)
  doc.registerFont('regular', Buffer.from(ratafiaSans.regular))
  doc.registerFont('bold', Buffer.from(ratafiaSans.bold))
  const widthPt = doc.page.width - 2 * marginPt
  const line = (gapPt: number) => {
    doc.y += gapPt
    doc
      .moveTo(marginPt, doc.y)
      .lineTo(marginPt + widthPt, doc.y)
      .lineWidth(0.6)
      .stroke(rule)
    doc.y += gapPt
  }
  const heading = (text: string) => {
    doc.font('bold').fontSize(fontPt).fillColor(ink).text(text, marginPt, doc.y, { width: widthPt })
    doc.y += 3
  }

  fitted(doc, name, widthPt)
  doc
    .font('regular')
    .fontSize(fontPt + 1)
    .fillColor(quiet)
  doc.text(outcomeLine(paper, q, words), marginPt, doc.y + 2, { width: widthPt })
  if (note.trim()) {
    doc.y += 4
    doc.font('regular').fontSize(fontPt).fillColor(ink)
    doc.text(note.trim(), marginPt, doc.y, { width: widthPt, height: 3.6 * fontPt, ellipsis: true })
  }
  line(9)

  heading(words.plan.toBuy)
  const topPt = doc.y
  const columns = Math.ceil(shopping.length / 2)
  let lowestPt = topPt
  for (const [index, text] of shopping.entries()) {
    const column = index < columns ? 0 : 1
    if (index === columns) doc.y = topPt
    checkbox(doc, marginPt + (column * widthPt) / 2, doc.y, fontPt)
    doc.font('regular').fontSize(fontPt).fillColor(ink)
    doc.text(text, marginPt + (column * widthPt) / 2 + 1.6 * fontPt, doc.y, {
      width: widthPt / 2 - 2 * fontPt,
    })
    doc.y += 2
    lowestPt = Math.max(lowestPt, doc.y)
  }
  doc.y = lowestPt
  line(8)

  heading(words.plan.toDo)
  const dayPt = 7.6 * fontPt
  const resultPt = 15.5 * fontPt
  let day = ''
  for (const deed of deeds) {
    const top = doc.y
    checkbox(doc, marginPt, top, fontPt)
    doc.font('bold').fontSize(fontPt).fillColor(ink)
    if (deed.day !== day) doc.text(deed.day, marginPt + 1.6 * fontPt, top, { width: dayPt })
    doc.font('regular').fillColor(ink)
    doc.text(deed.deed, marginPt + 1.6 * fontPt + dayPt, top, {
      width: widthPt - 1.6 * fontPt - dayPt - resultPt,
    })
    const bottom = doc.y
    doc.fillColor(quiet).fontSize(fontPt - 1)
    doc.text(deed.result, marginPt + widthPt - resultPt, top + 0.5, {
      width: resultPt,
      align: 'right',
    })
    doc.y = Math.max(bottom, doc.y) + 0.32 * fontPt
    day = deed.day
  }
  line(8)
  footing(doc, paper, q, fontPt, widthPt)
  doc.end()
  return bytes
}

/** A long name is set smaller rather than over two lines. */
function fitted(doc: PDFKit.PDFDocument, name: string, widthPt: number) {
  let sizePt = 26
  doc.font('bold').fillColor(ink)
  while (sizePt > 12 && doc.fontSize(sizePt).widthOfString(name) > widthPt) sizePt -= 1
  doc.text(name, marginPt, doc.y, { width: widthPt, height: 2.5 * sizePt, ellipsis: true })
}

function outcomeLine(
  { outcome }: PlanPaper,
  q: PaperQuantities,
  { plan: say }: PaperWords,
): string {
  const { finished, bottles, bottledMl, remainderMl } = outcome
  if (!finished) return say.nothing
  const rest = remainderMl >= 20 ? say.over(q.volume(remainderMl)) : ''
  const whole =
    bottles > 0
      ? `${say.inBottles(bottles, q.volume(bottledMl))}${rest}`
      : q.volume(finished.volumeMl)
  return say.outcome(whole, q.strength(finished.strengthPctVol), q.sugar(finished.sugarGPerL))
}

function footing(
  doc: PDFKit.PDFDocument,
  { outcome, settings }: PlanPaper,
  q: PaperQuantities,
  fontPt: number,
  widthPt: number,
) {
  const { readyAt, drinkBy, costMinor, isWholeCost } = outcome
  const { plan: say } = paperWords(settings)
  const told = [
    readyAt && say.ready(q.day(readyAt)),
    drinkBy && say.drinkBy(q.day(drinkBy)),
    costMinor !== undefined &&
      (isWholeCost ? say.costs(q.money(costMinor)) : say.costsInPart(q.money(costMinor))),
    say.standard(q.temperature(20)),
  ]
  doc
    .font('regular')
    .fontSize(fontPt - 1)
    .fillColor(quiet)
  doc.text(told.filter(Boolean).join('  '), marginPt, doc.y, { width: widthPt })
}

function checkbox(doc: PDFKit.PDFDocument, x: number, y: number, fontPt: number) {
  doc
    .rect(x, y + 0.22 * fontPt, 0.85 * fontPt, 0.85 * fontPt)
    .lineWidth(0.7)
    .stroke(quiet)
}
