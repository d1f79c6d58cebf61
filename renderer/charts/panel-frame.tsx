/** A panel's marks and lines, and its quantity's name above it, beside which nothing else stands. */
import { usePlotArea, ZIndexLayer } from 'recharts'
import { useWords } from '../app/words/use-words.ts'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import { curveInk } from './curve-quantities.ts'
import type { Panel } from './panels.ts'
import styles from './batch-curve.module.css'

/** Over the stages, under the lines. */
const overBands = 150

export function PanelFrame({ panel, ticks }: { panel: Panel; ticks: readonly number[] }) {
  const t = useWords()
  const { of } = useQuantities()
  const plot = usePlotArea()
  if (!plot) return null
  const { quantity, topPx, heightPx } = panel
  const { color, dimension, mark } = curveInk[quantity]
  const first = ticks[0] ?? 0
  const span = (ticks.at(-1) ?? 1) - first
  const top = plot.y + topPx
  const place = (value: number) => top + heightPx * (1 - (value - first) / span)
  // Volumes change their unit with their size and say it at each mark.
  const unit = dimension === 'volume' ? undefined : of(0, dimension).unit
  return (
    <ZIndexLayer zIndex={overBands}>
      {ticks.map((value) => (
        <g key={value}>
          <line
            x1={plot.x}
            x2={plot.x + plot.width}
            y1={place(value)}
            y2={place(value)}
            stroke="var(--rule)"
          />
          <text className={styles.tick} x={plot.x - 8} y={place(value) + 5} fill={color}>
            <TickText value={value} dimension={dimension} />
          </text>
        </g>
      ))}
      <g fill={color}>
        {mark === 'strength' && <circle cx={plot.x + 6} cy={top - 13} r={4.5} />}
        {mark === 'sugar' && <rect x={plot.x + 2} y={top - 17.5} width={8} height={8} />}
        <text className={styles.panelTitle} x={plot.x + (mark ? 16 : 2)} y={top - 8}>
          {t(`batch.curve.quantity.${quantity}`)}
          {unit && `, ${unit}`}
        </text>
      </g>
    </ZIndexLayer>
  )
}

interface TickTextProps {
  value: number
  dimension: (typeof curveInk)[keyof typeof curveInk]['dimension']
}

function TickText({ value, dimension }: TickTextProps) {
  const { of } = useQuantities()
  const { number, text } = of(value, dimension)
  if (dimension === 'volume') return value === 0 ? number : text
  return number.replace(/[.,]0$/, '')
}
