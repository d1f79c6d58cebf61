/** A PDF's page as pixels, by a renderer that knows nothing of how the paper was made. */
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

export interface Picture {
  readonly width: number
  readonly height: number
  readonly rgba: Uint8ClampedArray
}

interface Canvas {
  readonly canvas: unknown
  readonly context: CanvasRenderingContext2D
}

export async function rasterise(pdf: Uint8Array, page: number, dpi: number): Promise<Picture> {
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise
  const shown = await document.getPage(page)
  const viewport = shown.getViewport({ scale: dpi / 72 })
  const [width, height] = [Math.ceil(viewport.width), Math.ceil(viewport.height)]
  const factory = document.canvasFactory as { create(width: number, height: number): Canvas }
  const { canvas, context } = factory.create(width, height)
  await shown.render({ canvas: canvas as never, canvasContext: context, viewport }).promise
  const { data } = context.getImageData(0, 0, width, height)
  return { width, height, rgba: new Uint8ClampedArray(data) }
}

/** A part of a picture, in pixels. */
export function cropped(picture: Picture, x: number, y: number, side: number): Picture {
  const [left, top, size] = [Math.round(x), Math.round(y), Math.round(side)]
  const rgba = new Uint8ClampedArray(size * size * 4)
  for (let row = 0; row < size; row += 1) {
    const from = ((top + row) * picture.width + left) * 4
    rgba.set(picture.rgba.subarray(from, from + size * 4), row * size * 4)
  }
  return { width: size, height: size, rgba }
}
