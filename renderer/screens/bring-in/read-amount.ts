/** Amounts of a column: in its unit unless the cell names another, with its decimal mark. */
import {
  parseQuantity,
  type QuantityProblem,
  type QuantityReading,
} from '../../parts/quantity/parse-quantity.ts'
import type { Dimension, UnitChoice } from '../../parts/quantity/units.ts'

export type DecimalMark = 'comma' | 'point'

export interface AmountContext extends UnitChoice {
  readonly dimension: Dimension
  readonly currency: string
  readonly unit?: string | undefined
  /** Undefined while the maker has not said. */
  readonly decimalMark?: DecimalMark | undefined
}

/** Locales that write thousands with the other mark. */
const localeOf: Readonly<Record<DecimalMark, string>> = { comma: 'de-DE', point: 'en-US' }

/** A number with its unit is never longer, and what looks for one is never handed a book. */
const longestAmount = 60

export function readAmount(text: string, context: AmountContext): QuantityReading {
  if (text.length > longestAmount) return failed({ code: 'notANumber' })
  const written = context.dimension === 'count' ? withoutPieces(text) : text
  const read = (mark: DecimalMark) => parseQuantity(written, { ...context, locale: localeOf[mark] })
  if (context.decimalMark) return read(context.decimalMark)
  const [comma, point] = [read('comma'), read('point')]
  if (!comma.ok || !point.ok) return comma.ok === point.ok ? comma : ambiguousOr(comma, point)
  if (comma.value === point.value) return comma
  return failed({ code: 'ambiguous', readings: [comma.value, point.value] })
}

/** Where only one reading is possible at all, as by the range, there is nothing to ask. */
const ambiguousOr = (comma: QuantityReading, point: QuantityReading) => (comma.ok ? comma : point)

/** "6 szt." and "6 bottles" are six. */
const withoutPieces = (text: string) => text.replace(/(?<=\d)[\s\p{L}.]+$/u, '')

/** True where cells of the column are other amounts with another mark. */
export const asksDecimalMark = (cells: readonly string[], context: AmountContext): boolean =>
  cells.some((cell) => {
    const reading = readAmount(cell, { ...context, decimalMark: undefined })
    return !reading.ok && reading.problem.code === 'ambiguous'
  })

/** What cells that can only be read one way say about the others; undefined to ask. */
export function guessedDecimalMark(cells: readonly string[]): DecimalMark | undefined {
  const isComma = cells.some((cell) => cell.length <= longestAmount && decimalComma.test(cell))
  const isPoint = cells.some((cell) => cell.length <= longestAmount && decimalPoint.test(cell))
  if (isComma === isPoint) return undefined
  return isComma ? 'comma' : 'point'
}

const decimalComma = /(?:^|\D)(?:\d+,\d{1,2}|\d+,\d{4,}|0,\d+|[\d.]*\.\d{3},\d+)(?:\D|$)/
const decimalPoint = /(?:^|\D)(?:\d+\.\d{1,2}|\d+\.\d{4,}|0\.\d+|[\d,]*,\d{3}\.\d+)(?:\D|$)/

const failed = (problem: QuantityProblem): QuantityReading => ({ ok: false, problem })
