/** A reading on the curve: round for strength, square for sugar; hollow and crossed when doubted. */
import { quantityInk, type MarkedQuantity } from '../parts/quantity/quantity-mark.tsx'

interface ReadingMarkProps {
  cx?: number | undefined
  cy?: number | undefined
  kind: MarkedQuantity
  isUsed?: boolean
  /** The small mark that ends a line, rather than a reading. */
  isLineEnd?: boolean
}

export function ReadingMark({ cx, cy, kind, isUsed = true, isLineEnd = false }: ReadingMarkProps) {
  if (cx === undefined || cy === undefined) return <g />
  const { color } = quantityInk[kind]
  const size = isLineEnd ? 4 : 6.5
  const ink = {
    stroke: isLineEnd ? color : 'var(--paper)',
    strokeWidth: isLineEnd ? 0 : 1.5,
    fill: color,
  }
  const hollow = { stroke: color, strokeWidth: 2, fill: 'var(--paper)' }
  const look = isUsed ? ink : hollow
  return (
    <g>
      {kind === 'strength' ? (
        <circle cx={cx} cy={cy} r={size} {...look} />
      ) : (
        <rect
          x={cx - size * 0.9}
          y={cy - size * 0.9}
          width={size * 1.8}
          height={size * 1.8}
          {...look}
        />
      )}
      {!isUsed && (
        <text
          x={cx}
          y={cy + 4}
          textAnchor="middle"
          fontSize={12}
          fontWeight={700}
          fill={color}
          aria-hidden
        >
          ?
        </text>
      )}
    </g>
  )
}
