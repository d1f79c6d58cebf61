/** One label's list as SVG, in mm. The outlines are those of the faces that the PDF embeds. */
import { memo } from 'react'
import type { DrawnLabels, LabelOp } from '../../../shared/schemas/labels.ts'

export interface DrawingProps {
  ops: readonly LabelOp[]
  glyphs: DrawnLabels['glyphs']
}

const mmPerPt = 25.4 / 72

export const Drawing = memo(function Drawing({ ops, glyphs }: DrawingProps) {
  // Drawn whole each time: the order of an operation is its identity.
  return ops.map((op, place) => <Op key={place} op={op} glyphs={glyphs} />)
})

function Op({ op, glyphs }: { op: LabelOp; glyphs: DrawnLabels['glyphs'] }) {
  if (op.op === 'path')
    return (
      <path
        d={op.d}
        fill={op.fill ?? 'none'}
        stroke={op.stroke?.colour}
        strokeWidth={op.stroke?.widthMm}
      />
    )
  const sizeMm = op.sizePt * mmPerPt
  return (
    <g fill={op.colour}>
      {op.glyphs.map(({ key, xMm, yMm }, index) => (
        <path
          key={index}
          d={glyphs[key]}
          transform={`translate(${op.xMm + xMm} ${op.baselineMm + yMm}) scale(${sizeMm})`}
        />
      ))}
    </g>
  )
}
