/** Where the ink of a drawn label is: a box for each letter and each path. */
import type { DrawnLabels, LabelOp } from '../../../shared/schemas/labels.ts'

export interface InkBox {
  readonly of: string
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

const mmPerPt = 25.4 / 72

export function inkOf(op: LabelOp, glyphs: DrawnLabels['glyphs']): InkBox[] {
  if (op.op === 'path') {
    const half = (op.stroke?.widthMm ?? 0) / 2
    const box = boxOfPath(op.d)
    return box ? [{ ...grown(box, half), of: op.of }] : []
  }
  const size = op.sizePt * mmPerPt
  return op.glyphs.flatMap(({ key, xMm, yMm }) => {
    const box = boxOfPath(glyphs[key] ?? '')
    if (!box) return []
    const [x, y] = [op.xMm + xMm, op.baselineMm + yMm]
    return [
      {
        of: op.field,
        left: x + box.left * size,
        right: x + box.right * size,
        top: y + box.top * size,
        bottom: y + box.bottom * size,
      },
    ]
  })
}

type Bounds = Omit<InkBox, 'of'>

const grown = ({ left, right, top, bottom }: Bounds, by: number): Bounds => ({
  left: left - by,
  right: right + by,
  top: top - by,
  bottom: bottom + by,
})

const known = new Map<string, Bounds | undefined>()

/** Of end and control points: never too small. */
function boxOfPath(d: string): Bounds | undefined {
  if (known.has(d)) return known.get(d)
  const points = pointsOf(d)
  const box =
    points.length === 0
      ? undefined
      : {
          left: Math.min(...points.map(([x]) => x)),
          right: Math.max(...points.map(([x]) => x)),
          top: Math.min(...points.map(([, y]) => y)),
          bottom: Math.max(...points.map(([, y]) => y)),
        }
  known.set(d, box)
  return box
}

/** The commands that the papers write: M L Q C Z, and h v c l relative. */
export function pointsOf(d: string): [number, number][] {
  const points: [number, number][] = []
  let [x, y] = [0, 0]
  for (const [, command = '', rest = ''] of d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const numbers = (rest.match(/-?(?:\d+\.?\d*|\.\d+)(?:e-?\d+)?/g) ?? []).map(Number)
    if (command === 'Z') continue
    if (command === 'h') points.push([(x += numbers[0] ?? 0), y])
    else if (command === 'v') points.push([x, (y += numbers[0] ?? 0)])
    else if ('MLQC'.includes(command))
      for (let at = 0; at < numbers.length; at += 2)
        points.push([(x = numbers[at] ?? 0), (y = numbers[at + 1] ?? 0)])
    else if ('lc'.includes(command)) {
      const [x0, y0] = [x, y]
      for (let at = 0; at < numbers.length; at += 2)
        points.push([(x = x0 + (numbers[at] ?? 0)), (y = y0 + (numbers[at + 1] ?? 0))])
    } else throw new Error(`the path has a command ${command}`)
  }
  return points
}

/** True where two boxes share more than a hair. */
export const overlap = (a: InkBox, b: InkBox, hairMm = 0.02): boolean =>
  Math.min(a.right, b.right) - Math.max(a.left, b.left) > hairMm &&
  Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > hairMm
