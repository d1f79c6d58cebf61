/** Parlour: a double frame in the batch's colour, everything centred, as for a visit. */
import { emblem } from '../emblem.ts'
import { block, cell, sizesOf, smallPrint, type Design } from '../label-to-set.ts'
import { inset, line, mm, rectangle, type Box } from '../lengths.ts'
import type { Block } from '../blocks.ts'

const leastEmblemMm = 8

export const parlour: Design = (label, withEmblem) => {
  const { widthMm, heightMm, inks } = label
  const short = Math.min(widthMm, heightMm)
  const outer = inset({ x: 0, y: 0, width: widthMm, height: heightMm }, 0.9 + 0.02 * short)
  const inner = inset(outer, 0.9)
  const content = inset(inner, 0.6 + 0.035 * short, 0.4 + 0.03 * short)
  const { heroPt, middlePt, strengthPt } = sizesOf(label)
  const hasEmblem = withEmblem && heightMm >= 30
  const bottle: Block = {
    kind: 'figure',
    leastMm: leastEmblemMm,
    mostMm: Math.max(leastEmblemMm, 0.26 * heightMm),
    gapMm: 0,
    draw: (box) =>
      emblem(box, label.bottleSizeMl, { liquid: inks.liquid, glass: inks.deep, cork: '#b78f5f' }),
  }
  const main: Block[] = [
    ...(hasEmblem ? [bottle] : []),
    ...block(cell(label, 'name', 'serif', inks.deep), {
      mostPt: heroPt,
      align: 'center',
      mostLines: widthMm > 1.6 * heightMm ? 2 : 3,
      leading: 1.12,
      gap: 0.1,
    }),
    ...block(cell(label, 'kind', 'serifItalic', inks.ink), {
      mostPt: middlePt,
      align: 'center',
      mostLines: 2,
      gap: 0.15,
    }),
    ...(label.text.vintage === '' ? [] : [flourish(inks.deep, 0.012 * short + 0.5)]),
    ...block(cell(label, 'vintage', 'serif', inks.deep, 0.12), {
      mostPt: middlePt * 1.1,
      align: 'center',
      mostLines: 1,
      gap: 0.15,
    }),
    ...block(
      [
        ...cell(label, 'strength', 'sansBold', inks.ink),
        ...cell(label, 'volume', 'sansBold', inks.ink),
      ],
      { mostPt: strengthPt, align: 'center', mostLines: 1, gap: 0.35 },
    ),
  ]
  return {
    ground: [
      frame(outer, inks.deep, Math.min(0.6, 0.25 + 0.004 * short)),
      frame(inner, inks.deep, 0.15),
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

const frame = (box: Box, colour: string, widthMm: number) =>
  ({ op: 'path', of: 'frame', d: rectangle(box), stroke: { colour, widthMm } }) as const

/** A short rule with a lozenge in its middle. */
function flourish(colour: string, gapMm: number): Block {
  return {
    kind: 'figure',
    leastMm: 1,
    mostMm: 1.4,
    gapMm,
    draw: ({ x, y, width, height }) => {
      const middle = x + width / 2
      const level = y + height / 2
      const reach = Math.min(width / 2, 9)
      const half = height / 2
      const stroke = { colour, widthMm: 0.15 }
      return [
        {
          op: 'path',
          of: 'rule',
          d: line(middle - reach, level, middle - 1.6 * half, level),
          stroke,
        },
        {
          op: 'path',
          of: 'rule',
          d: line(middle + 1.6 * half, level, middle + reach, level),
          stroke,
        },
        {
          op: 'path',
          of: 'rule',
          d: `M${mm(middle)} ${mm(y)}l${mm(half)} ${mm(half)}l${mm(-half)} ${mm(half)}l${mm(-half)} ${mm(-half)}Z`,
          fill: colour,
        },
      ]
    },
  }
}
