/** Where strength and sugar come to rest: a dashed line over the forecast, its band, its number. */
import { usePlotArea, useXAxisScale, useYAxisScale, ZIndexLayer } from 'recharts'
import { useWords } from '../app/words/use-words.ts'
import type { Banded } from '../../shared/schemas/steeping.ts'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import { curveInk, type CurveQuantity } from './curve-quantities.ts'
import { rowAt } from './curve-rows.ts'
import { onScale } from './curve-scale.ts'
import type { CurveView } from './curve-view.ts'
import styles from './batch-curve.module.css'

type Resting = 'strengthPctVol' | 'sugarGPerL'

interface RestingLineProps {
  view: CurveView
  shown: readonly CurveQuantity[]
}

/** Over the stages, under the lines. */
const overBands = 150

export function RestingLine({ view, shown }: RestingLineProps) {
  const { resting } = view
  if (!resting) return null
  return (['strengthPctVol', 'sugarGPerL'] as const)
    .filter((quantity) => shown.includes(quantity))
    .map((quantity) => (
      <One key={quantity} view={view} quantity={quantity} rest={resting[quantity]} />
    ))
}

function One({ view, quantity, rest }: { view: CurveView; quantity: Resting; rest: Banded }) {
  const t = useWords()
  const { text, of } = useQuantities()
  const plot = usePlotArea()
  const xOf = useXAxisScale()
  const yOf = useYAxisScale(quantity)
  const from = xOf?.(view.nowMs)
  const at = (value: number) => yOf?.(onScale(view.scales[quantity], value))
  const [y, low, high] = [at(rest.value), at(rest.low), at(rest.high)]
  if (!plot || from === undefined || y === undefined || low === undefined || high === undefined)
    return null
  const { color, dimension } = curveInk[quantity]
  const end = plot.x + plot.width
  // Where the line comes down to its rest the words stand under it, else above.
  const now = rowAt(view.rows, view.nowMs)?.values[quantity]
  const isBelow = now !== undefined && now > rest.value
  return (
    <ZIndexLayer zIndex={overBands}>
      <rect x={from} y={high} width={end - from} height={low - high} fill={color} opacity={0.1} />
      <line x1={from} x2={end} y1={y} y2={y} stroke={color} strokeDasharray="9 6" opacity={0.85} />
      <text className={styles.rest} x={end - 4} y={isBelow ? y + 17 : y - 7} fill={color}>
        {t('batch.curve.restsAt', {
          value: text(rest.value, dimension),
          give: of((rest.high - rest.low) / 2, dimension).number,
        })}
      </text>
    </ZIndexLayer>
  )
}
