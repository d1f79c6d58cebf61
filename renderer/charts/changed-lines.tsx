/** The same batch handled otherwise, over what it is: one dash for every quantity, named once. */
import { usePlotArea, useXAxisScale, useYAxisScale, ZIndexLayer } from 'recharts'
import { useWords } from '../app/words/use-words.ts'
import { changedDash, curveInk, type CurveQuantity } from './curve-quantities.ts'
import { rowAt, type CurveRow } from './curve-rows.ts'
import { onScale } from './curve-scale.ts'
import type { ChangedCurve, CurveView } from './curve-view.ts'
import styles from './batch-curve.module.css'

interface ChangedLinesProps {
  view: CurveView
  changed: ChangedCurve
  shown: readonly CurveQuantity[]
}

/** Above Recharts’ own lines. */
const aboveLines = 550

export function ChangedLines({ view, changed, shown }: ChangedLinesProps) {
  return (
    <ZIndexLayer zIndex={aboveLines}>
      {shown.map((quantity, index) => (
        <One
          key={quantity}
          view={view}
          changed={changed}
          quantity={quantity}
          // One name is enough: the dash is the same in every panel.
          isNamed={index === 0}
        />
      ))}
      <DrawOff atMs={changed.drawOffMs} />
    </ZIndexLayer>
  )
}

interface OneProps {
  view: CurveView
  changed: ChangedCurve
  quantity: CurveQuantity
  isNamed: boolean
}

function One({ view, changed: { rows }, quantity, isNamed }: OneProps) {
  const t = useWords()
  const xOf = useXAxisScale()
  const yOf = useYAxisScale(quantity)
  if (!xOf || !yOf) return null
  const ticks = view.scales[quantity]
  const point = (row: CurveRow) =>
    row.values && { x: xOf(row.atMs), y: yOf(onScale(ticks, row.values[quantity])) }
  const widest = isNamed ? widestGap(view, rows, quantity) : undefined
  const place = widest && point(widest.row)
  return (
    <g>
      <path
        d={pathOf(rows.map(point))}
        stroke={curveInk[quantity].color}
        strokeWidth={3}
        strokeDasharray={changedDash}
        fill="none"
      />
      {widest && place?.x !== undefined && place.y !== undefined && (
        <text
          className={styles.changed}
          x={place.x + 8}
          y={widest.by >= 0 ? place.y - 8 : place.y + 19}
        >
          {t('batch.curve.changed')}
        </text>
      )}
    </g>
  )
}

/** Where the changed curve lies furthest from what it is, and by how much above it. */
function widestGap(view: CurveView, rows: readonly CurveRow[], quantity: CurveQuantity) {
  let widest: { row: CurveRow; by: number } | undefined
  for (const row of rows) {
    const asIs = rowAt(view.rows, row.atMs)?.values
    if (!row.values || !asIs) continue
    const by = row.values[quantity] - asIs[quantity]
    if (!widest || Math.abs(by) > Math.abs(widest.by)) widest = { row, by }
  }
  return widest
}

interface Place {
  readonly x: number | undefined
  readonly y: number | undefined
}

/** A pen that is lifted where the line breaks. */
function pathOf(places: readonly (Place | null)[]): string {
  let isDown = false
  let path = ''
  for (const place of places) {
    if (place?.x !== undefined && place.y !== undefined)
      path += `${isDown ? 'L' : 'M'}${place.x.toFixed(1)} ${place.y.toFixed(1)}`
    isDown = place !== null
  }
  return path
}

function DrawOff({ atMs }: { atMs: number | undefined }) {
  const t = useWords()
  const plot = usePlotArea()
  const x = useXAxisScale()?.(atMs)
  if (atMs === undefined || x === undefined || !plot) return null
  const isLeft = x > plot.x + plot.width / 2
  const bottom = plot.y + plot.height
  return (
    <g>
      <line
        x1={x}
        x2={x}
        y1={plot.y + 22}
        y2={bottom}
        stroke="var(--action)"
        strokeWidth={1.5}
        strokeDasharray="6 3"
      />
      <text
        className={styles.drawOff}
        x={isLeft ? x - 6 : x + 6}
        y={bottom - 6}
        textAnchor={isLeft ? 'end' : 'start'}
      >
        {t('batch.curve.drawnOffThen')}
      </text>
    </g>
  )
}
