/** Stock over time: what was as a line, what the maker's own drinking leaves as a dashed one with its band. */
import { memo, useId } from 'react'
import {
  Area,
  CartesianGrid,
  ComposedChart,
  Line,
  ReferenceLine,
  ResponsiveContainer,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts'
import { useWords } from '../app/words/use-words.ts'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import { forecastDash } from './curve-quantities.ts'
import { StockReadout } from './stock-readout.tsx'
import { stockTicks, type StockRow } from './stock-rows.ts'
import { useTimeTicks } from './use-time-ticks.ts'
import styles from './stock-lines.module.css'

export interface StockLinesProps {
  rows: readonly StockRow[]
  nowMs: number
  /** One sentence that says what the line does. */
  description: string
}

/** Measured before the first layout, and in tests that have none. */
const firstSize = { width: 900, height: 320 }
const still = { isAnimationActive: false, dot: false, activeDot: false } as const
const ink = 'var(--action)'

export const StockLines = memo(function StockLines({ rows, nowMs, description }: StockLinesProps) {
  const t = useWords()
  const { size } = useQuantities()
  const descriptionId = useId()
  const domain = { fromMs: rows[0]?.atMs ?? nowMs, toMs: rows.at(-1)?.atMs ?? nowMs }
  const ticks = useTimeTicks('dates', domain, 8)
  const labelOf = new Map(ticks.map(({ atMs, label }) => [atMs, label]))
  const amounts = stockTicks(rows)
  const axis = { stroke: 'var(--rule-strong)' }
  const words = { fill: 'var(--ink-quiet)', fontSize: 15 }
  return (
    <figure className={styles.figure} aria-labelledby={descriptionId}>
      <figcaption id={descriptionId} className="visually-hidden">
        {description}
      </figcaption>
      <ResponsiveContainer width="100%" height={firstSize.height} initialDimension={firstSize}>
        <ComposedChart
          data={[...rows]}
          margin={{ top: 22, right: 20, bottom: 0, left: 8 }}
          title={t('shelf.stock.title')}
          desc={description}
        >
          <CartesianGrid vertical={false} stroke="var(--rule)" />
          <XAxis
            dataKey="atMs"
            type="number"
            domain={[domain.fromMs, domain.toMs]}
            ticks={ticks.map(({ atMs }) => atMs)}
            tickFormatter={(atMs: number) => labelOf.get(atMs) ?? ''}
            tick={words}
            axisLine={axis}
            tickLine={axis}
            tickMargin={6}
            interval="preserveStartEnd"
          />
          <YAxis
            domain={[0, amounts.at(-1) ?? 1]}
            ticks={amounts}
            tickFormatter={(value: number) => (value === 0 ? '0' : size(value, 'volume').text)}
            tick={words}
            axisLine={false}
            tickLine={false}
            width={70}
          />
          <ReferenceLine
            x={nowMs}
            stroke="var(--ink)"
            strokeWidth={1.25}
            label={{
              value: t('shelf.stock.now'),
              position: 'top',
              fill: 'var(--ink)',
              fontSize: 14,
            }}
          />
          <Tooltip
            isAnimationActive={false}
            cursor={{ stroke: 'var(--ink-quiet)', strokeWidth: 1 }}
            content={({ active, label }) => {
              const row = rows.find(({ atMs }) => atMs === Number(label))
              return active && row ? <StockReadout row={row} /> : null
            }}
          />
          <Area {...still} dataKey="band" stroke="none" fill={ink} fillOpacity={0.18} />
          <Line {...still} dataKey="past" stroke={ink} strokeWidth={2.5} />
          <Line
            {...still}
            dataKey="forecast"
            stroke={ink}
            strokeWidth={2.75}
            strokeDasharray={forecastDash}
            strokeLinecap="round"
          />
        </ComposedChart>
      </ResponsiveContainer>
      <ul className={styles.key} aria-hidden>
        <Key words={t('shelf.stock.was')} />
        <Key words={t('shelf.stock.forecast')} dash={forecastDash} />
        <li>
          <svg width={28} height={12}>
            <rect width={28} height={12} fill={ink} opacity={0.18} />
          </svg>
          {t('shelf.stock.band')}
        </li>
      </ul>
    </figure>
  )
})

function Key({ words, dash = 'none' }: { words: string; dash?: string }) {
  return (
    <li>
      <svg width={40} height={10}>
        <line
          x1={2}
          x2={38}
          y1={5}
          y2={5}
          stroke={ink}
          strokeWidth={2.75}
          strokeDasharray={dash}
          strokeLinecap="round"
        />
      </svg>
      {words}
    </li>
  )
}
