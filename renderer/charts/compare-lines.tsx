/** Several batches from their day 0: a line each, told apart by dash, marker and name. */
import { useId } from 'react'
import {
  CartesianGrid,
  ComposedChart,
  Line,
  ResponsiveContainer,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts'
import { useWords } from '../app/words/use-words.ts'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import { compareColour, compareDashes } from './compare-ink.ts'
import { CompareMarks } from './compare-marks.tsx'
import { CompareReadout } from './compare-readout.tsx'
import { compareRows, compareTicks, type ComparedLine, type CompareRow } from './compare-rows.ts'
import { curveInk, type CurveQuantity } from './curve-quantities.ts'
import { onScale } from './curve-scale.ts'
import { dayTicks } from './time-axis.ts'
import { msPerDay } from '../../shared/spans-of-time.ts'
import styles from './compare-lines.module.css'

export interface CompareLinesProps {
  lines: readonly ComparedLine[]
  quantity: CurveQuantity
  lastDay: number
  /** One sentence that says what is shown. */
  description: string
}

const firstSize = { width: 900, height: 440 }

export function CompareLines({ lines, quantity, lastDay, description }: CompareLinesProps) {
  const t = useWords()
  const { of } = useQuantities()
  const descriptionId = useId()
  const batches = lines.map(({ compared }) => compared)
  const rows = compareRows(batches, quantity, lastDay)
  const ticks = compareTicks(batches, quantity, lastDay)
  const { dimension } = curveInk[quantity]
  const days = dayTicks({ fromMs: 0, toMs: lastDay * msPerDay }, 6).map((ms) => ms / msPerDay)
  const axis = { stroke: 'var(--rule-strong)' }
  const ink = { fill: 'var(--ink-quiet)', fontSize: 15 }
  const tickText = (value: number) => {
    const { number, text } = of(value, dimension)
    return dimension === 'volume' && value !== 0 ? text : number.replace(/[.,]0$/, '')
  }
  return (
    <figure className={styles.figure} aria-labelledby={descriptionId}>
      <figcaption id={descriptionId} className="visually-hidden">
        {description}
      </figcaption>
      <ResponsiveContainer width="100%" height={firstSize.height} initialDimension={firstSize}>
        <ComposedChart
          data={rows}
          margin={{ top: 12, right: 150, bottom: 0, left: 4 }}
          title={t('compare.title')}
          desc={description}
        >
          <CartesianGrid vertical={false} stroke="var(--rule)" />
          <XAxis
            dataKey="day"
            type="number"
            domain={[0, lastDay]}
            ticks={days}
            tickFormatter={(day: number) => t('batch.curve.day', { day: Math.round(day) })}
            tick={ink}
            axisLine={axis}
            tickLine={axis}
            tickMargin={6}
            allowDataOverflow
          />
          <YAxis
            domain={[ticks[0] ?? 0, ticks.at(-1) ?? 1]}
            ticks={ticks}
            tickFormatter={tickText}
            tick={ink}
            axisLine={false}
            tickLine={false}
            width={62}
            allowDataOverflow
          />
          <Tooltip
            isAnimationActive={false}
            cursor={{ stroke: 'var(--ink-quiet)', strokeWidth: 1 }}
            content={({ active, label }) =>
              active && label !== undefined ? (
                <CompareReadout lines={lines} rows={rows} quantity={quantity} day={Number(label)} />
              ) : null
            }
          />
          {lines.map(({ batch }, index) => (
            <Line
              key={batch.id}
              type="linear"
              dataKey={valueOf(index, ticks)}
              name={batch.name}
              stroke={compareColour(batch.colour)}
              strokeWidth={2.5}
              strokeDasharray={compareDashes[index] ?? 'none'}
              dot={false}
              activeDot={false}
              isAnimationActive={false}
            />
          ))}
          <CompareMarks lines={lines} rows={rows} ticks={ticks} lastDay={lastDay} />
        </ComposedChart>
      </ResponsiveContainer>
    </figure>
  )
}

const valueOf =
  (index: number, ticks: readonly number[]) =>
  ({ values }: CompareRow): number | null => {
    const value = values[index]
    return value == null ? null : onScale(ticks, value)
  }
