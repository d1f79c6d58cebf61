/** Ledger: a coloured spine with the vintage on it, and lines ruled as in a cellar book. */
import type { Block } from '../blocks.ts'
import { fitColumn } from '../column.ts'
import { emblem } from '../emblem.ts'
import { block, cell, sizesOf, smallPrint, type Design } from '../label-to-set.ts'
import { inset, line, rectangle } from '../lengths.ts'

export const ledger: Design = (label, withEmblem) => {
  const { widthMm, heightMm, inks } = label
  const short = Math.min(widthMm, heightMm)
  const sheet = inset({ x: 0, y: 0, width: widthMm, height: heightMm }, 0.9 + 0.02 * short)
  const { heroPt, middlePt, strengthPt } = sizesOf(label)
  const hasEmblem = withEmblem && heightMm >= 24
  const hasSpine = hasEmblem || label.text.vintage !== ''
  const spineMm = hasSpine ? Math.min(24, Math.max(8, 0.17 * widthMm)) : 2
  const spine = { ...sheet, width: spineMm }
  const inSpine = inset(spine, 0.08 * spineMm, 0.12 * spineMm)
  const onSpine = hasSpine ? fitColumn(spineBlocks(), inSpine, 'middle') : undefined
  const pad = 0.8 + 0.03 * short
  const content = {
    x: sheet.x + spineMm + pad,
    y: sheet.y + 0.5 * pad,
    width: sheet.width - spineMm - 1.5 * pad,
    height: sheet.height - pad,
  }

  function spineBlocks(): Block[] {
    const vintage = block(cell(label, 'vintage', 'serif', inks.light), {
      mostPt: 0.62 * spineMm * 2,
      align: 'center',
      mostLines: 1,
      gap: 0.2,
    })
    const bottle: Block = {
      kind: 'figure',
      leastMm: 8,
      mostMm: Math.min(0.6 * sheet.height, 3.2 * spineMm),
      gapMm: 0,
      draw: (box) =>
        emblem(box, label.bottleSizeMl, {
          liquid: inks.lightAccent,
          glass: inks.light,
          cork: '#d8b98c',
        }),
    }
    return [...(hasEmblem ? [bottle] : []), ...vintage]
  }

  const strengthAndVolume = [
    ...cell(label, 'strength', 'sansBold', inks.ink),
    ...cell(label, 'volume', 'sansBold', inks.ink),
  ]
  const main: Block[] = [
    ...block(cell(label, 'name', 'serif', inks.ink), {
      mostPt: heroPt * 0.92,
      align: 'left',
      mostLines: widthMm > 1.6 * heightMm ? 2 : 3,
      leading: 1.1,
    }),
    ...ruled(label.text.name !== '', inks.deep, 0.35),
    ...block(cell(label, 'kind', 'serifItalic', inks.ink), {
      mostPt: middlePt,
      align: 'left',
      mostLines: 2,
      gap: 0.1,
    }),
    ...ruled(label.text.kind !== '', inks.rule, 0.15),
    ...block(strengthAndVolume, { mostPt: strengthPt, align: 'left', mostLines: 1, gap: 0.1 }),
  ]
  return {
    ground: [
      { op: 'path', of: 'ground', d: rectangle(spine), fill: inks.deep },
      {
        op: 'path',
        of: 'frame',
        d: rectangle(sheet),
        stroke: { colour: inks.deep, widthMm: 0.25 },
      },
      ...(onSpine?.draw() ?? []),
    ],
    groundUnfit: onSpine?.problems ?? [],
    content,
    main,
    justifyMain: 'middle',
    detail: smallPrint(label, 'left', inks),
    rule: inks.rule,
    code: { dark: inks.ink, ground: '#ffffff' },
    hasEmblem,
  }
}

/** A line under what stands above, as wide as the column. */
const ruled = (isNeeded: boolean, colour: string, widthMm: number): Block[] =>
  isNeeded
    ? [
        {
          kind: 'figure',
          leastMm: 0.5,
          mostMm: 1.2,
          gapMm: 0.2,
          draw: ({ x, y, width, height }) => [
            {
              op: 'path',
              of: 'rule',
              d: line(x, y + height / 2, x + width, y + height / 2),
              stroke: { colour, widthMm },
            },
          ],
        },
      ]
    : []
