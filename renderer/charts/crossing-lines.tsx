/**
 * Two instruments as two lines over strength: each is all liquids that would show what it showed,
 * shaded as wide as it reads. Where they cross is the liquid that shows both.
 */
import { useId } from 'react'
import { useWords } from '../app/words/use-words.ts'
import {
  Area,
  CartesianGrid,
  ComposedChart,
  Label,
  Line,
  ReferenceDot,
  ReferenceLine,
  ResponsiveContainer,
  XAxis,
  YAxis,
} from 'recharts'
import type { SightLine } from '../../shared/schemas/bench.ts'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import { crossingInk } from './crossing-ink.ts'
import { crossingRows, crossingTicks } from './crossing-rows.ts'
import styles from './crossing-lines.module.css'

export interface CrossingLinesProps {
  density: SightLine
  refraction: SightLine
  strengthPctVol: number
  sugarGPerL: number
  /** One sentence that says what the lines do. */
  description: string
}

/** Measured before the first layout, and in tests that have none. */
const firstSize = { width: 520, height: 300 }

export function CrossingLines(props: CrossingLinesProps) {
  const { density, refraction, strengthPctVol, sugarGPerL, description } = props
  const t = useWords()
  const { of } = useQuantities()
  const descriptionId = useId()
  const rows = crossingRows(density, refraction)
  const { strength, sugar } = crossingTicks(rows)
  const tickIn = (dimension: 'strength' | 'sugar') => (value: number) =>
    of(value, dimension).number.replace(/[.,]0$/, '')
  const axis = {
    type: 'number',
    stroke: 'var(--rule-strong)',
    tick: { fill: 'var(--ink-quiet)', fontSize: 14 },
    tickLine: false,
  } as const
  const still = { isAnimationActive: false, dot: false, activeDot: false } as const
  const from = { stroke: 'var(--ink-quiet)', strokeDasharray: '2 4' }
  return (
    <figure className={styles.figure} aria-labelledby={descriptionId}>
      <figcaption id={descriptionId} className="visually-hidden">
        {description}
      </figcaption>
      <ResponsiveContainer width="100%" height={firstSize.height} initialDimension={firstSize}>
        <ComposedChart
          data={[...rows]}
          margin={{ top: 14, right: 20, bottom: 24, left: 18 }}
          title={t('bench.crossing.title')}
          desc={description}
        >
          <CartesianGrid stroke="var(--rule)" vertical={false} />
          <XAxis
            {...axis}
            dataKey="strengthPctVol"
            tickFormatter={tickIn('strength')}
            domain={[strength[0] ?? 0, strength.at(-1) ?? 1]}
            ticks={[...strength]}
          >
            <Label
              value={t('bench.crossing.strengthAxis', { unit: of(0, 'strength').unit })}
              position="insideBottom"
              offset={-16}
              fill="var(--ink-quiet)"
              fontSize={14}
            />
          </XAxis>
          <YAxis
            {...axis}
            tickFormatter={tickIn('sugar')}
            domain={[sugar[0] ?? 0, sugar.at(-1) ?? 1]}
            ticks={[...sugar]}
            allowDataOverflow
            width={44}
          >
            <Label
              value={t('bench.crossing.sugarAxis', { unit: of(0, 'sugar').unit })}
              angle={-90}
              position="insideLeft"
              offset={-8}
              fill="var(--ink-quiet)"
              fontSize={14}
              style={{ textAnchor: 'middle' }}
            />
          </YAxis>
          {(['density', 'refraction'] as const).map((name) => (
            <Area
              {...still}
              key={`${name} band`}
              dataKey={`${name}Band`}
              stroke="none"
              fill={crossingInk[name].color}
              fillOpacity={0.16}
            />
          ))}
          <Line {...still} dataKey="density" stroke={crossingInk.density.color} strokeWidth={2} />
          <Line
            {...still}
            dataKey="refraction"
            stroke={crossingInk.refraction.color}
            strokeWidth={2}
            strokeDasharray={crossingInk.refraction.dash}
          />
          <ReferenceLine
            {...from}
            segment={[
              { x: strengthPctVol, y: sugar[0] ?? 0 },
              { x: strengthPctVol, y: sugarGPerL },
            ]}
          />
          <ReferenceLine
            {...from}
            segment={[
              { x: strength[0] ?? 0, y: sugarGPerL },
              { x: strengthPctVol, y: sugarGPerL },
            ]}
          />
          <ReferenceDot
            x={strengthPctVol}
            y={sugarGPerL}
            r={5}
            fill="var(--ink)"
            stroke="var(--paper)"
            strokeWidth={2}
          />
        </ComposedChart>
      </ResponsiveContainer>
      <p className={styles.legend} aria-hidden>
        <Key name="density" words={t('bench.crossing.density')} />
        <Key name="refraction" words={t('bench.crossing.refraction')} />
        <span className={styles.quiet}>{t('bench.crossing.bands')}</span>
      </p>
    </figure>
  )
}

function Key({ name, words }: { name: keyof typeof crossingInk; words: string }) {
  return (
    <span className={styles.key}>
      <svg width={30} height={10} viewBox="0 0 30 10">
        <line
          x1={0}
          x2={30}
          y1={5}
          y2={5}
          stroke={crossingInk[name].color}
          strokeWidth={2}
          strokeDasharray={crossingInk[name].dash}
        />
      </svg>
      {words}
    </span>
  )
}
