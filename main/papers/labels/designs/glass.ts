/** Glass: the bottle itself, drawn to scale as high as the label, with the words beside it. */
import type { Block } from '../blocks.ts'
import { emblem, emblemWidth } from '../emblem.ts'
import { block, cell, sizesOf, smallPrint, type Design } from '../label-to-set.ts'
import { inset, line } from '../lengths.ts'

export const glass: Design = (label, withEmblem) => {
  const { widthMm, heightMm, inks } = label
  const short = Math.min(widthMm, heightMm)
  const sheet = inset({ x: 0, y: 0, width: widthMm, height: heightMm }, 1.6 + 0.035 * short)
  const { heroPt, middlePt, strengthPt } = sizesOf(label)
  const hasEmblem = withEmblem && sheet.height >= 16
  const bottleMm = hasEmblem ? Math.min(emblemWidth(sheet.height), 0.26 * widthMm) : 0
  const gap = hasEmblem ? 0.8 + 0.035 * short : 0
  const shelf = sheet.y + sheet.height
  const content = {
    ...sheet,
    x: sheet.x + bottleMm + gap,
    width: sheet.width - bottleMm - gap,
    height: sheet.height - 0.8,
  }
  const bottleHeight = Math.min(sheet.height - 0.4, (bottleMm / emblemWidth(1)) * 1)
  const main: Block[] = [
    ...block(cell(label, 'vintage', 'sansBold', inks.deep, 0.14), {
      mostPt: middlePt * 0.85,
      align: 'left',
      mostLines: 1,
    }),
    ...block(cell(label, 'name', 'serif', inks.ink), {
      mostPt: heroPt,
      align: 'left',
      mostLines: widthMm > 1.6 * heightMm ? 2 : 4,
      leading: 1.08,
      gap: 0.05,
    }),
    ...block(cell(label, 'kind', 'serifItalic', inks.ink), {
      mostPt: middlePt,
      align: 'left',
      mostLines: 2,
      gap: 0.15,
    }),
    ...block(
      [
        ...cell(label, 'strength', 'sansBold', inks.deep),
        ...cell(label, 'volume', 'sans', inks.ink),
      ],
      { mostPt: strengthPt, align: 'left', mostLines: 1, gap: 0.45 },
    ),
  ]
  return {
    ground: [
      {
        op: 'path',
        of: 'rule',
        d: line(sheet.x, shelf, sheet.x + sheet.width, shelf),
        stroke: { colour: inks.deep, widthMm: 0.4 },
      },
      ...(hasEmblem
        ? emblem(
            { x: sheet.x, y: shelf - 0.4 - bottleHeight, width: bottleMm, height: bottleHeight },
            label.bottleSizeMl,
            { liquid: inks.liquid, glass: '#4f625a', cork: '#b78f5f' },
          )
        : []),
    ],
    groundUnfit: [],
    content,
    main,
    justifyMain: 'middle',
    detail: smallPrint(label, 'left', inks),
    rule: inks.rule,
    code: { dark: inks.ink, ground: '#ffffff' },
    hasEmblem,
  }
}
