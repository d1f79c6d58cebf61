/**
 * A reading on the curve: round for strength, square for sugar. Filled where it is used, hollow
 * with a question mark where it is not, crossed where it is used and does not fit. The whisker is
 * its 90 % band.
 */
import { useWords } from '../app/words/use-words.ts'
import { quantityInk, type MarkedQuantity } from '../parts/quantity/quantity-mark.tsx'
import type { ReadingStanding } from './curve-view.ts'
import styles from './batch-curve.module.css'

export interface ReadingMarkProps {
  cx: number
  cy: number
  kind: MarkedQuantity
  standing: ReadingStanding
  /** Half the length of its whisker. */
  whiskerPx?: number
  /** The small mark that ends a line, or stands in a legend, has no words. */
  hasWords?: boolean
}

const size = 6

export function ReadingMark(props: ReadingMarkProps) {
  const { cx, cy, kind, standing, whiskerPx = 0, hasWords = true } = props
  const t = useWords()
  const { color } = quantityInk[kind]
  const isHollow = standing === 'notUsed'
  const look = isHollow
    ? { stroke: color, strokeWidth: 2, fill: 'var(--paper)' }
    : { stroke: 'var(--paper)', strokeWidth: 1.5, fill: color }
  return (
    <g>
      {whiskerPx > size && (
        <path
          d={`M${cx} ${cy - whiskerPx}V${cy + whiskerPx}M${cx - 4} ${cy - whiskerPx}h8M${cx - 4} ${cy + whiskerPx}h8`}
          stroke={color}
          strokeWidth={1.25}
          fill="none"
        />
      )}
      {kind === 'strength' ? (
        <circle cx={cx} cy={cy} r={size + 0.5} {...look} />
      ) : (
        <rect x={cx - size} y={cy - size} width={size * 2} height={size * 2} {...look} />
      )}
      {isHollow && (
        <text x={cx} y={cy + 4} className={styles.doubt} fill={color}>
          ?
        </text>
      )}
      {standing === 'outlier' && (
        <path
          d={`M${cx - 10} ${cy - 10}l20 20m0 -20l-20 20`}
          stroke="var(--warning)"
          strokeWidth={2}
          fill="none"
        />
      )}
      {hasWords && standing !== 'used' && (
        <text x={cx + 13} y={cy + 5} className={styles.readingWord}>
          {t(`batch.curve.standing.${standing}`)}
        </text>
      )}
    </g>
  )
}
