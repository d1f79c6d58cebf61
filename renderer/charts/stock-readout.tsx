/** The stock at one month, beside the pointer or the keyboard's cursor. */
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import { Quantity } from '../parts/quantity/quantity.tsx'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import type { StockRow } from './stock-rows.ts'
import styles from './stock-lines.module.css'
import { dateFormat } from '../parts/formatters/formatters.ts'

export function StockReadout({ row: { atMs, past, forecast, band } }: { row: StockRow }) {
  const t = useWords()
  const { locale } = useSettings()
  const { text } = useQuantities()
  const day = dateFormat(locale, { dateStyle: 'medium' }).format(atMs)
  return (
    <div className={styles.readout}>
      <strong>{day}</strong>
      <span>
        <Quantity value={past ?? forecast ?? 0} dimension="volume" />
        {past === undefined && <span className={styles.quiet}> {t('shelf.stock.forecast')}</span>}
      </span>
      {past === undefined && band && (
        <span className={styles.quiet}>
          {t('shelf.stock.range', { low: text(band[0], 'volume'), high: text(band[1], 'volume') })}
        </span>
      )}
    </div>
  )
}
