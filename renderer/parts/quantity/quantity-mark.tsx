/** The sign of strength (round, solid line) or sugar (square, dashed line), the same everywhere. */
import styles from './quantity-mark.module.css'

export type MarkedQuantity = 'strength' | 'sugar'

/** Colour and dash by quantity, for charts: both are tokens, never literal colours. */
export const quantityInk: Readonly<Record<MarkedQuantity, { color: string; dash: string }>> = {
  strength: { color: 'var(--strength)', dash: 'none' },
  sugar: { color: 'var(--sugar)', dash: '6 4' },
}

export interface QuantityMarkProps {
  kind: MarkedQuantity
  /** Draws a piece of the line behind the mark, as in a chart's legend. */
  hasLine?: boolean
}

export function QuantityMark({ kind, hasLine = false }: QuantityMarkProps) {
  const { color, dash } = quantityInk[kind]
  const width = hasLine ? 28 : 10
  const middle = width / 2
  return (
    <svg className={styles.mark} width={width} height={10} viewBox={`0 0 ${width} 10`} aria-hidden>
      {hasLine && (
        <line
          x1={0}
          x2={width}
          y1={5}
          y2={5}
          stroke={color}
          strokeWidth={2}
          strokeDasharray={dash}
        />
      )}
      {kind === 'strength' ? (
        <circle cx={middle} cy={5} r={4} fill={color} />
      ) : (
        <rect x={middle - 3.5} y={1.5} width={7} height={7} fill={color} />
      )}
    </svg>
  )
}
