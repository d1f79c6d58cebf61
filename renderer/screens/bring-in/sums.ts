/** What rows come to together. */
import type { BottlesRow } from '../../../shared/schemas/sheets.ts'

export interface Sums {
  readonly rowCount: number
  readonly bottleCount: number
  readonly volumeMl: number
}

export const sumsOf = (rows: readonly BottlesRow[]): Sums => ({
  rowCount: rows.length,
  bottleCount: rows.reduce((sum, { count }) => sum + count, 0),
  volumeMl: rows.reduce((sum, { count, bottleSizeMl }) => sum + count * bottleSizeMl, 0),
})
