/** Strength and sugar over time: two lines on two scales, stages behind, readings as points. */
import { useId } from 'react'
import { useWords } from '../app/words/use-words.ts'
import {
  CartesianGrid,
  ComposedChart,
  Line,
  ReferenceArea,
  ReferenceDot,
  ResponsiveContainer,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts'
import { useSettings } from '../app/settings.tsx'
import { quantityInk } from '../parts/quantity/quantity-mark.tsx'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import { BandLabel } from './band-label.tsx'
import { CurveReadout } from './curve-readout.tsx'
import type { CurveView } from './curve-view.ts'
import { ReadingMark } from './reading-mark.tsx'
import type { TimeAxisKind } from './time-labels.ts'
import { useTimeTicks } from './use-time-ticks.ts'
import styles from './batch-curve.module.css'

export interface BatchCurveProps {
  view: CurveView
  axis: TimeAxisKind
  /** One sentence that says what the lines do. */
  description: string
}

/** Measured before the first layout, and in tests that have none. */
const firstSize = { width: 900, height: 340 }
const fontSize = 15

export function BatchCurve({ view, axis, description }: BatchCurveProps) {
  const t = useWords()
  const { locale } = useSettings()
  const descriptionId = useId()
  const { domain, rows, bands, readings, strengthTicks, sugarTicks, sugarPeak } = view
  const { text } = useQuantities()
  const ticks = useTimeTicks(axis, domain, 8)
  const labelOf = new Map(ticks.map(({ atMs, label }) => [atMs, label]))
  const last = rows.at(-1)
  const lines = { type: 'linear', dot: false, activeDot: false, isAnimationActive: false } as const
  const axisLine = { stroke: 'var(--rule-strong)' }
  return (
    <figure className={styles.figure}>
      <figcaption id={descriptionId} className="visually-hidden">
        {description}
      </figcaption>
      <ResponsiveContainer width="100%" height={firstSize.height} initialDimension={firstSize}>
        <ComposedChart
          data={[...rows]}
          margin={{ top: 8, right: 4, bottom: 4, left: 4 }}
          title={t('batch.curve.title')}
          desc={description}
        >
          {bands.map((band, index) => (
            <ReferenceArea
              key={`${band.stage} ${band.fromMs}`}
              yAxisId="strength"
              x1={band.fromMs}
              x2={Math.min(band.toMs, domain.toMs)}
              fill={index % 2 === 0 ? 'var(--well)' : 'transparent'}
              fillOpacity={0.75}
              label={(props: { viewBox?: unknown }) => (
                <BandLabel box={props.viewBox} words={t(`codes.stage.${band.stage}`)} />
              )}
              ifOverflow="hidden"
            />
          ))}
          <CartesianGrid yAxisId="strength" vertical={false} stroke="var(--rule)" />
          <XAxis
            dataKey="atMs"
            type="number"
            domain={[domain.fromMs, domain.toMs]}
            ticks={ticks.map(({ atMs }) => atMs)}
            tickFormatter={(atMs: number) => labelOf.get(atMs) ?? ''}
            tick={ink('var(--ink-quiet)')}
            axisLine={axisLine}
            tickLine={axisLine}
            tickMargin={6}
            interval="preserveStartEnd"
            allowDataOverflow
          />
          <YAxis
            yAxisId="strength"
            ticks={[...strengthTicks]}
            domain={[0, strengthTicks.at(-1) ?? 1]}
            tick={ink(quantityInk.strength.color)}
            tickFormatter={plain(locale)}
            axisLine={false}
            tickLine={false}
            width={44}
          />
          <YAxis
            yAxisId="sugar"
            orientation="right"
            ticks={[...sugarTicks]}
            domain={[0, sugarTicks.at(-1) ?? 1]}
            tick={ink(quantityInk.sugar.color)}
            tickFormatter={plain(locale)}
            axisLine={false}
            tickLine={false}
            width={48}
            allowDataOverflow
          />
          <Tooltip
            isAnimationActive={false}
            cursor={{ stroke: 'var(--ink-quiet)', strokeWidth: 1 }}
            content={({ active, label }) =>
              active && label !== undefined ? (
                <CurveReadout view={view} atMs={Number(label)} />
              ) : null
            }
          />
          <Line
            {...lines}
            yAxisId="sugar"
            dataKey="sugarGPerL"
            name={t('batch.curve.sugar')}
            stroke={quantityInk.sugar.color}
            strokeWidth={2.25}
            strokeDasharray={quantityInk.sugar.dash}
          />
          <Line
            {...lines}
            yAxisId="strength"
            dataKey="strengthPctVol"
            name={t('batch.curve.strength')}
            stroke={quantityInk.strength.color}
            strokeWidth={2.5}
          />
          {sugarPeak && (
            <ReferenceDot
              yAxisId="sugar"
              x={sugarPeak.atMs}
              y={sugarTicks.at(-1) ?? 0}
              ifOverflow="visible"
              shape={({ cx = 0, cy = 0 }) => (
                <text className={styles.peak} x={cx + 12} y={cy + 38}>
                  {t('batch.curve.upTo', { sugar: text(sugarPeak.sugarGPerL, 'sugar') })}
                </text>
              )}
            />
          )}
          {last?.strengthPctVol != null && (
            <ReferenceDot
              yAxisId="strength"
              x={last.atMs}
              y={last.strengthPctVol}
              shape={(props) => <ReadingMark {...props} kind="strength" isLineEnd />}
            />
          )}
          {last?.sugarGPerL != null && (
            <ReferenceDot
              yAxisId="sugar"
              x={last.atMs}
              y={last.sugarGPerL}
              shape={(props) => <ReadingMark {...props} kind="sugar" isLineEnd />}
            />
          )}
          {readings.map(
            ({ moveId, atMs, strengthPctVol, isUsed }) =>
              strengthPctVol !== undefined && (
                <ReferenceDot
                  key={`${moveId} strength`}
                  yAxisId="strength"
                  x={atMs}
                  y={strengthPctVol}
                  ifOverflow="visible"
                  shape={(props) => <ReadingMark {...props} kind="strength" isUsed={isUsed} />}
                />
              ),
          )}
          {readings.map(
            ({ moveId, atMs, sugarGPerL, isUsed }) =>
              sugarGPerL !== undefined && (
                <ReferenceDot
                  key={`${moveId} sugar`}
                  yAxisId="sugar"
                  x={atMs}
                  y={sugarGPerL}
                  ifOverflow="visible"
                  shape={(props) => <ReadingMark {...props} kind="sugar" isUsed={isUsed} />}
                />
              ),
          )}
        </ComposedChart>
      </ResponsiveContainer>
    </figure>
  )
}

const ink = (fill: string) => ({ fill, fontSize })

const plain = (locale: string) => {
  const format = new Intl.NumberFormat(locale, { maximumFractionDigits: 1 })
  return (value: number) => format.format(value)
}
