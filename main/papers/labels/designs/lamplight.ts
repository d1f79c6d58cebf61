/** Lamplight: light letters on the batch's colour, deepened, as a bottle held to a lamp. */
import type { Block } from '../blocks.ts'
import { emblem } from '../emblem.ts'
import { block, cell, sizesOf, smallPrint, type Design } from '../label-to-set.ts'
import { inset, roundedRectangle } from '../lengths.ts'

export const lamplight: Design = (label, withEmblem) => {
  const { widthMm, heightMm, inks } = label
  const short = Math.min(widthMm, heightMm)
  const panel = inset({ x: 0, y: 0, width: widthMm, height: heightMm }, 0.8 + 0.015 * short)
  const content = inset(panel, 1 + 0.05 * short, 0.8 + 0.045 * short)
  const { heroPt, middlePt, strengthPt } = sizesOf(label)
  const hasEmblem = withEmblem && heightMm >= 30
  const bottle: Block = {
    kind: 'figure',
    leastMm: 8,
    mostMm: Math.max(8, 0.24 * heightMm),
    gapMm: 0.4,
    draw: (box) =>
      emblem({ ...box, width: box.height / 3.75 }, label.bottleSizeMl, {
        liquid: inks.lightAccent,
        glass: inks.light,
        cork: '#d8b98c',
      }),
  }
  const main: Block[] = [
    ...(hasEmblem ? [bottle] : []),
    ...block(cell(label, 'name', 'serifItalic', inks.light), {
      mostPt: heroPt * 1.08,
      align: 'left',
      mostLines: widthMm > 1.6 * heightMm ? 2 : 3,
      leading: 1.08,
      gap: 0.1,
    }),
    ...block(cell(label, 'vintage', 'serif', inks.lightAccent, 0.08), {
      mostPt: middlePt * 1.25,
      align: 'left',
      mostLines: 1,
      gap: 0.1,
    }),
    ...block(cell(label, 'kind', 'serifItalic', inks.light), {
      mostPt: middlePt,
      align: 'left',
      mostLines: 2,
      gap: 0.1,
    }),
    ...block(
      [
        ...cell(label, 'strength', 'sansBold', inks.light),
        ...cell(label, 'volume', 'sansBold', inks.light),
      ],
      { mostPt: strengthPt, align: 'left', mostLines: 1, gap: 0.4 },
    ),
  ]
  return {
    ground: [
      {
        op: 'path',
        of: 'ground',
        d: roundedRectangle(panel, 0.4 + 0.03 * short),
        fill: inks.deep,
      },
    ],
    groundUnfit: [],
    content,
    main,
    justifyMain: 'bottom',
    detail: smallPrint(label, 'left', { ink: inks.light, quiet: inks.light }),
    rule: inks.lightAccent,
    code: { dark: inks.ink, ground: '#ffffff' },
    hasEmblem,
  }
}
