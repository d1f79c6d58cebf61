/** A column that has been set, as operations at their places. */
import type { LabelOp } from '../../../shared/schemas/labels.ts'
import {
  cellGap,
  gapOf,
  heightOf,
  innerHeight,
  roomOf,
  rowWidth,
  widthOf,
  type SetBlock,
  type SetText,
} from './blocks.ts'
import { mmPerPt, type Box } from './lengths.ts'
import { placeLine } from './place-line.ts'
import { setLine } from './set-line.ts'

export type Justify = 'top' | 'middle' | 'bottom'

export function drawColumn(column: readonly SetBlock[], box: Box, justify: Justify): LabelOp[] {
  const spare = Math.max(0, box.height - heightOf(column))
  let y = box.y + (justify === 'top' ? 0 : justify === 'middle' ? spare / 2 : spare)
  let isFirst = true
  const ops: LabelOp[] = []
  for (const set of column) {
    const height = innerHeight(set)
    if (height === 0) continue
    if (!isFirst) y += gapOf(set)
    isFirst = false
    const at = { x: box.x, y, width: box.width, height }
    ops.push(...(set.kind === 'figure' ? set.block.draw(at) : placeText(set, at)))
    y += height
  }
  return ops
}

function placeText(set: SetText, box: Box): LabelOp[] {
  const { block, sizePt } = set
  const emMm = sizePt * mmPerPt
  const room = roomOf(block)
  const baseline = (line: number) => box.y + emMm * (line * room.leading + room.baseline)
  if (block.cells.length > 1) {
    const spare = box.width - rowWidth(block, sizePt) + cellGap * emMm * (block.cells.length - 1)
    const between =
      block.align === 'center'
        ? Math.min(spare / (block.cells.length + 1), 2 * emMm)
        : spare / (block.cells.length - 1)
    const used = block.cells.reduce((sum, cell) => sum + widthOf(cell) * emMm, 0)
    let x =
      block.align === 'center'
        ? box.x + (box.width - used - between * (block.cells.length - 1)) / 2
        : box.x
    return block.cells.flatMap((cell) => {
      const at = x
      x += widthOf(cell) * emMm + between
      return placeLine(cell, cell.text, sizePt, at, baseline(0))
    })
  }
  const [cell] = block.cells
  if (!cell) return []
  return set.lines.flatMap((line, index) => {
    const width = setLine(cell.face, line, cell.tracking ?? 0).width * emMm
    const spare = box.width - width
    const x = box.x + (block.align === 'left' ? 0 : block.align === 'center' ? spare / 2 : spare)
    return placeLine(cell, line, sizePt, x, baseline(index))
  })
}
