/** How much of the colour is left over the years, with its band, and now. */
import { useId } from 'react'
import {
  Area,
  CartesianGrid,
  ComposedChart,
  Line,
  ReferenceLine,
  ResponsiveContainer,
  XAxis,
  YAxis,
} from 'recharts'
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import type { ShelfPage } from '../../shared/schemas/shelf.ts'
import { formatShare } from '../parts/quantity/format-share.ts'
import { compareColour } from './compare-ink.ts'
import { forecastDash } from './curve-quantities.ts'
import { colourRows } from './colour-rows.ts'
import { useTimeTicks } from './use-time-ticks.ts'
import styles from './stock-lines.module.css'

export interface ColourLinesProps {
  points: ShelfPage['colour']
  nowMs: number
  /** Of the batch. */
  colour: string
  description: string
}

const firstSize = { width: 560, height: 220 }
const still = { isAnimationActive: false, dot: false, activeDot: false } as const

export function ColourLines({ points, nowMs, colour, description }: ColourLinesProps) {
  const t = useWords()
  const { locale } = useSettings()
  const descriptionId = useId()
  const rows = colourRows(points, nowMs)
  const domain = { fromMs: rows[0]?.atMs ?? nowMs, toMs: rows.at(-1)?.atMs ?? nowMs }
  const ticks = useTimeTicks('dates', domain, 6)
  const labelOf = new Map(ticks.map(({ atMs, label }) => [atMs, label]))
  const ink = compareColour(colour)
  const words = { fill: 'var(--ink-quiet)', fontSize: 15 }
  const axis = { stroke: 'var(--rule-strong)' }
  return (
    <figure className={styles.figure} aria-labelledby={descriptionId}>
      <figcaption id={descriptionId} className="visually-hidden">
        {description}
      </figcaption>
      <ResponsiveContainer width="100%" height={firstSize.height} initialDimension={firstSize}>
        <ComposedChart
          data={rows}
          margin={{ top: 20, right: 16, bottom: 0, left: 0 }}
          title={t('shelf.lot.colour')}
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
            domain={[0, 1]}
            ticks={[0, 0.5, 1]}
            tickFormatter={(value: number) => formatShare(value, locale)}
            tick={words}
            axisLine={false}
            tickLine={false}
            width={58}
          />
          <ReferenceLine
            x={nowMs}
            stroke="var(--ink)"
            label={{
              value: t('shelf.ageing.today'),
              position: 'top',
              fill: 'var(--ink)',
              fontSize: 14,
            }}
          />
          <Area {...still} dataKey="band" stroke="none" fill={ink} fillOpacity={0.2} />
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
    </figure>
  )
}
