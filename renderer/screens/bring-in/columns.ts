/** What each column of a file is: guessed from its head and its cells, then chosen by the maker. */
import { plain } from '../../../shared/plain.ts'
import { unitsOf, usualUnitId, type Dimension } from '../../parts/quantity/units.ts'
import { fieldsOf, isAmount, type FieldId, type SheetField, type SheetKind } from './fields.ts'
import {
  asksDecimalMark,
  guessedDecimalMark,
  type AmountContext,
  type DecimalMark,
} from './read-amount.ts'
import { guessedOrder, isTwoDays, type DateOrder } from './read-date.ts'
import type { SheetTable } from './sheet-file.ts'

export interface ColumnPlan {
  /** Undefined where the column is left out. */
  readonly field?: FieldId | undefined
  readonly unit?: string | undefined
  readonly decimalMark?: DecimalMark | undefined
  readonly dateOrder?: DateOrder | undefined
}

export interface SheetPlan {
  readonly columns: readonly ColumnPlan[]
  /** What no column tells and is the same in every row, as the maker wrote it. */
  readonly same: Partial<Readonly<Record<FieldId, string>>>
}

export type Measures = Omit<AmountContext, 'dimension' | 'unit' | 'decimalMark'>

export function guessedPlan(kind: SheetKind, table: SheetTable, measures: Measures): SheetPlan {
  const taken = new Set<FieldId>()
  const columns = table.heads.map((head, at) => {
    const field = fieldsOf[kind].find((one) => !taken.has(one.id) && isMeant(one, head))
    if (!field) return {}
    taken.add(field.id)
    return guessedColumn(field, head, cellsOf(table, at), measures)
  })
  return { columns, same: {} }
}

/** How a column is read that the maker says is this field. */
export function guessedColumn(
  field: SheetField,
  head: string,
  cells: readonly string[],
  measures: Measures,
): ColumnPlan {
  const { id, reads } = field
  if (reads === 'date') return { field: id, dateOrder: guessedOrder(cells) }
  if (!isAmount(reads)) return { field: id }
  return {
    field: id,
    unit: guessedUnit(reads, head, cells, measures),
    decimalMark: guessedDecimalMark(cells),
  }
}

export const cellsOf = ({ rows }: SheetTable, column: number): string[] =>
  rows.flatMap(({ cells }) => (cells[column] ? [cells[column]] : []))

/** Whether the maker must say something before the column can be read. */
export function questionOf(
  { reads }: SheetField,
  { unit, decimalMark, dateOrder }: ColumnPlan,
  cells: readonly string[],
  measures: Measures,
): { readonly asks: 'dateOrder' | 'decimalMark'; readonly isOpen: boolean } | undefined {
  if (reads === 'date')
    return cells.some(isTwoDays)
      ? { asks: 'dateOrder', isOpen: dateOrder === undefined }
      : undefined
  if (!isAmount(reads)) return undefined
  return asksDecimalMark(cells, { ...measures, dimension: reads, unit })
    ? { asks: 'decimalMark', isOpen: decimalMark === undefined }
    : undefined
}

/** One of its words stands in the head; a long word may be bent, as Polish does. */
function isMeant({ heads }: SheetField, head: string): boolean {
  const words = plain(head)
    .replaceAll(/[^\p{L}\p{N}%/]+/gu, ' ')
    .trim()
  return heads.some((meant) =>
    meant.length < 4 ? ` ${words} `.includes(` ${meant} `) : ` ${words}`.includes(` ${meant}`),
  )
}

function guessedUnit(
  dimension: Dimension,
  head: string,
  cells: readonly string[],
  measures: Measures,
): string | undefined {
  if (dimension === 'count' || dimension === 'money') return undefined
  const words = head.toLowerCase().split(/[^\p{L}%/°]+/u)
  const named = unitsOf[dimension].find(({ spellings }) =>
    words.some((word) => word !== '' && spellings.includes(word)),
  )
  if (named) return named.id
  return dimension === 'volume' && measures.units === 'metric'
    ? unitOfSizes(cells)
    : usualUnitId(dimension, measures)
}

/** Bottles are told by their numbers: 0.5 is litres, 50 centilitres, 500 millilitres. */
function unitOfSizes(cells: readonly string[]): string {
  const sizes = cells.flatMap((cell) =>
    /^\d+(?:[.,]\d+)?$/.test(cell) ? [Number(cell.replace(',', '.'))] : [],
  )
  const largest = Math.max(0, ...sizes)
  if (largest === 0) return 'ml'
  if (largest <= 5) return 'L'
  return largest < 100 ? 'cl' : 'ml'
}
