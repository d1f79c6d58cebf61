/** Lengths on paper, and paths as SVG writes them. */
export const mmPerPt = 25.4 / 72

export interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

export const inset = ({ x, y, width, height }: Box, byX: number, byY = byX): Box => ({
  x: x + byX,
  y: y + byY,
  width: Math.max(0, width - 2 * byX),
  height: Math.max(0, height - 2 * byY),
})

/** Thousandths of a millimetre are finer than any printer. */
export const mm = (length: number): string => String(Math.round(length * 1000) / 1000)

export const rectangle = ({ x, y, width, height }: Box): string =>
  `M${mm(x)} ${mm(y)}h${mm(width)}v${mm(height)}h${mm(-width)}Z`

export function roundedRectangle(box: Box, radius: number): string {
  const { x, y, width, height } = box
  const r = Math.min(radius, width / 2, height / 2)
  // A quarter circle by a cubic: 0.5523 of the radius to each control point.
  const c = r * (1 - 0.5523)
  const corner = (dx1: number, dy1: number, dx2: number, dy2: number, dx: number, dy: number) =>
    `c${[dx1, dy1, dx2, dy2, dx, dy].map(mm).join(' ')}`
  return [
    `M${mm(x + r)} ${mm(y)}`,
    `h${mm(width - 2 * r)}`,
    corner(r - c, 0, r, c, r, r),
    `v${mm(height - 2 * r)}`,
    corner(0, r - c, -c, r, -r, r),
    `h${mm(2 * r - width)}`,
    corner(-(r - c), 0, -r, -c, -r, -r),
    `v${mm(2 * r - height)}`,
    corner(0, -(r - c), c, -r, r, -r),
    'Z',
  ].join('')
}

export const line = (x1: number, y1: number, x2: number, y2: number): string =>
  `M${mm(x1)} ${mm(y1)}L${mm(x2)} ${mm(y2)}`
