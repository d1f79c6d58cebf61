/** What rows come to together. */
import type { SheetRow } from '../../../shared/schemas/sheets.ts'

export interface Sums {
  readonly rowCount: number
  readonly bottleCount: number
  /** In bottles, or of spirit. */
  readonly volumeMl: number
  readonly massG: number
}

export function sumsOf(rows: readonly SheetRow[]): Sums {
  let [bottleCount, volumeMl, massG] = [0, 0, 0]
  for (const row of rows) {
    if ('goods' in row) {
      volumeMl += row.volumeMl ?? 0
      massG += row.massG ?? 0
    } else {
      bottleCount += row.count
      volumeMl += row.count * row.bottleSizeMl
    }
  }
  return { rowCount: rows.length, bottleCount, volumeMl, massG }
}
