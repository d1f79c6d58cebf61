/** Stock of one kind as rows of one chart: months gone, now, and months to come with their band. */
import type { KindStock } from '../../shared/schemas/shelf.ts'
import type { PastAndForecastRow } from './past-and-forecast.tsx'
import { amountTicks } from './time-axis.ts'

export type StockRow = PastAndForecastRow

/** The row at now belongs to both parts, so that the line does not break there. */
export function stockRows({ past, forecast, volumeMl }: KindStock, nowMs: number): StockRow[] {
  const gone = past
    .map(({ at, volumeMl: was }) => ({ atMs: Date.parse(at), past: was }))
    .filter(({ atMs }) => atMs < nowMs)
  const coming = forecast
    .map(({ at, volumeMl: will }) => ({
      atMs: Date.parse(at),
      forecast: will.value,
      band: [will.low, will.high] as const,
    }))
    .filter(({ atMs }) => atMs > nowMs)
  const now = {
    atMs: nowMs,
    past: volumeMl,
    forecast: volumeMl,
    band: [volumeMl, volumeMl] as const,
  }
  return [...gone, now, ...coming]
}

export function stockTicks(rows: readonly StockRow[]): number[] {
  const greatest = rows.reduce(
    (most, { past, forecast, band }) => Math.max(most, past ?? 0, forecast ?? 0, band?.[1] ?? 0),
    0,
  )
  return amountTicks(Math.max(500, 1.04 * greatest), 4)
}
