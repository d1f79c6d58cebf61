/** The batch over time: a panel a quantity, all on one time axis, with stages behind and now marked. */
import { memo, useId } from 'react'
import { useWords } from '../app/words/use-words.ts'
import {
  Area,
  ComposedChart,
  Line,
  ReferenceArea,
  ReferenceLine,
  ResponsiveContainer,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts'
import { BandLabel } from './band-label.tsx'
import { ChangedLines } from './changed-lines.tsx'
import { curveInk, forecastDash, type CurveQuantity } from './curve-quantities.ts'
import { CurveReadout } from './curve-readout.tsx'
import type { CurveRow } from './curve-rows.ts'
import { onScale } from './curve-scale.ts'
import type { CurveView } from './curve-view.ts'
import { PanelFrame } from './panel-frame.tsx'
import { stackPanels } from './panels.ts'
import { PeakLabel } from './peak-label.tsx'
import { ReadingMarks } from './reading-marks.tsx'
import { RestingLine } from './resting-line.tsx'
import type { TimeAxisKind } from './time-labels.ts'
import { useTimeTicks } from './use-time-ticks.ts'
import styles from './batch-curve.module.css'

export interface BatchCurveProps {
  view: CurveView
  shown: readonly CurveQuantity[]
  axis: TimeAxisKind
  /** One sentence that says what the lines do. */
  description: string
}

/** Measured before the first layout, and in tests that have none. */
const firstWidth = 900
const axisPx = 30
const margin = { top: 4, right: 14, bottom: 0, left: 66 }
const still = { isAnimationActive: false, dot: false, activeDot: false, type: 'linear' } as const

/** Drawn anew for a new view only: a slider beside it moves many times before there is one. */
export const BatchCurve = memo(function BatchCurve({
  view,
  shown,
  axis,
  description,
}: BatchCurveProps) {
  const t = useWords()
  const descriptionId = useId()
  const { domain, rows, bands, scales, nowMs } = view
  const ticks = useTimeTicks(axis, domain, 7)
  const labelOf = new Map(ticks.map(({ atMs, label }) => [atMs, label]))
  const { panels, heightPx } = stackPanels(shown)
  const height = heightPx + margin.top + axisPx
  const axisLine = { stroke: 'var(--rule-strong)' }
  return (
    <figure className={styles.figure} aria-labelledby={descriptionId}>
      <figcaption id={descriptionId} className="visually-hidden">
        {description}
      </figcaption>
      <ResponsiveContainer
        width="100%"
        height={height}
        initialDimension={{ width: firstWidth, height }}
      >
        <ComposedChart
          data={[...rows]}
          margin={margin}
          title={t('batch.curve.title')}
          desc={description}
        >
          {/* The whole height, for what runs through all panels. */}
          <YAxis yAxisId="whole" hide domain={[0, 1]} allowDataOverflow />
          {panels.map(({ quantity, topPx, heightPx: ownPx }) => (
            <YAxis
              key={quantity}
              yAxisId={quantity}
              hide
              domain={[scales[quantity][0] ?? 0, scales[quantity].at(-1) ?? 1]}
              padding={{ top: topPx, bottom: heightPx - topPx - ownPx }}
              allowDataOverflow
            />
          ))}
          <XAxis
            dataKey="atMs"
            type="number"
            domain={[domain.fromMs, domain.toMs]}
            ticks={ticks.map(({ atMs }) => atMs)}
            tickFormatter={(atMs: number) => labelOf.get(atMs) ?? ''}
            tick={{ fill: 'var(--ink-quiet)', fontSize: 15 }}
            axisLine={axisLine}
            tickLine={axisLine}
            tickMargin={6}
            height={axisPx}
            interval="preserveStartEnd"
            allowDataOverflow
          />
          {bands.map((band, index) => (
            <ReferenceArea
              key={`${band.stage} ${band.fromMs}`}
              yAxisId="whole"
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
          {panels.map((panel) => (
            <PanelFrame key={panel.quantity} panel={panel} ticks={scales[panel.quantity]} />
          ))}
          {view.hasForecast && (
            <ReferenceLine
              yAxisId="whole"
              x={nowMs}
              stroke="var(--ink)"
              strokeWidth={1.25}
              label={{
                value: t('batch.curve.now'),
                position: 'insideTopLeft',
                fill: 'var(--ink)',
                fontSize: 14,
                offset: 6,
              }}
            />
          )}
          <Tooltip
            isAnimationActive={false}
            cursor={{ stroke: 'var(--ink-quiet)', strokeWidth: 1 }}
            content={({ active, label }) =>
              active && label !== undefined ? (
                <CurveReadout view={view} shown={shown} atMs={Number(label)} />
              ) : null
            }
          />
          {shown.map((quantity) => (
            <Area
              {...still}
              key={quantity}
              yAxisId={quantity}
              dataKey={bandOf(quantity, scales[quantity])}
              stroke="none"
              fill={curveInk[quantity].color}
              fillOpacity={0.17}
            />
          ))}
          {shown.flatMap((quantity) =>
            (['past', 'forecast'] as const).map((part) => (
              <Line
                {...still}
                key={`${quantity} ${part}`}
                yAxisId={quantity}
                dataKey={lineOf(quantity, part, scales[quantity], nowMs)}
                name={t(`batch.curve.quantity.${quantity}`)}
                stroke={curveInk[quantity].color}
                strokeOpacity={view.changed ? 0.6 : 1}
                strokeWidth={part === 'past' ? 2.5 : 2.75}
                strokeLinecap={part === 'past' ? 'butt' : 'round'}
                strokeDasharray={part === 'past' ? curveInk[quantity].dash : forecastDash}
              />
            )),
          )}
          {shown.includes('sugarGPerL') && <PeakLabel view={view} />}
          {view.resting && view.hasForecast && <RestingLine view={view} shown={shown} />}
          {view.changed && <ChangedLines view={view} changed={view.changed} shown={shown} />}
          <ReadingMarks view={view} shown={shown} />
        </ComposedChart>
      </ResponsiveContainer>
    </figure>
  )
})

/** Both parts hold the row at now, so that the line does not break there. */
const lineOf =
  (quantity: CurveQuantity, part: 'past' | 'forecast', ticks: readonly number[], nowMs: number) =>
  ({ atMs, values }: CurveRow): number | null =>
    values && (part === 'past' ? atMs <= nowMs : atMs >= nowMs)
      ? onScale(ticks, values[quantity])
      : null

const bandOf =
  (quantity: CurveQuantity, ticks: readonly number[]) =>
  ({ low, high }: CurveRow): [number, number] | null =>
    low && high ? [onScale(ticks, low[quantity]), onScale(ticks, high[quantity])] : null
