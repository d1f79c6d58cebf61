/** The purchase list on paper, to take along and tick off: as many pages as it needs. */
import PdfDocument from 'pdfkit'
import { ratafiaSans } from './fonts/ratafia-sans.ts'
import { paperWords, type PaperWords } from './words/paper-words.ts'
import { paperQuantities, type PaperQuantities } from './paper-quantities.ts'
import { amountWords, goodsWords, purchaseGroups, type PurchasesToTell } from './purchase-lines.ts'

export interface PurchasePaper extends PurchasesToTell {
  readonly size: 'A4' | 'Letter'
}

const marginPt = 48
const fontPt = 10.5
const rowPt = 16
const ink = '#2b2320'
const quiet = '#6b5f58'
const rule = '#c9beb4'

export async function purchasePaper(paper: PurchasePaper): Promise<Uint8Array> {
  const { settings, size, by, list, fruitOf } = paper
  const q = paperQuantities(settings)
  const said = paperWords(settings)
  const doc = new PdfDocument({
    size: size === 'A4' ? 'A4' : 'LETTER',
    margin: marginPt,
    bufferPages: true,
    lang: settings.language ?? 'en',
    info: { Title: said.purchases.title, Creator: 'Ratafia' },
  })
  const bytes = collected(doc)
  doc.registerFont('regular', Buffer.from(ratafiaSans.regular))
  doc.registerFont('bold', Buffer.from(ratafiaSans.bold))
  const widthPt = doc.page.width - 2 * marginPt
  const bottomPt = doc.page.height - marginPt - rowPt
  const words = (text: string, x: number, width: number, align: 'left' | 'right' = 'left') =>
    doc.text(text, marginPt + x, doc.y, {
      width,
      align,
      height: rowPt,
      ellipsis: true,
      lineBreak: false,
    })

  doc.font('bold').fontSize(24).fillColor(ink).text(said.purchases.title, marginPt, marginPt)
  doc.font('regular').fontSize(fontPt).fillColor(quiet)
  doc.text(summary(paper, q, said), marginPt, doc.y + 2, { width: widthPt })
  doc.y += 10

  const columns = { goods: 20, amount: widthPt - 250, price: widthPt - 150, note: widthPt - 85 }
  for (const { title, lines } of purchaseGroups({ list, by }, q, said)) {
    if (doc.y + 3 * rowPt > bottomPt) doc.addPage()
    doc
      .moveTo(marginPt, doc.y)
      .lineTo(marginPt + widthPt, doc.y)
      .lineWidth(0.6)
      .stroke(rule)
    doc.y += 6
    doc.font('bold').fontSize(fontPt).fillColor(ink)
    const titlePt = doc.y
    words(title, 0, widthPt)
    doc.y = titlePt + rowPt
    for (const line of lines) {
      if (doc.y + rowPt > bottomPt) doc.addPage()
      const top = doc.y
      box(doc, marginPt, top, line.ticked !== undefined)
      doc.font('regular').fontSize(fontPt).fillColor(ink)
      words(goodsWords(line, fruitOf, q, said), columns.goods, columns.amount - columns.goods - 8)
      doc.y = top
      words(amountWords(line, q), columns.amount, 92, 'right')
      doc.y = top
      if (line.priceMinor !== undefined)
        words(q.money(line.priceMinor), columns.price - 8, 68, 'right')
      doc.y = top
      doc.fillColor(quiet)
      words(
        by === 'week' ? said.purchases.shop(line.shop) : q.day(line.from),
        columns.note,
        85,
        'right',
      )
      doc.y = top + rowPt
    }
    doc.y += 6
  }
  numbered(doc)
  doc.end()
  return bytes
}

function summary({ list }: PurchasePaper, q: PaperQuantities, said: PaperWords): string {
  const say = said.purchases
  if (list.lines.length === 0) return say.none
  const open = list.lines.filter(({ ticked }) => !ticked)
  const isWhole = open.every(({ priceMinor }) => priceMinor !== undefined)
  const money = q.money(list.openMinor)
  const told = list.openMinor > 0 ? ` · ${isWhole ? money : say.inPart(money)}` : ''
  return `${say.open(open.length, list.lines.length)}${told}`
}

function box(doc: PDFKit.PDFDocument, x: number, y: number, isTicked: boolean) {
  const side = 0.85 * fontPt
  const top = y + 0.22 * fontPt
  doc.rect(x, top, side, side).lineWidth(0.7).stroke(quiet)
  if (!isTicked) return
  doc
    .moveTo(x + 0.2 * side, top + 0.55 * side)
    .lineTo(x + 0.42 * side, top + 0.8 * side)
    .lineTo(x + 0.85 * side, top + 0.2 * side)
    .lineWidth(1.2)
    .stroke(ink)
}

/** Only where there is more than one page. */
function numbered(doc: PDFKit.PDFDocument) {
  const { count } = doc.bufferedPageRange()
  if (count < 2) return
  for (let page = 0; page < count; page += 1) {
    doc.switchToPage(page)
    doc.font('regular').fontSize(8.5).fillColor(quiet)
    doc.text(`${page + 1} / ${count}`, marginPt, doc.page.height - marginPt - 10, {
      width: doc.page.width - 2 * marginPt,
      align: 'right',
      lineBreak: false,
    })
  }
}

function collected(doc: PDFKit.PDFDocument): Promise<Uint8Array> {
  const chunks: Uint8Array[] = []
  return new Promise((resolve, reject) => {
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk))
    doc.on('end', () => resolve(Buffer.concat(chunks)))
    doc.on('error', reject)
  })
}
