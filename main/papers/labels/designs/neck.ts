/** The strip round a bottle's neck, in the manner of each design: name, vintage and strength. */
import type { LabelDesign, LabelOp } from '../../../../shared/schemas/labels.ts'
import type { Block } from '../blocks.ts'
import { emblem, emblemWidth } from '../emblem.ts'
import { block, cell, type Design, type LabelToSet } from '../label-to-set.ts'
import { inset, line, rectangle, roundedRectangle, type Box } from '../lengths.ts'

/** What a neck has room for. */
export const neckFields = ['name', 'vintage', 'strength'] as const

export const neck =
  (design: LabelDesign): Design =>
  (label, withEmblem) => {
    const { widthMm, heightMm, inks } = label
    const isDark = design === 'lamplight'
    const strip = inset({ x: 0, y: 0, width: widthMm, height: heightMm }, 0.8 + 0.015 * heightMm)
    const hasEmblem = withEmblem && heightMm >= 14 && widthMm >= 24
    const bottleMm = hasEmblem ? 1.1 * emblemWidth(strip.height) : 0
    const padX = 0.06 * widthMm
    const content: Box = {
      x: strip.x + padX + bottleMm,
      y: strip.y + 0.1 * strip.height,
      width: strip.width - 2 * padX - bottleMm,
      height: 0.8 * strip.height,
    }
    const bottle: Box = {
      x: strip.x + padX * 0.7,
      y: strip.y + 0.1 * strip.height,
      width: bottleMm,
      height: 0.8 * strip.height,
    }
    return {
      ground: [
        ...ground(design, strip, label),
        ...(hasEmblem
          ? emblem(bottle, label.bottleSizeMl, {
              liquid: isDark ? inks.lightAccent : inks.liquid,
              glass: isDark ? inks.light : inks.deep,
              cork: '#b78f5f',
            })
          : []),
      ],
      groundUnfit: [],
      content,
      main: words(design, label),
      justifyMain: 'middle',
      detail: [],
      rule: inks.rule,
      code: { dark: inks.ink, ground: '#ffffff' },
      hasEmblem,
    }
  }

function words(design: LabelDesign, label: LabelToSet): Block[] {
  const { heightMm, inks } = label
  const isDark = design === 'lamplight'
  const [name, rest] = isDark ? [inks.light, inks.light] : [inks.deep, inks.ink]
  const align = design === 'parlour' ? 'center' : 'left'
  return [
    ...block(cell(label, 'name', isDark ? 'serifItalic' : 'serif', name), {
      mostPt: 0.75 * heightMm,
      align,
      mostLines: heightMm > 18 ? 2 : 1,
      leading: 1.08,
    }),
    ...block(
      [
        ...cell(label, 'vintage', 'serif', isDark ? inks.lightAccent : inks.deep, 0.06),
        ...cell(label, 'strength', 'sansBold', rest),
      ],
      { mostPt: 0.5 * heightMm, align, mostLines: 1, gap: 0.1 },
    ),
  ]
}

function ground(design: LabelDesign, strip: Box, { inks }: LabelToSet): LabelOp[] {
  const { x, y, width, height } = strip
  const rule = (level: number, widthMm: number): LabelOp => ({
    op: 'path',
    of: 'frame',
    d: line(x, level, x + width, level),
    stroke: { colour: inks.deep, widthMm },
  })
  switch (design) {
    case 'parlour':
      return [
        rule(y, 0.4),
        rule(y + 0.7, 0.15),
        rule(y + height - 0.7, 0.15),
        rule(y + height, 0.4),
      ]
    case 'ledger':
      return [
        { op: 'path', of: 'ground', d: rectangle({ x, y, width: 1.4, height }), fill: inks.deep },
        rule(y + height, 0.25),
      ]
    case 'glass':
      return [rule(y + height, 0.4)]
    case 'lamplight':
      return [{ op: 'path', of: 'ground', d: roundedRectangle(strip, 1), fill: inks.deep }]
  }
}
