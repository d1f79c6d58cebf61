/** How sweet the syrup was that runs off the top of the scale. */
import { useXAxisScale, useYAxisScale, ZIndexLayer } from 'recharts'
import { useWords } from '../app/words/use-words.ts'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import type { CurveView } from './curve-view.ts'
import styles from './batch-curve.module.css'

const aboveLines = 550

export function PeakLabel({ view: { sugarPeak, scales } }: { view: CurveView }) {
  const t = useWords()
  const { text } = useQuantities()
  const x = useXAxisScale()?.(sugarPeak?.atMs)
  const y = useYAxisScale('sugarGPerL')?.(scales.sugarGPerL.at(-1))
  if (!sugarPeak || x === undefined || y === undefined) return null
  return (
    <ZIndexLayer zIndex={aboveLines}>
      <text className={styles.peak} x={x + 14} y={y + 16}>
        {t('batch.curve.upTo', { sugar: text(sugarPeak.sugarGPerL, 'sugar') })}
      </text>
    </ZIndexLayer>
  )
}
