/** Stock over time: what was as a line, what the maker's own drinking leaves as a dashed one with its band. */
import { memo } from 'react'
import { useWords } from '../app/words/use-words.ts'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import { forecastDash } from './curve-quantities.ts'
import { PastAndForecast } from './past-and-forecast.tsx'
import { StockReadout } from './stock-readout.tsx'
import { stockTicks, type StockRow } from './stock-rows.ts'
import styles from './stock-lines.module.css'

export interface StockLinesProps {
  rows: readonly StockRow[]
  nowMs: number
  /** One sentence that says what the line does. */
  description: string
}

const ink = { colour: 'var(--action)', bandOpacity: 0.18 }

export const StockLines = memo(function StockLines({ rows, nowMs, description }: StockLinesProps) {
  const t = useWords()
  const { size } = useQuantities()
  return (
    <PastAndForecast
      rows={rows}
      title={t('shelf.stock.title')}
      description={description}
      firstSize={{ width: 900, height: 320 }}
      margin={{ top: 22, right: 20, bottom: 0, left: 8 }}
      ink={ink}
      now={{ atMs: nowMs, word: t('shelf.stock.now'), lineWidth: 1.25 }}
      mostTicks={8}
      amounts={{
        ticks: stockTicks(rows),
        format: (value) => (value === 0 ? '0' : size(value, 'volume').text),
        widthPx: 70,
      }}
      readout={(row) => <StockReadout row={row} />}
    >
      <ul className={styles.key} aria-hidden>
        <Key words={t('shelf.stock.was')} />
        <Key words={t('shelf.stock.forecast')} dash={forecastDash} />
        <li>
          <svg width={28} height={12}>
            <rect width={28} height={12} fill={ink.colour} opacity={ink.bandOpacity} />
          </svg>
          {t('shelf.stock.band')}
        </li>
      </ul>
    </PastAndForecast>
  )
})

function Key({ words, dash = 'none' }: { words: string; dash?: string }) {
  return (
    <li>
      <svg width={40} height={10}>
        <line
          x1={2}
          x2={38}
          y1={5}
          y2={5}
          stroke={ink.colour}
          strokeWidth={2.75}
          strokeDasharray={dash}
          strokeLinecap="round"
        />
      </svg>
      {words}
    </li>
  )
}
