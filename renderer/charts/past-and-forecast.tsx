/** What was as a line, what is to come as a dashed one within its band, and now between them. */
import { useId, type ReactNode } from 'react'
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
import { forecastDash } from './curve-quantities.ts'
import { useTimeTicks } from './use-time-ticks.ts'
import styles from './past-and-forecast.module.css'

export interface PastAndForecastRow {
  readonly atMs: number
  readonly past?: number
  readonly forecast?: number
  readonly band?: readonly [number, number]
}

export interface PastAndForecastProps {
  rows: readonly PastAndForecastRow[]
  title: string
  /** One sentence that says what the line does. */
  description: string
  /** Of the chart before the first layout, and in tests that have none; the height stays. */
  firstSize: { width: number; height: number }
  margin: Record<'top' | 'right' | 'bottom' | 'left', number>
  ink: { colour: string; bandOpacity: number }
  now: { atMs: number; word: string; lineWidth: number }
  mostTicks: number
  /** From zero up; the last of the ticks is the top. */
  amounts: { ticks: readonly number[]; format: (amount: number) => string; widthPx: number }
  /** What is said of the row under the pointer. */
  readout?: (row: PastAndForecastRow) => ReactNode
  /** Below the chart. */
  children?: ReactNode
}

const still = { isAnimationActive: false, dot: false, activeDot: false } as const
const words = { fill: 'var(--ink-quiet)', fontSize: 15 }
const axisLine = { stroke: 'var(--rule-strong)' }

export function PastAndForecast(props: PastAndForecastProps) {
  const { rows, title, description, firstSize, margin, ink, now, amounts, readout } = props
  const descriptionId = useId()
  const domain = { fromMs: rows[0]?.atMs ?? now.atMs, toMs: rows.at(-1)?.atMs ?? now.atMs }
  const ticks = useTimeTicks('dates', domain, props.mostTicks)
  const labelOf = new Map(ticks.map(({ atMs, label }) => [atMs, label]))
  return (
    <figure className={styles.figure} aria-labelledby={descriptionId}>
      <figcaption id={descriptionId} className="visually-hidden">
        {description}
      </figcaption>
      <ResponsiveContainer width="100%" height={firstSize.height} initialDimension={firstSize}>
        <ComposedChart data={[...rows]} margin={margin} title={title} desc={description}>
          <CartesianGrid vertical={false} stroke="var(--rule)" />
          <XAxis
            dataKey="atMs"
            type="number"
            domain={[domain.fromMs, domain.toMs]}
            ticks={ticks.map(({ atMs }) => atMs)}
            tickFormatter={(atMs: number) => labelOf.get(atMs) ?? ''}
            tick={words}
            axisLine={axisLine}
            tickLine={axisLine}
            tickMargin={6}
            interval="preserveStartEnd"
          />
          <YAxis
            domain={[0, amounts.ticks.at(-1) ?? 1]}
            ticks={amounts.ticks}
            tickFormatter={amounts.format}
            tick={words}
            axisLine={false}
            tickLine={false}
            width={amounts.widthPx}
          />
          <ReferenceLine
            x={now.atMs}
            stroke="var(--ink)"
            strokeWidth={now.lineWidth}
            label={{ value: now.word, position: 'top', fill: 'var(--ink)', fontSize: 14 }}
          />
          {readout && (
            <Tooltip
              isAnimationActive={false}
              cursor={{ stroke: 'var(--ink-quiet)', strokeWidth: 1 }}
              content={({ active, label }) => {
                const row = rows.find(({ atMs }) => atMs === Number(label))
                return active && row ? readout(row) : null
              }}
            />
          )}
          <Area
            {...still}
            dataKey="band"
            stroke="none"
            fill={ink.colour}
            fillOpacity={ink.bandOpacity}
          />
          <Line {...still} dataKey="past" stroke={ink.colour} strokeWidth={2.5} />
          <Line
            {...still}
            dataKey="forecast"
            stroke={ink.colour}
            strokeWidth={2.75}
            strokeDasharray={forecastDash}
            strokeLinecap="round"
          />
        </ComposedChart>
      </ResponsiveContainer>
      {props.children}
    </figure>
  )
}
