/** The words of a PDF, page after page. */
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

export async function textOfPdf(base64: string): Promise<string> {
  const data = new Uint8Array(Buffer.from(base64, 'base64'))
  const paper = await getDocument({ data, verbosity: 0 }).promise
  const pages = await Promise.all(
    Array.from({ length: paper.numPages }, async (_, index) => {
      const { items } = await (await paper.getPage(index + 1)).getTextContent()
      return items.map((item) => ('str' in item ? item.str : '')).join(' ')
    }),
  )
  return pages.join('\n')
}
