/**
 * The emblem: the lot's own bottle, drawn to scale, filled with the batch's colour. Its outline is
 * the bottle of the screens; a litre bottle takes the whole height, smaller ones less.
 */
import type { LabelOp } from '../../../shared/schemas/labels.ts'
import { mm, roundedRectangle, type Box } from './lengths.ts'

/** Height over greatest diameter of the glass. */
const heightPerDiameter = 3.75
/** Of the whole emblem, what stands above the brim as cork. */
const corkShare = 0.07

/** Outline by height above the bottom, both in shares: of the glass's height, of its greatest radius. */
const outline = [
  [0, 0.9],
  [0.02, 0.98],
  [0.05, 1],
  [0.58, 1],
  [0.66, 0.88],
  [0.74, 0.5],
  [0.8, 0.36],
  [0.94, 0.33],
  [1, 0.35],
] as const

/** Where a bottle is filled to, in shares of its height: into the neck. */
const fillLevel = 0.86

/** How high a bottle stands beside a litre's; the smallest is still seen. */
export const scaleOfBottle = (bottleSizeMl: number): number =>
  Math.min(1, Math.max(0.5, Math.cbrt(bottleSizeMl / 1000)))

/** Widest that an emblem of a height can be. */
export const emblemWidth = (heightMm: number): number =>
  (heightMm * (1 - corkShare)) / heightPerDiameter

export interface EmblemInks {
  readonly liquid: string
  readonly glass: string
  readonly cork: string
}

/** Stands on the bottom of the box, in its middle. */
export function emblem(box: Box, bottleSizeMl: number, inks: EmblemInks): LabelOp[] {
  const heightMm = box.height * scaleOfBottle(bottleSizeMl)
  const glassMm = heightMm * (1 - corkShare)
  const radiusMm = glassMm / heightPerDiameter / 2
  const bottom = box.y + box.height
  const middle = box.x + box.width / 2
  const at = (level: number, radius: number, side: 1 | -1) =>
    `${mm(middle + side * radius * radiusMm)} ${mm(bottom - level * glassMm)}`
  const body = outlinePath(1, 1, at)
  const liquid = outlinePath(fillLevel, 0.88, at)
  const neckMm = 0.35 * radiusMm
  const corkMm = heightMm * corkShare
  const strokeMm = Math.min(0.35, Math.max(0.12, heightMm / 90))
  return [
    {
      op: 'path',
      of: 'emblem',
      d: roundedRectangle(
        {
          x: middle - 0.8 * neckMm,
          y: bottom - heightMm,
          width: 1.6 * neckMm,
          height: corkMm * 1.25,
        },
        0.2 * neckMm,
      ),
      fill: inks.cork,
    },
    { op: 'path', of: 'emblem', d: liquid, fill: inks.liquid },
    { op: 'path', of: 'emblem', d: body, stroke: { colour: inks.glass, widthMm: strokeMm } },
  ]
}

/** Up one side to a level and down the other; corners are rounded by the closeness of the points. */
function outlinePath(
  top: number,
  share: number,
  at: (level: number, radius: number, side: 1 | -1) => string,
): string {
  const steps = 48
  const levels = Array.from({ length: steps + 1 }, (_, step) => {
    // The liquid stands a glass's thickness inside.
    const from = share === 1 ? 0 : 0.012
    return from + ((top - from) * step) / steps
  })
  const left = levels.map((level) => at(level, share * radiusAt(level), -1))
  const right = levels.toReversed().map((level) => at(level, share * radiusAt(level), 1))
  return `M${[...left, ...right].join('L')}Z`
}

/** Monotone cubic through the outline's points (Fritsch and Carlson), so that nothing bulges. */
function radiusAt(level: number): number {
  const after = outline.findIndex(([height]) => height >= level)
  const from = Math.max(0, after - 1)
  const [h0, r0] = outline[from] ?? [0, 1]
  const [h1, r1] = outline[from + 1] ?? [1, 1]
  const step = h1 - h0
  const x = (level - h0) / step
  return (
    r0 * (1 + 2 * x) * (1 - x) ** 2 +
    tangentAt(from) * step * x * (1 - x) ** 2 +
    r1 * x ** 2 * (3 - 2 * x) +
    tangentAt(from + 1) * step * x ** 2 * (x - 1)
  )
}

function tangentAt(index: number): number {
  const slope = (from: number) => {
    const [a, b] = [outline[from], outline[from + 1]]
    return a && b ? (b[1] - a[1]) / (b[0] - a[0]) : 0
  }
  if (index === 0) return slope(0)
  if (index === outline.length - 1) return slope(index - 1)
  const [before, behind] = [slope(index - 1), slope(index)]
  return before * behind <= 0 ? 0 : (2 * before * behind) / (before + behind)
}
