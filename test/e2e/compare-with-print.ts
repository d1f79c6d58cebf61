/** Holds a sheet as the screen shows it against the PDF, pixel by pixel, each drawn by another renderer. */
import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'

/** Share of pixels that differ clearly between the preview and the PDF, and that have ink. */
export async function compared(page: Page, svg: string, pdf: Buffer) {
  const pdfjs = readFileSync('node_modules/pdfjs-dist/legacy/build/pdf.min.mjs', 'utf8')
  const worker = readFileSync('node_modules/pdfjs-dist/legacy/build/pdf.worker.min.mjs', 'utf8')
  await page.goto('about:blank')
  return page.evaluate(
    async ({ svg: seenSvg, data, pdfjs: library, worker: helper }) => {
      const [libraryUrl, helperUrl] = [library, helper].map((text) =>
        URL.createObjectURL(new Blob([text], { type: 'text/javascript' })),
      )
      const { getDocument, GlobalWorkerOptions } = await import(libraryUrl ?? '')
      GlobalWorkerOptions.workerSrc = helperUrl
      const bytes = Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0))
      const paper = await getDocument({ data: bytes, disableFontFace: true }).promise
      const shown = await paper.getPage(1)
      const viewport = shown.getViewport({ scale: 200 / 72 })
      const [width, height] = [Math.round(viewport.width), Math.round(viewport.height)]
      const white = () => {
        const canvas = Object.assign(document.createElement('canvas'), { width, height })
        const context = canvas.getContext('2d')
        if (!context) throw new Error('no canvas')
        context.fillStyle = '#ffffff'
        context.fillRect(0, 0, width, height)
        return { canvas, context }
      }
      const printed = white()
      const { canvas, context: canvasContext } = printed
      await shown.render({ canvas, canvasContext, viewport }).promise
      const seen = white()
      const image = new Image()
      const size = `width="${width}" height="${height}"`
      // The screen's own outlines of the labels are not printed.
      const alone = seenSvg
        .replace('<svg', `<svg xmlns="http://www.w3.org/2000/svg" ${size}`)
        .replaceAll(/<rect class="[^"]*edge[^"]*"[^>]*>(?:<\/rect>)?/g, '')
      image.src = URL.createObjectURL(new Blob([alone], { type: 'image/svg+xml' }))
      await image.decode()
      seen.context.drawImage(image, 0, 0, width, height)
      const [a, b] = [printed, seen].map(({ context }) => {
        const { data: rgba } = context.getImageData(0, 0, width, height)
        return Array.from({ length: width * height }, (_, pixel) => {
          const [red = 0, green = 0, blue = 0] = rgba.subarray(4 * pixel, 4 * pixel + 3)
          return 255 - (red + green + blue) / 3
        })
      })
      if (!a || !b) throw new Error('nothing to compare')
      const share = (count: number) => count / (width * height)
      return {
        inked: share(a.filter((darkness) => darkness > 60).length),
        differing: share(
          a.filter((darkness, pixel) => Math.abs(darkness - (b[pixel] ?? 0)) > 90).length,
        ),
      }
    },
    { svg, data: pdf.toString('base64'), pdfjs, worker },
  )
}
