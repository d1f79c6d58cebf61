import jsqr from 'jsqr'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { describe, expect, it } from 'vitest'
import { recordOf } from '../../../main/papers/labels/code.ts'
import { drawLabels } from '../../../main/papers/labels/draw-labels.ts'
import { labelsPaper } from '../../../main/papers/labels/labels-paper.ts'
import { testPaper } from '../../../main/papers/labels/test-paper.ts'
import { usualSheets } from '../../../main/papers/labels/usual-sheets.ts'
import type { LabelJob } from '../../../shared/schemas/labels.ts'
import { inkOf } from './ink.ts'
import { designs, everything, hostile, job, sheetOf, usual } from './label-samples.ts'
import { cropped, rasterise } from './rasterise.ts'

const paperOf = async (asked: LabelJob) =>
  labelsPaper({ drawn: drawLabels(asked), sheet: asked.sheet, title: 'Labels', locale: 'en-GB' })

async function textOf(pdf: Uint8Array, page = 1): Promise<string> {
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise
  const { items } = await (await document.getPage(page)).getTextContent()
  return items
    .map((item) => ('str' in item ? item.str : ''))
    .join(' ')
    .replaceAll(/[\s\u00a0]+/g, ' ')
}

/** Fonts as the file itself names them, and whether their outlines are in it. */
function fontsOf(pdf: Uint8Array) {
  const file = Buffer.from(pdf).toString('latin1')
  const descriptors = file.match(/\/Type \/FontDescriptor[\s\S]*?endobj/g) ?? []
  return descriptors.map((one) => ({
    name: /\/FontName \/(\S+)/.exec(one)?.[1] ?? '',
    isEmbedded: /\/FontFile[23]? \d+ 0 R/.test(one),
  }))
}

const dpi = 300
const px = (mm: number): number => (mm / 25.4) * dpi

/** The code of a page's nth label, read from its pixels. */
async function codeOn(asked: LabelJob, nth = 0): Promise<string | undefined> {
  const drawn = drawLabels(asked)
  const picture = await rasterise(await paperOf(asked), 1, dpi)
  const place = drawn.pages[0]?.placements[nth]
  const ground = drawn.drawings[place?.labelIndex ?? 0]?.find(
    (op) => op.op === 'path' && op.of === 'codeGround',
  )
  const box = ground && inkOf(ground, drawn.glyphs)[0]
  if (!place || !box) return undefined
  const part = cropped(
    picture,
    px(place.xMm + box.left),
    px(place.yMm + box.top),
    px(box.right - box.left),
  )
  return jsqr(part.rgba, part.width, part.height)?.data
}

describe('labelsPaper', () => {
  it.each(designs)('embeds every font of %s, and needs no other', async (design) => {
    const fonts = fontsOf(await paperOf(job([{}], { design, shown: everything })))
    expect(fonts.length).toBeGreaterThanOrEqual(3)
    expect(fonts.filter(({ isEmbedded }) => !isEmbedded)).toEqual([])
    for (const { name } of fonts) expect(name).toMatch(/^[A-Z]{6}\+Ratafia(?:Sans|Serif)-/)
  })

  it('is text that can be searched and read aloud, in every script of the faces', async () => {
    const text = await textOf(
      await paperOf(
        job([{}, { name: 'Βύσσινο', kind: 'Вишнёвка', note: 'Rượu mận' }], { shown: everything }),
      ),
    )
    for (const words of [
      'Wiśniówka z',
      'Żółtych Łąk',
      '29.5 % vol',
      'Βύσσινο',
      'Вишнёвка',
      'Rượu mận',
    ])
      expect(text).toContain(words)
  })

  it.each(usualSheets.map(({ id }) => [id]))('is as large as the paper of %s', async (id) => {
    const sheet = sheetOf(id)
    const pdf = await paperOf(job([{}], { sheet, part: 'neck', hasCutMarks: true }))
    const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise
    const { width, height } = (await document.getPage(1)).getViewport({ scale: 1 })
    expect((width * 25.4) / 72).toBeCloseTo(sheet.pageWidthMm, 2)
    expect((height * 25.4) / 72).toBeCloseTo(sheet.pageHeightMm, 2)
  })

  it('puts its copies on as many pages as they need', async () => {
    const asked = job([{}])
    const [first] = asked.labels
    const pdf = await paperOf({ ...asked, labels: first ? [{ ...first, copies: 20 }] : [] })
    const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise
    expect(document.numPages).toBe(3)
    expect(await textOf(pdf, 3)).toContain('Żółtych Łąk')
  })

  it('is made of hostile texts too', async () => {
    for (const text of Object.values(hostile)) {
      const filled = Object.fromEntries(everything.map((field) => [field, text]))
      const pdf = await paperOf(job([filled], { shown: everything }))
      const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise
      expect(document.numPages).toBe(1)
    }
  })
})

describe('the code on the paper', () => {
  it.each(designs)('is read back from the pixels of %s, word for word', async (design) => {
    expect(await codeOn(job([{}], { design }))).toBe(recordOf(usual))
  })

  it.each(['a4-3x8-64x34', 'a4-3x3-58x84', 'letter-3x10-67x25'])(
    'is read back on the smaller labels of %s',
    async (id) => {
      const short = { name: 'Sloe', batch: 'Batch sloe', bottled: '8 September 2025' }
      const read = await codeOn(job([{ ...short }], { sheet: sheetOf(id) }))
      expect(read).toBe(recordOf({ ...usual, ...short }))
    },
  )

  it('carries letters of any script', async () => {
    const name = 'Вишнёвка 樱桃酒 🍒 “ß”'
    expect(await codeOn(job([{ name }]))).toContain(name)
  })

  it('says name, vintage, strength and volume, batch and day, one line each', () => {
    expect(recordOf(usual).split('\n')).toEqual([
      'Wiśniówka z Żółtych Łąk',
      '2024',
      '29.5\u00a0%\u00a0vol, 500\u00a0ml',
      'Batch cherry-2024',
      'Bottled 8\u00a0September\u00a02025',
    ])
  })
})

describe('testPaper', () => {
  it('numbers every label of the sheet and gives a length to measure', async () => {
    const text = await textOf(await testPaper(sheetOf('a4-2x4-99x68'), 'Alignment test'))
    for (const words of ['1', '8', '100 mm']) expect(text).toContain(words)
    expect(text).not.toMatch(/\b9\b/)
  })
})
