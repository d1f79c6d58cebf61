/** Markers along the lines, and each batch's name at the end of its own, spread so that none covers another. */
import { usePlotArea, useXAxisScale, useYAxisScale, ZIndexLayer } from 'recharts'
import { compareColour, compareMarkers } from './compare-ink.ts'
import type { ComparedLine, CompareRow } from './compare-rows.ts'
import { onScale } from './curve-scale.ts'
import { spread } from './spread.ts'
import styles from './compare-lines.module.css'

interface CompareMarksProps {
  lines: readonly ComparedLine[]
  rows: readonly CompareRow[]
  ticks: readonly number[]
  lastDay: number
}

const aboveLines = 550
const marksAlong = 6
const labelPx = 18
/** Room for a name between the end of its line and the edge of the plot. */
const inPlotPx = 150

export function CompareMarks({ lines, rows, ticks, lastDay }: CompareMarksProps) {
  const plot = usePlotArea()
  const xOf = useXAxisScale()
  const yOf = useYAxisScale()
  if (!plot || !xOf || !yOf) return null
  const place = (row: CompareRow, index: number) => {
    const value = row.values[index]
    return value == null ? undefined : { x: xOf(row.day) ?? 0, y: yOf(onScale(ticks, value)) ?? 0 }
  }
  const ends = lines.map((_, index) => {
    const row = rows.findLast(({ values }) => values[index] != null)
    return row && place(row, index)
  })
  const edge = plot.x + plot.width
  // A line that ends early is named where it ends: its name has room in the plot.
  const inMargin = ends.flatMap((end, index) => (end && end.x > edge - inPlotPx ? [index] : []))
  const spreadOut = spread(
    inMargin.map((index) => ends[index]?.y ?? plot.y),
    labelPx,
    { from: plot.y, to: plot.y + plot.height },
  )
  return (
    <ZIndexLayer zIndex={aboveLines}>
      {lines.map(({ batch }, index) => {
        const ink = compareColour(batch.colour)
        const end = ends[index]
        const y = spreadOut[inMargin.indexOf(index)]
        return (
          <g key={batch.id} fill={ink}>
            {markRows(rows, index, lastDay, lines.length).map((row) => {
              const at = place(row, index)
              return (
                at && (
                  <path
                    key={row.day}
                    d={compareMarkers[index]}
                    transform={`translate(${at.x} ${at.y})`}
                    stroke="var(--paper)"
                  />
                )
              )
            })}
            {end && y === undefined && (
              <text className={styles.label} x={end.x + 8} y={end.y - 12}>
                {batch.name}
              </text>
            )}
            {end && y !== undefined && (
              <>
                <path
                  d={`M${end.x + 3} ${end.y}L${edge + 4} ${y}h5`}
                  stroke={ink}
                  opacity={0.45}
                  fill="none"
                />
                <path d={compareMarkers[index]} transform={`translate(${edge + 16} ${y})`} />
                <text className={styles.label} x={edge + 27} y={y + 5}>
                  {batch.name}
                </text>
              </>
            )}
          </g>
        )
      })}
    </ZIndexLayer>
  )
}

/** Evenly along the axis, each line's a little further than the last's, so that they do not pile up. */
function markRows(
  rows: readonly CompareRow[],
  index: number,
  lastDay: number,
  count: number,
): CompareRow[] {
  const drawn = rows.filter(({ values }) => values[index] != null)
  return Array.from({ length: marksAlong }, (_, step) => {
    const day = ((step + (index + 0.5) / count) / marksAlong) * lastDay
    return drawn.find((row) => row.day >= day)
  }).filter((row, at, all): row is CompareRow => row !== undefined && all.indexOf(row) === at)
}
