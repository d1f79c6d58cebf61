/** How the columns of the list stand: numbers at the end, and what middling windows leave out. */
import type { LotColumn } from './list-of-lots.ts'

export const minorColumns: ReadonlySet<LotColumn> = new Set(['sugar', 'cost'])

export const endColumns: ReadonlySet<LotColumn> = new Set([
  'size',
  'left',
  'strength',
  'sugar',
  'cost',
])
